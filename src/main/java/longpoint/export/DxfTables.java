package longpoint.export;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Pen;
import longpoint.geometry.Bounds;

/**
 * The nine tables, in the order of the published reference. Codes are those of that reference; the
 * entries that must be there are listed in the ezdxf documentation (file structure).
 */
final class DxfTables {
  /** Line widths a file may name, hundredths of a millimetre (published DXF reference). */
  private static final int[] WEIGHTS = {
    5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211
  };

  /** Name an entity's own data is filed under. */
  static final String APPLICATION = "LONGPOINT";

  private static final int NORMAL = DxfHandles.PLOT_STYLE_NORMAL;

  private final DxfHandles handles;
  private final DxfScale scale;
  private final DxfTags t = new DxfTags();

  DxfTables(DxfHandles handles, DxfScale scale) {
    this.handles = handles;
    this.scale = scale;
  }

  /**
   * @param layers used by the entities
   * @param pictures name and handle of the block record of each dimension's picture
   */
  DxfTags write(Bounds extent, Collection<Layer> layers, Map<String, Integer> pictures) {
    t.tag(0, "SECTION").tag(2, "TABLES");
    table("VPORT", 1, owner -> viewport(owner, extent));
    table("LTYPE", 2 + Pen.LineType.values().length, this::lineTypes);
    table("LAYER", 2 + layers.size(), owner -> layers(owner, layers));
    table("STYLE", 1, this::textStyle);
    table("VIEW", 0, owner -> {});
    table("UCS", 0, owner -> {});
    table("APPID", 2, this::applications);
    table("DIMSTYLE", 1, this::dimensionStyle);
    table("BLOCK_RECORD", 2 + pictures.size(), owner -> blockRecords(owner, pictures));
    return t.tag(0, "ENDSEC");
  }

  private void table(String name, int count, Consumer<Integer> entries) {
    int handle = handles.take();
    t.tag(0, "TABLE").tag(2, name).handle(5, handle).handle(330, 0);
    t.tag(100, "AcDbSymbolTable").tag(70, count);
    if (name.equals("DIMSTYLE")) {
      t.tag(100, "AcDbDimStyleTable").tag(71, 0);
    }
    entries.accept(handle);
    t.tag(0, "ENDTAB");
  }

  private DxfTags entry(String type, int owner, int handle, String className, String name) {
    // A dimension style's own handle has another code, since 5 was taken in old files.
    t.tag(0, type).handle(type.equals("DIMSTYLE") ? 105 : 5, handle).handle(330, owner);
    return t.tag(100, "AcDbSymbolTableRecord").tag(100, className).tag(2, name);
  }

  private void viewport(int owner, Bounds extent) {
    entry("VPORT", owner, handles.take(), "AcDbViewportTableRecord", "*Active").tag(70, 0);
    t.number(10, 0).number(20, 0).number(11, 1).number(21, 1);
    t.flat(12, extent.middle()).number(13, 0).number(23, 0);
    t.number(14, 1).number(24, 1).number(15, 1).number(25, 1);
    t.vector(16, 0, 0, 1).vector(17, 0, 0, 0);
    t.number(40, Math.max(1, Math.max(extent.height(), extent.width() / 1.5)) * 1.1);
    t.number(41, 1.5).number(42, 50).number(43, 0).number(44, 0).number(50, 0).number(51, 0);
    t.tag(71, 0).tag(72, 1000).tag(73, 1).tag(74, 3).tag(75, 0).tag(76, 0).tag(77, 0).tag(78, 0);
  }

  private void lineTypes(int owner) {
    lineType(owner, "ByBlock", "", List.of());
    lineType(owner, "ByLayer", "", List.of());
    for (Pen.LineType type : Pen.LineType.values()) {
      lineType(owner, name(type), words(type), type.patternMm());
    }
  }

