package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.export.DxfFile.Item;
import longpoint.export.DxfFile.Tag;

/**
 * A strict reader's view of a DXF 2000 file, after the published DXF reference and the ezdxf
 * documentation (file structure): sections and tables complete and in order, handles unique and
 * below the seed, owners and references there, numbers finite, every name that is used defined.
 */
final class DxfCheck {
  private static final List<String> TABLES =
      List.of(
          "VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD");

  private final DxfFile file;
  private final Map<String, Item> byHandle = new HashMap<>();

  private DxfCheck(DxfFile file) {
    this.file = file;
  }

  static void check(DxfFile file) {
    DxfCheck check = new DxfCheck(file);
    check.sections();
    check.header();
    check.tables();
    check.handles();
    check.references();
    check.numbers();
    check.names();
    check.blocks();
    check.subclasses();
    check.objects();
  }

  private void sections() {
    assertThat(new ArrayList<>(file.sections().keySet()))
        .containsExactly("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS", "EOF");
  }

  private void header() {
    assertThat(file.header().get("$ACADVER").get(0)).isEqualTo(new Tag(1, "AC1015"));
    assertThat(file.header()).containsKeys("$HANDSEED", "$INSUNITS", "$EXTMIN", "$EXTMAX");
    assertThat(file.header().get("$EXTMIN").get(0).number())
        .isLessThanOrEqualTo(file.header().get("$EXTMAX").get(0).number());
  }

  private void tables() {
    List<String> names = new ArrayList<>();
    Item table = null;
    int entries = 0;
    for (Item item : file.sections().get("TABLES")) {
      if (item.type().equals("TABLE")) {
        table = item;
        entries = 0;
        names.add(item.text(2));
        assertThat(item.text(330)).as("owner of table").isEqualTo("0");
      } else if (item.type().equals("ENDTAB")) {
        assertThat((int) table.number(70)).as("entries of %s", table.text(2)).isEqualTo(entries);
        table = null;
      } else {
        entries++;
        assertThat(item.type()).isEqualTo(table.text(2));
        assertThat(item.text(330)).as("owner of entry").isEqualTo(table.text(5));
      }
    }
    assertThat(table).isNull();
    assertThat(names).isEqualTo(TABLES);
    assertThat(named("LTYPE")).contains("ByBlock", "ByLayer", "Continuous");
    assertThat(named("LAYER")).contains("0");
    assertThat(named("STYLE")).contains("Standard");
    assertThat(named("APPID")).contains("ACAD");
    assertThat(named("DIMSTYLE")).contains("Standard");
    assertThat(named("BLOCK_RECORD")).contains("*Model_Space", "*Paper_Space");
    assertThat(named("VPORT")).contains("*Active");
    for (String table1 : TABLES) {
      List<String> all = file.tableEntries(table1).map(i -> i.text(2).toUpperCase()).toList();
      assertThat(all).as("names in %s", table1).doesNotHaveDuplicates();
    }
  }

  private void handles() {
    long seed = Long.parseLong(file.header().get("$HANDSEED").get(0).value(), 16);
    for (Item item : everything()) {
      if (Set.of("CLASS", "ENDTAB").contains(item.type())) {
        continue;
      }
      String handle = item.text(item.type().equals("DIMSTYLE") ? 105 : 5);
      assertThat(Long.parseLong(handle, 16)).isPositive().isLessThan(seed);
      assertThat(byHandle.put(handle, item)).as("handle %s twice", handle).isNull();
    }
  }

  private void references() {
    for (Item item : everything()) {
      for (Tag tag : item.tags()) {
        boolean reference = tag.code() >= 330 && tag.code() <= 369 || tag.code() == 390;
        if (reference && !tag.value().equals("0")) {
          assertThat(byHandle).as("%s %s", item.type(), tag).containsKey(tag.value());
        }
      }
    }
    for (Item item : file.sections().get("ENTITIES")) {
      assertThat(byHandle.get(item.text(330)).text(2)).isEqualTo("*Model_Space");
    }
  }

  private void numbers() {
    for (Item item : everything()) {
      for (Tag tag : item.tags()) {
        if (tag.code() >= 10 && tag.code() <= 59 || tag.code() >= 140 && tag.code() <= 149) {
          assertThat(tag.value()).as("%s %s", item.type(), tag).matches("-?\\d+\\.\\d+");
          assertThat(Double.isFinite(tag.number())).isTrue();
        } else if (tag.code() >= 60 && tag.code() <= 79 || tag.code() >= 170 && tag.code() <= 179) {
          assertThat(tag.value()).matches("-?\\d+");
        }
        assertThat(tag.value().length()).isLessThanOrEqualTo(2049);
      }
    }
  }

