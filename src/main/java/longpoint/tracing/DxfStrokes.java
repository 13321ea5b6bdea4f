package longpoint.tracing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longpoint.geometry.Point;
import longpoint.stop.CalledOff;
import longpoint.tracing.DxfDocument.Block;
import longpoint.tracing.Stroke.Vertex;
import longpoint.wording.Phrase;

/** Entities as strokes on the plan, those of blocks wherever the block is inserted. */
final class DxfStrokes {
  private static final int DEEPEST = 16;
  private static final int MOST_STROKES = 300_000;
  private static final int MOST_VERTICES = 2_000_000;
  private static final Pattern CODED = Pattern.compile("\\\\U\\+([0-9A-Fa-f]{4})");

  /** Bits of group 70 of a polyline and of a vertex (published DXF reference). */
  private static final int CLOSED = 1;

  private static final int MESH = 16 + 64;
  private static final int SPLINE_POINT = 16;

  private final DxfDocument document;
  private final Map<String, Integer> missed;
  private final List<Stroke> strokes = new ArrayList<>();
  private int vertices;
  private int inserted;

  private DxfStrokes(DxfDocument document) {
    this.document = document;
    this.missed = new TreeMap<>(document.missed());
  }

  static DxfStrokes of(DxfDocument document) throws TracingException {
    DxfStrokes all = new DxfStrokes(document);
    for (DxfEntity entity : document.entities()) {
      CalledOff.check();
      all.add(entity, Inserting.NONE, Optional.empty(), 0);
    }
    return all;
  }

  List<Stroke> strokes() {
    return strokes;
  }

  /** Kinds of entity that were passed over, and how many of each. */
  Map<String, Integer> missed() {
    return missed;
  }

  /** Letters beyond ASCII are written as codes in older files. */
  static String plain(String text) {
    Matcher coded = CODED.matcher(text);
    return coded.replaceAll(
        m -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(m.group(1), 16))));
  }

  /**
   * @param inherited the layer of the insert; things on layer 0 of a block stand on it
   */
  private void add(DxfEntity entity, Inserting at, Optional<String> inherited, int depth)
      throws TracingException {
    String own = plain(entity.text(8));
    String layer = own.isEmpty() || own.equals("0") ? inherited.orElse("0") : own;
    if (entity.type().equals("INSERT")) {
      insert(entity, at, layer, depth);
      return;
    }
    boolean inSpace = entity.type().equals("LINE") || entity.type().equals("ELLIPSE");
    Optional<Inserting> axes = inSpace ? Optional.of(Inserting.NONE) : entity.ownAxes();
    Optional<Stroke> stroke = axes.isEmpty() ? Optional.empty() : stroke(entity, layer);
    if (stroke.isEmpty()) {
      missed.merge(entity.type(), 1, Integer::sum);
    } else if (stroke.get().vertices().size() > 1) {
      keep(at.after(axes.get()).on(stroke.get()));
    }
  }

  private void keep(Stroke stroke) throws TracingException {
    strokes.add(stroke);
    vertices += stroke.vertices().size();
    if (strokes.size() > MOST_STROKES || vertices > MOST_VERTICES) {
      throw TracingException.at(stroke.line(), Phrase.of("tracing.tooMuch"));
    }
  }

  private void insert(DxfEntity insert, Inserting at, String layer, int depth)
      throws TracingException {
    Optional<Block> block = document.block(insert.text(2));
    Optional<Inserting> axes = insert.ownAxes();
    if (block.isEmpty() || axes.isEmpty()) {
      missed.merge("INSERT", 1, Integer::sum);
      return;
    }
    if (depth >= DEEPEST) {
      throw TracingException.at(insert.line(), Phrase.of("tracing.endless"));
    }
    DxfEntity head = block.get().head();
    Point base = new Point(head.number(10, 0), head.number(20, 0));
    int columns = Math.max(1, insert.whole(70, 1));
    int rows = Math.max(1, insert.whole(71, 1));
    for (long i = 0; i < (long) columns * rows; i++) {
      Point step =
          new Point(insert.number(44, 0) * (i % columns), insert.number(45, 0) * (i / columns));
      if (++inserted > MOST_STROKES) {
        throw TracingException.at(insert.line(), Phrase.of("tracing.repeated"));
      }
      Inserting inside =
          at.after(axes.get())
              .after(Inserting.moved(insert.point(10)))
              .after(Inserting.turned(insert.number(50, 0)))
              .after(Inserting.moved(step))
              .after(Inserting.scaled(insert.number(41, 1), insert.number(42, 1)))
              .after(Inserting.moved(base.times(-1)));
      for (DxfEntity entity : block.get().entities()) {
        if (entity.inModel()) {
          add(entity, inside, Optional.of(layer), depth + 1);
        }
      }
    }
  }

  /** In the entity's own coordinates; empty if it cannot be traced. */
  private static Optional<Stroke> stroke(DxfEntity e, String layer) throws TracingException {
    return switch (e.type()) {
      case "LINE" -> Optional.of(Stroke.straight(layer, e.point(10), e.point(11), e.line()));
      case "LWPOLYLINE" ->
          Optional.of(
              new Stroke(layer, lightVertices(e), (e.whole(70, 0) & CLOSED) != 0, e.line()));
      case "POLYLINE" ->
          (e.whole(70, 0) & MESH) != 0
              ? Optional.empty()
              : Optional.of(
                  new Stroke(layer, heavyVertices(e), (e.whole(70, 0) & CLOSED) != 0, e.line()));
      case "ARC" ->
          Optional.of(
              Curves.arc(layer, e.point(10), e.number(40), e.number(50), e.number(51), e.line()));
      case "CIRCLE" -> Optional.of(Curves.circle(layer, e.point(10), e.number(40), e.line()));
      case "ELLIPSE" ->
          Optional.of(
              Curves.ellipse(
                  layer,
                  e.point(10),
                  e.point(11),
                  e.number(40) * Math.signum(e.number(230, 1)),
                  e.number(41, 0),
                  e.number(42, 2 * Math.PI),
                  e.line()));
      default -> Optional.empty();
    };
  }

  private static List<Vertex> lightVertices(DxfEntity e) throws TracingException {
    List<Vertex> all = new ArrayList<>();
    double x = 0;
    for (DxfTag tag : e.tags()) {
      if (tag.code() == 10) {
        x = tag.number();
      } else if (tag.code() == 20) {
        all.add(new Vertex(new Point(x, tag.number()), 0));
      } else if (tag.code() == 42 && !all.isEmpty()) {
        all.set(all.size() - 1, new Vertex(all.get(all.size() - 1).at(), tag.number()));
      }
    }
    return all;
  }

  private static List<Vertex> heavyVertices(DxfEntity e) throws TracingException {
    List<Vertex> all = new ArrayList<>();
    for (DxfEntity vertex : e.parts()) {
      if ((vertex.whole(70, 0) & SPLINE_POINT) == 0) {
        all.add(new Vertex(vertex.point(10), vertex.number(42, 0)));
      }
    }
    return all;
  }
}