  private void lineType(int owner, String name, String words, List<Double> patternMm) {
    entry("LTYPE", owner, handles.take(), "AcDbLinetypeTableRecord", name).tag(70, 0);
    t.tag(3, words).tag(72, 'A').tag(73, patternMm.size());
    t.number(40, scale.paper(patternMm.stream().mapToDouble(d -> d).sum()));
    for (int i = 0; i < patternMm.size(); i++) {
      double length = scale.paper(patternMm.get(i));
      t.number(49, i % 2 == 0 ? length : -length).tag(74, 0); // a gap counts as below nought
    }
  }

  private static String name(Pen.LineType type) {
    return switch (type) {
      case CONTINUOUS -> "Continuous";
      case DASHED -> "DASHED";
      case LONG_DASHED -> "LONGDASHED";
      case CHAIN -> "CHAIN";
      case DOTTED -> "DOTTED";
    };
  }

  private static String words(Pen.LineType type) {
    return switch (type) {
      case CONTINUOUS -> "Solid line";
      case DASHED -> "Dashed __ __ __";
      case LONG_DASHED -> "Long dashed ____ ____";
      case CHAIN -> "Long dash, dot ____ . ____";
      case DOTTED -> "Dotted . . . .";
    };
  }

  private void layers(int owner, Collection<Layer> layers) {
    layer(owner, "0", 7, "Continuous").tag(370, -3).handle(390, NORMAL);
    // Defpoints is never printed.
    layer(owner, "Defpoints", 7, "Continuous").tag(290, 0).tag(370, -3).handle(390, NORMAL);
    for (Layer layer : layers) {
      Pen pen = layer.pen();
      layer(owner, layer.name(), colour(layer.ink()), name(pen.type()))
          .tag(370, weight(pen.widthMm()))
          .handle(390, NORMAL);
    }
  }

  private DxfTags layer(int owner, String name, int colour, String lineType) {
    entry("LAYER", owner, handles.take(), "AcDbLayerTableRecord", name).tag(70, 0);
    return t.tag(62, colour).tag(6, lineType);
  }

  /** Numbers of the colour index that come nearest on both black and white ground. */
  private static int colour(Ink ink) {
    return switch (ink) {
      case MAIN, EDGE -> 7;
      case QUIET, HIDDEN -> 8;
      case RIDGE -> 30;
      case VALLEY -> 150;
      case MEASURE -> 94;
      case TINT -> 9;
      case ALERT -> 6;
    };
  }

  /** The width a file may name that is nearest. */
  private static int weight(double widthMm) {
    int best = WEIGHTS[0];
    for (int weight : WEIGHTS) {
      if (Math.abs(weight - widthMm * 100) < Math.abs(best - widthMm * 100)) {
        best = weight;
      }
    }
    return best;
  }

  private void textStyle(int owner) {
    entry("STYLE", owner, handles.take(), "AcDbTextStyleTableRecord", "Standard").tag(70, 0);
    t.number(40, 0).number(41, 1).number(50, 0).tag(71, 0);
    t.number(42, scale.textHeight()).tag(3, "arial.ttf").tag(4, "");
  }

  private void applications(int owner) {
    for (String name : List.of("ACAD", APPLICATION)) {
      entry("APPID", owner, handles.take(), "AcDbRegAppTableRecord", name).tag(70, 0);
    }
  }

  private void dimensionStyle(int owner) {
    entry("DIMSTYLE", owner, handles.take(), "AcDbDimStyleTableRecord", "Standard").tag(70, 0);
    scale.dimensionVariables(
        new DxfScale.Sink() {
          @Override
          public void number(String name, int code, double value) {
            t.number(code, value);
          }

          @Override
          public void whole(String name, int code, int value) {
            t.tag(code, value);
          }
        });
  }

  private void blockRecords(int owner, Map<String, Integer> pictures) {
    blockRecord(owner, DxfHandles.MODEL_SPACE, "*Model_Space", DxfHandles.MODEL_LAYOUT);
    blockRecord(owner, DxfHandles.PAPER_SPACE, "*Paper_Space", DxfHandles.PAPER_LAYOUT);
    pictures.forEach((name, handle) -> blockRecord(owner, handle, name, 0));
  }

  private void blockRecord(int owner, int handle, String name, int layout) {
    entry("BLOCK_RECORD", owner, handle, "AcDbBlockTableRecord", name).handle(340, layout);
  }
}
