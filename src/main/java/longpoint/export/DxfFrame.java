package longpoint.export;

import longpoint.geometry.Bounds;
import longpoint.geometry.Point;

/** Header, classes and objects: what every DXF 2000 file must hold around its tables. */
final class DxfFrame {
  private DxfFrame() {}

  static DxfTags header(DxfScale scale, Bounds extent, int nextHandle) {
    DxfTags t = new DxfTags().tag(0, "SECTION").tag(2, "HEADER");
    t.tag(9, "$ACADVER").tag(1, "AC1015");
    t.tag(9, "$DWGCODEPAGE").tag(3, "ANSI_1252");
    t.tag(9, "$INSBASE").point(10, new Point(0, 0));
    t.tag(9, "$EXTMIN").point(10, new Point(extent.minX(), extent.minY()));
    t.tag(9, "$EXTMAX").point(10, new Point(extent.maxX(), extent.maxY()));
    t.tag(9, "$LIMMIN").flat(10, new Point(extent.minX(), extent.minY()));
    t.tag(9, "$LIMMAX").flat(10, new Point(extent.maxX(), extent.maxY()));
    t.tag(9, "$LTSCALE").number(40, scale.scale());
    t.tag(9, "$TEXTSIZE").number(40, scale.textHeight() * scale.scale());
    t.tag(9, "$TEXTSTYLE").tag(7, "Standard");
    t.tag(9, "$CLAYER").tag(8, "0");
    t.tag(9, "$CELTYPE").tag(6, "ByLayer");
    t.tag(9, "$CECOLOR").tag(62, 256);
    scale.dimensionVariables(
        new DxfScale.Sink() {
          @Override
          public void number(String name, int code, double value) {
            t.tag(9, name).number(40, value);
          }

          @Override
          public void whole(String name, int code, int value) {
            t.tag(9, name).tag(70, value);
          }
        });
    t.tag(9, "$DIMSTYLE").tag(2, "Standard");
    t.tag(9, "$LUNITS").tag(70, scale.lengthFormat());
    t.tag(9, "$LUPREC").tag(70, scale.lengthPrecision());
    t.tag(9, "$MEASUREMENT").tag(70, scale.inches() ? 0 : 1);
    t.tag(9, "$INSUNITS").tag(70, scale.insertUnits());
    t.tag(9, "$LWDISPLAY").tag(290, 1);
    t.tag(9, "$HANDSEED").handle(5, nextHandle);
    return t.tag(0, "ENDSEC");
  }

  static DxfTags classes() {
    DxfTags t = new DxfTags().tag(0, "SECTION").tag(2, "CLASSES");
    type(t, "ACDBDICTIONARYWDFLT", "AcDbDictionaryWithDefault");
    type(t, "ACDBPLACEHOLDER", "AcDbPlaceHolder");
    type(t, "LAYOUT", "AcDbLayout");
    return t.tag(0, "ENDSEC");
  }

  private static void type(DxfTags t, String name, String className) {
    t.tag(0, "CLASS").tag(1, name).tag(2, className).tag(3, "ObjectDBX Classes");
    t.tag(90, 0).tag(280, 0).tag(281, 0);
  }