  private void names() {
    Set<String> layers = named("LAYER");
    Set<String> types = named("LTYPE");
    for (Item layer : file.tableEntries("LAYER").toList()) {
      assertThat(types).contains(layer.text(6));
      assertThat(layer.text(2)).matches("[A-Za-z0-9$_-]{1,255}");
    }
    for (String section : List.of("BLOCKS", "ENTITIES")) {
      for (Item item : file.sections().get(section)) {
        assertThat(layers).as(item.type()).contains(item.text(8));
        item.all(1001).forEach(t -> assertThat(named("APPID")).contains(t.value()));
        if (item.type().equals("TEXT")) {
          assertThat(named("STYLE")).contains(item.text(7));
          assertThat(item.text(1)).isNotEmpty();
          assertThat(item.number(40)).isPositive();
        }
        if (item.type().equals("DIMENSION")) {
          assertThat(named("DIMSTYLE")).contains(item.text(3));
          assertThat(blockNames()).contains(item.text(2));
        }
      }
    }
  }

  private void blocks() {
    assertThat(new HashSet<>(blockNames())).hasSameElementsAs(named("BLOCK_RECORD"));
    assertThat(blockNames()).doesNotHaveDuplicates();
    String open = null;
    for (Item item : file.sections().get("BLOCKS")) {
      if (item.type().equals("BLOCK")) {
        assertThat(open).isNull();
        open = item.text(330);
        assertThat(byHandle.get(open).text(2)).isEqualTo(item.text(2));
      } else {
        assertThat(item.text(330)).as("owner of %s", item.type()).isEqualTo(open);
        open = item.type().equals("ENDBLK") ? null : open;
      }
    }
    assertThat(open).isNull();
  }

  /** Subclass markers each entity must carry, in order. */
  private void subclasses() {
    Map<String, List<String>> wanted =
        Map.of(
            "3DFACE", List.of("AcDbEntity", "AcDbFace"),
            "LINE", List.of("AcDbEntity", "AcDbLine"),
            "LWPOLYLINE", List.of("AcDbEntity", "AcDbPolyline"),
            "TEXT", List.of("AcDbEntity", "AcDbText", "AcDbText"),
            "CIRCLE", List.of("AcDbEntity", "AcDbCircle"),
            "ARC", List.of("AcDbEntity", "AcDbCircle", "AcDbArc"),
            "POINT", List.of("AcDbEntity", "AcDbPoint"),
            "BLOCK", List.of("AcDbEntity", "AcDbBlockBegin"),
            "ENDBLK", List.of("AcDbEntity", "AcDbBlockEnd"));
    for (String section : List.of("BLOCKS", "ENTITIES")) {
      for (Item item : file.sections().get(section)) {
        List<String> markers = item.all(100).map(Tag::value).toList();
        if (item.type().equals("DIMENSION")) {
          List<String> aligned = List.of("AcDbEntity", "AcDbDimension", "AcDbAlignedDimension");
          boolean rotated = ((int) item.number(70) & 7) == 0;
          assertThat(markers.subList(0, 3)).isEqualTo(aligned);
          assertThat(markers.subList(3, markers.size()))
              .isEqualTo(rotated ? List.of("AcDbRotatedDimension") : List.of());
        } else {
          assertThat(markers).as(item.type()).isEqualTo(wanted.get(item.type()));
        }
        if (item.type().equals("LWPOLYLINE")) {
          assertThat((long) item.number(90)).isEqualTo(item.all(10).count());
          assertThat(item.all(20).count()).isEqualTo(item.all(10).count());
        }
      }
    }
  }

  private void objects() {
    Item root = file.sections().get("OBJECTS").get(0);
    assertThat(root.type()).isEqualTo("DICTIONARY");
    assertThat(root.text(330)).isEqualTo("0");
    assertThat(root.all(3).map(Tag::value)).contains("ACAD_GROUP", "ACAD_LAYOUT");
    for (Item item : file.sections().get("OBJECTS")) {
      if (item.type().startsWith("DICTIONARY") || item.type().equals("ACDBDICTIONARYWDFLT")) {
        assertThat(item.all(3).count()).isEqualTo(item.all(350).count());
        item.all(350)
            .forEach(t -> assertThat(byHandle.get(t.value()).text(330)).isEqualTo(item.text(5)));
      }
      if (item != root) {
        assertThat(byHandle).containsKey(item.text(330));
      }
    }
    Set<String> classes =
        file.sections().get("CLASSES").stream().map(i -> i.text(1)).collect(Collectors.toSet());
    Set<String> known = Set.of("DICTIONARY", "MLINESTYLE");
    assertThat(file.sections().get("OBJECTS"))
        .allMatch(i -> known.contains(i.type()) || classes.contains(i.type()));
    List<Item> layouts =
        file.sections().get("OBJECTS").stream().filter(i -> i.type().equals("LAYOUT")).toList();
    for (Item layout : layouts) {
      String space = layout.all(330).toList().get(1).value();
      assertThat(byHandle.get(space).text(340)).isEqualTo(layout.text(5));
    }
  }

  private Set<String> named(String table) {
    return file.tableEntries(table).map(i -> i.text(2)).collect(Collectors.toSet());
  }

  private List<String> blockNames() {
    return file.sections().get("BLOCKS").stream()
        .filter(i -> i.type().equals("BLOCK"))
        .map(i -> i.text(2))
        .toList();
  }

  private List<Item> everything() {
    return file.sections().values().stream().flatMap(List::stream).toList();
  }
}
