package longpoint.export;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A DXF file read back tag by tag. Knows only what the published reference says of structure:
 * sections, tables, blocks and objects that begin at code 0.
 */
record DxfFile(Map<String, List<Item>> sections, Map<String, List<Tag>> header) {
  /** A group code and its value. */
  record Tag(int code, String value) {
    double number() {
      return Double.parseDouble(value);
    }
  }

  /** Tags from one code 0 to the next. */
  record Item(String type, List<Tag> tags) {
    Stream<Tag> all(int code) {
      return tags.stream().filter(t -> t.code() == code);
    }

    boolean has(int code) {
      return all(code).findAny().isPresent();
    }

    String text(int code) {
      return all(code)
          .findFirst()
          .orElseThrow(() -> new AssertionError(type + " lacks " + code))
          .value();
    }

    double number(int code) {
      return Double.parseDouble(text(code));
    }
  }

  static DxfFile read(byte[] bytes) {
    List<Tag> tags = tags(new String(bytes, StandardCharsets.US_ASCII));
    Map<String, List<Item>> sections = new LinkedHashMap<>();
    Map<String, List<Tag>> header = new LinkedHashMap<>();
    List<Item> items = items(tags);
    List<Item> open = null;
    for (Item item : items) {
      switch (item.type()) {
        case "SECTION" -> {
          open = new ArrayList<>();
          sections.put(item.text(2), open);
          if (item.text(2).equals("HEADER")) {
            readHeader(item, header);
          }
        }
        case "ENDSEC" -> open = null;
        case "EOF" -> sections.put("EOF", List.of());
        default -> open.add(item);
      }
    }
    return new DxfFile(sections, header);
  }

  Stream<Item> entities(String type) {
    return sections.get("ENTITIES").stream().filter(i -> i.type().equals(type));
  }

  Stream<Item> tableEntries(String type) {
    return sections.get("TABLES").stream().filter(i -> i.type().equals(type));
  }

  private static void readHeader(Item section, Map<String, List<Tag>> header) {
    List<Tag> open = null;
    for (Tag tag : section.tags()) {
      if (tag.code() == 9) {
        open = new ArrayList<>();
        header.put(tag.value(), open);
      } else if (open != null) {
        open.add(tag);
      }
    }
  }

  private static List<Tag> tags(String text) {
    String[] lines = text.split("\n", -1);
    List<Tag> tags = new ArrayList<>();
    for (int i = 0; i + 1 < lines.length; i += 2) {
      tags.add(new Tag(Integer.parseInt(lines[i].trim()), lines[i + 1]));
    }
    return tags;
  }

  private static List<Item> items(List<Tag> tags) {
    List<Item> items = new ArrayList<>();
    for (Tag tag : tags) {
      if (tag.code() == 0) {
        items.add(new Item(tag.value(), new ArrayList<>()));
      } else {
        items.get(items.size() - 1).tags().add(tag);
      }
    }
    return items;
  }
}