  static DxfTags objects(Bounds extent) {
    DxfTags t = new DxfTags().tag(0, "SECTION").tag(2, "OBJECTS");
    dictionary(t, DxfHandles.ROOT, 0);
    t.tag(3, "ACAD_GROUP").handle(350, DxfHandles.GROUPS);
    t.tag(3, "ACAD_LAYOUT").handle(350, DxfHandles.LAYOUTS);
    t.tag(3, "ACAD_MLINESTYLE").handle(350, DxfHandles.MLINE_STYLES);
    t.tag(3, "ACAD_PLOTSETTINGS").handle(350, DxfHandles.PLOT_SETTINGS);
    t.tag(3, "ACAD_PLOTSTYLENAME").handle(350, DxfHandles.PLOT_STYLES);
    dictionary(t, DxfHandles.GROUPS, DxfHandles.ROOT);
    dictionary(t, DxfHandles.LAYOUTS, DxfHandles.ROOT);
    t.tag(3, "Model").handle(350, DxfHandles.MODEL_LAYOUT);
    t.tag(3, "Layout1").handle(350, DxfHandles.PAPER_LAYOUT);
    dictionary(t, DxfHandles.MLINE_STYLES, DxfHandles.ROOT);
    t.tag(3, "Standard").handle(350, DxfHandles.MLINE_STANDARD);
    dictionary(t, DxfHandles.PLOT_SETTINGS, DxfHandles.ROOT);
    t.tag(0, "ACDBDICTIONARYWDFLT").handle(5, DxfHandles.PLOT_STYLES);
    t.handle(330, DxfHandles.ROOT).tag(100, "AcDbDictionary").tag(281, 1);
    t.tag(3, "Normal").handle(350, DxfHandles.PLOT_STYLE_NORMAL);
    t.tag(100, "AcDbDictionaryWithDefault").handle(340, DxfHandles.PLOT_STYLE_NORMAL);
    t.tag(0, "ACDBPLACEHOLDER").handle(5, DxfHandles.PLOT_STYLE_NORMAL);
    t.handle(330, DxfHandles.PLOT_STYLES);
    multiline(t);
    layout(t, "Model", DxfHandles.MODEL_LAYOUT, DxfHandles.MODEL_SPACE, 0, extent);
    layout(t, "Layout1", DxfHandles.PAPER_LAYOUT, DxfHandles.PAPER_SPACE, 1, extent);
    return t.tag(0, "ENDSEC");
  }

  private static void dictionary(DxfTags t, int handle, int owner) {
    t.tag(0, "DICTIONARY").handle(5, handle).handle(330, owner);
    t.tag(100, "AcDbDictionary").tag(281, 1);
  }

  private static void multiline(DxfTags t) {
    t.tag(0, "MLINESTYLE").handle(5, DxfHandles.MLINE_STANDARD);
    t.handle(330, DxfHandles.MLINE_STYLES).tag(100, "AcDbMlineStyle");
    t.tag(2, "Standard").tag(70, 0).tag(3, "").tag(62, 256).number(51, 90).number(52, 90);
    t.tag(71, 2);
    t.number(49, 0.5).tag(62, 256).tag(6, "BYLAYER");
    t.number(49, -0.5).tag(62, 256).tag(6, "BYLAYER");
  }

  private static void layout(
      DxfTags t, String name, int handle, int space, int order, Bounds extent) {
    boolean model = order == 0;
    t.tag(0, "LAYOUT").handle(5, handle).handle(330, DxfHandles.LAYOUTS);
    t.tag(100, "AcDbPlotSettings").tag(1, "").tag(2, "none_device").tag(4, "").tag(6, "");
    for (int code = 40; code <= 49; code++) {
      t.number(code, 0);
    }
    t.number(140, 0).number(141, 0).number(142, 1).number(143, 1);
    t.tag(70, model ? 1024 : 0).tag(72, 1).tag(73, 0).tag(74, 1).tag(7, "");
    t.tag(75, 0).tag(76, 0).tag(77, 2).tag(78, 300);
    t.number(147, 1).number(148, 0).number(149, 0);
    t.tag(100, "AcDbLayout").tag(1, name).tag(70, 1).tag(71, order);
    t.flat(10, new Point(extent.minX(), extent.minY()));
    t.flat(11, new Point(extent.maxX(), extent.maxY()));
    t.point(12, new Point(0, 0));
    t.point(14, new Point(extent.minX(), extent.minY()));
    t.point(15, new Point(extent.maxX(), extent.maxY()));
    t.number(146, 0);
    t.point(13, new Point(0, 0)).vector(16, 1, 0, 0).vector(17, 0, 1, 0).tag(76, 0);
    t.handle(330, space);
  }
}
