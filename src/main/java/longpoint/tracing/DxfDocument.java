package longpoint.tracing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import longpoint.wording.Phrase;

/** The sections of a DXF file that matter for outlines: a few variables, blocks and entities. */
final class DxfDocument {
  /**
   * A block.
   *
   * @param head with its base point
   */
  record Block(DxfEntity head, List<DxfEntity> entities) {}

  private static final int MOST_ENTITIES = 500_000;

  /** What outlines can be made of, and what holds it together. */
  private static final Set<String> KNOWN =
      Set.of("LINE", "LWPOLYLINE", "POLYLINE", "VERTEX", "ARC", "CIRCLE", "ELLIPSE", "INSERT");

  /** Curves and walls that are drawn but cannot be traced: the user is told of them. */
  private static final Set<String> MISSED =
      Set.of("SPLINE", "MLINE", "REGION", "3DSOLID", "BODY", "POLYFACE", "ACAD_PROXY_ENTITY");

  private static final Set<Integer> CODES =
      Set.of(2, 8, 10, 11, 20, 21, 40, 41, 42, 44, 45, 50, 51, 60, 67, 70, 71, 210, 220, 230);

  private final DxfTagReader tags;
  private final Map<String, Integer> variables = new HashMap<>();
  private final Map<String, Block> blocks = new HashMap<>();
  private final List<DxfEntity> entities = new ArrayList<>();
  private final Set<String> hidden = new HashSet<>();
  private final Map<String, Integer> missed = new TreeMap<>();
  private boolean whole;
  private int count;

  private DxfDocument(DxfTagReader tags) {
    this.tags = tags;
  }

  static DxfDocument read(byte[] bytes) throws TracingException {
    DxfDocument document = new DxfDocument(DxfTagReader.of(bytes));
    document.sections();
    return document;
  }

  /** A number of the header under codes 70 to 78. */
  Optional<Integer> variable(String name) {
    return Optional.ofNullable(variables.get(name));
  }

  Optional<Block> block(String name) {
    return Optional.ofNullable(blocks.get(name.toUpperCase(java.util.Locale.ROOT)));
  }

  List<DxfEntity> entities() {
    return entities;
  }

  /** Layers that are switched off or frozen. */
  Set<String> hidden() {
    return hidden;
  }

  /** Kinds of entity that were passed over, and how many of each. */
  Map<String, Integer> missed() {
    return missed;
  }

  /** Whether the file ran to its proper end. */
  boolean isWhole() {
    return whole;
  }

  private void sections() throws TracingException {
    boolean any = false;
    for (Optional<DxfTag> tag = tags.next(); tag.isPresent(); tag = tags.next()) {
      if (tag.get().is(0, "EOF")) {
        whole = true;
        break;
      }
      if (tag.get().is(0, "SECTION")) {
        DxfTag name = need();
        any = true;
        switch (name.value()) {
          case "HEADER" -> header();
          case "TABLES" -> tables();
          case "BLOCKS" -> blocks();
          case "ENTITIES" -> model();
          default -> skip();
        }
      }
    }
    if (!any) {
      throw TracingException.whole(Phrase.of("tracing.noSections"));
    }
  }

  private DxfTag need() throws TracingException {
    Optional<DxfTag> tag = tags.next();
    if (tag.isEmpty()) {
      throw TracingException.whole(Phrase.of("tracing.early"));
    }
    return tag.get();
  }

  private void skip() throws TracingException {
    for (DxfTag tag = need(); !tag.is(0, "ENDSEC"); tag = need()) {
      continue;
    }
  }

  private void header() throws TracingException {
    String name = "";
    for (DxfTag tag = need(); !tag.is(0, "ENDSEC"); tag = need()) {
      if (tag.code() == 9) {
        name = tag.value();
      } else if (tag.code() >= 70 && tag.code() < 79) {
        variables.put(name, tag.whole());
      }
    }
  }

  private void tables() throws TracingException {
    boolean layer = false;
    String name = "";
    for (DxfTag tag = need(); !tag.is(0, "ENDSEC"); tag = need()) {
      if (tag.code() == 0) {
        layer = tag.value().equals("LAYER");
        name = "";
      } else if (layer && tag.code() == 2) {
        name = DxfStrokes.plain(tag.value());
      } else if (layer && (tag.code() == 70 && tag.whole() % 2 == 1 || isOff(tag))) {
        hidden.add(name);
      }
    }
  }

  /** A layer is switched off by a colour below nought. */
  private static boolean isOff(DxfTag tag) throws TracingException {
    return tag.code() == 62 && tag.whole() < 0;
  }

  private void blocks() throws TracingException {
    List<DxfEntity> all = read(Set.of("BLOCK", "ENDBLK"));
    DxfEntity head = null;
    List<DxfEntity> inside = new ArrayList<>();
    for (DxfEntity entity : all) {
      if (entity.type().equals("BLOCK")) {
        head = entity;
        inside = new ArrayList<>();
      } else if (!entity.type().equals("ENDBLK")) {
        inside.add(entity);
      } else if (head != null) {
        String name = head.text(2).toUpperCase(java.util.Locale.ROOT);
        blocks.put(name, new Block(head, List.copyOf(inside)));
        head = null;
      }
    }
  }

  private void model() throws TracingException {
    for (DxfEntity entity : read(Set.of())) {
      if (entity.inModel()) {
        entities.add(entity);
      }
    }
  }

  /** Entities to the end of the section; vertices go into the polyline before them. */
  private List<DxfEntity> read(Set<String> also) throws TracingException {
    List<DxfEntity> all = new ArrayList<>();
    DxfTag tag = need();
    while (!tag.is(0, "ENDSEC")) {
      if (tag.code() != 0) {
        tag = need();
        continue;
      }
      DxfTag name = tag;
      boolean keep = KNOWN.contains(name.value()) || also.contains(name.value());
      List<DxfTag> own = new ArrayList<>();
      for (tag = need(); tag.code() != 0; tag = need()) {
        if (keep && CODES.contains(tag.code())) {
          own.add(tag);
        }
      }
      if (keep) {
        add(all, new DxfEntity(name.value(), name.line(), own, new ArrayList<>()));
      } else if (MISSED.contains(name.value())) {
        missed.merge(name.value(), 1, Integer::sum);
      }
    }
    return all;
  }

  private void add(List<DxfEntity> all, DxfEntity entity) throws TracingException {
    if (++count > MOST_ENTITIES) {
      throw TracingException.at(entity.line(), Phrase.of("tracing.tooMuch"));
    }
    if (!entity.type().equals("VERTEX")) {
      all.add(entity);
    } else if (!all.isEmpty() && all.get(all.size() - 1).type().equals("POLYLINE")) {
      all.get(all.size() - 1).parts().add(entity);
    }
  }
}
