package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.units.LengthText;

/**
 * Dimensions of every wall, outside the building, in rows that step outward.
 *
 * <p>A wall that another part's corner touches gets a chain of its pieces and its whole length. A
 * length already given for the opposite wall of the same part is not given again. Shorter
 * dimensions stand nearer the building. Each tries, row by row, the middle of its line, then the
 * gaps between other extension lines, then past its ends, and takes the first place where its
 * figure covers nothing and is crossed by nothing.
 */
final class DimensionRows {
  /** On paper, millimetres. */
  private static final double FIRST_ROW = 9;

  private static final double ROW = 7;

  /** Room on each side of a figure between the ends of its line. */
  private static final double AIR = 1.5;

  /**
   * Two lengths closer than this print alike at any scale a roof is drawn at, so the second says
   * nothing new; and a corner this close to a wall touches it. Millimetres of the building.
   */
  private static final double ALIKE_MM = 0.5;

  /**
   * Walls that face within this angle of each other share rows. A tenth of a degree moves the far
   * end of a 12 m wall by 20 mm: on paper the same line.
   */
  private static final double SAME_WAY_DEGREES = 0.1;

  /** Rows tried for a place where no stroke runs through a figure, before one is put up with. */
  private static final int ROWS = 40;

  /** A length to be given; from and to in the direction of its wall. */
  private record Span(Segment wall, double start, double end, String subject) {
    double length() {
      return end - start;
    }
  }

  private final Plan plan;
  private final double unitsPerMm;
  private final List<Point> outermost;
  private final Clutter clutter;
  private final double alike;
  private final List<Segment> lines = new ArrayList<>();

  /**
   * @param outermost points the rows must stay clear of: corners of walls and roof
   */
  DimensionRows(Plan plan, double unitsPerMm, List<Point> outermost, Clutter clutter) {
    this.plan = plan;
    this.unitsPerMm = unitsPerMm;
    this.outermost = outermost;
    this.clutter = clutter;
    this.alike = plan.unit().fromMillimetres(ALIKE_MM);
  }

  /** The dimensions, placed; their room is taken in the clutter. */
  List<Mark> place() {
    List<Span> spans = new ArrayList<>();
    plan.parts().forEach(p -> spans.addAll(spans(p)));
    spans.sort(Comparator.comparingDouble(Span::length));
    List<Mark> placed = new ArrayList<>();
    for (Span span : spans) {
      Mark.Dimension mark = place(span, crossings(span, spans));
      clutter.take(mark);
      lines.add(DimensionLayout.of(mark, unitsPerMm).line());
      placed.add(mark);
    }
    return placed;
  }

  private List<Span> spans(Part part) {
    List<Side> sides = new ArrayList<>(plan.sides(part));
    sides.removeIf(s -> s.wall().length() <= alike);
    // A side that runs on under another roof is the worst place to measure: try it last.
    sides.sort(Comparator.comparing(s -> s.kind() == EdgeKind.OPEN));
    List<Span> spans = new ArrayList<>();
    for (Side side : sides) {
      List<Double> cuts = cuts(side.wall(), part);
      for (int i = 0; i + 1 < cuts.size() && cuts.size() > 2; i++) {
        add(spans, new Span(side.wall(), cuts.get(i), cuts.get(i + 1), side.id()));
      }
      add(spans, new Span(side.wall(), 0, side.wall().length(), side.id()));
    }
    return spans;
  }

  private void add(List<Span> spans, Span span) {
    if (spans.stream().noneMatch(s -> sameLength(s, span))) {
      spans.add(span);
    }
  }

  /** Whether both give the distance between the same two parallel lines. */
  private boolean sameLength(Span a, Span b) {
    Point along = a.wall().direction();
    if (Math.abs(along.cross(b.wall().direction())) > Math.toRadians(SAME_WAY_DEGREES)) {
      return false;
    }
    double first = a.wall().along(at(b, b.start()));
    double second = a.wall().along(at(b, b.end()));
    return Math.abs(Math.min(first, second) - a.start()) < alike
        && Math.abs(Math.max(first, second) - a.end()) < alike;
  }

  private static Point at(Span span, double along) {
    return span.wall().from().plus(span.wall().direction().times(along));
  }

  /** Where corners of other parts touch a wall, with its own ends, in order. */
  private List<Double> cuts(Segment wall, Part own) {
    TreeSet<Double> touching = new TreeSet<>();
    for (Part other : plan.parts()) {
      if (!other.id().equals(own.id())) {
        for (Point corner : other.outline().points()) {
          if (wall.distance(corner) < alike) {
            touching.add(wall.along(corner));
          }
        }
      }
    }
    List<Double> cuts = new ArrayList<>(List.of(0.0));
    for (double t : touching) {
      if (t - cuts.get(cuts.size() - 1) > alike && wall.length() - t > alike) {
        cuts.add(t);
      }
    }
    cuts.add(wall.length());
    return cuts;
  }

  /** Where extension lines of the same rows fall inside a span, from its start, with both ends. */
  private List<Double> crossings(Span span, List<Span> all) {
    TreeSet<Double> inside = new TreeSet<>(List.of(0.0, span.length()));
    Point way = span.wall().direction();
    for (Span other : all) {
      Point otherWay = other.wall().direction();
      boolean sameRows =
          Math.abs(way.cross(otherWay)) < Math.toRadians(SAME_WAY_DEGREES) && way.dot(otherWay) > 0;
      for (double end : sameRows ? List.of(other.start(), other.end()) : List.<Double>of()) {
        double along = span.wall().along(at(other, end)) - span.start();
        if (along > alike && along < span.length() - alike) {
          inside.add(along);
        }
      }
    }
    return new ArrayList<>(inside);
  }

  private Mark.Dimension place(Span span, List<Double> crossings) {
    String text = LengthText.of(span.length(), plan.unit());
    List<Double> slides = slides(span, crossings, text);
    Optional<Mark.Dimension> secondBest = Optional.empty();
    int row = 0;
    while (row < ROWS || secondBest.isEmpty()) {
      for (double slide : slides) {
        Mark.Dimension mark = mark(span, row, slide, text);
        if (!clutter.covers(mark) && !runsAlongAnother(mark)) {
          if (clutter.crossings(mark) == 0) {
            return mark;
          }
          secondBest = secondBest.or(() -> Optional.of(mark));
        }
      }
      row++;
    }
    return secondBest.get();
  }

  private boolean runsAlongAnother(Mark.Dimension mark) {
    Segment line = DimensionLayout.of(mark, unitsPerMm).line();
    for (Segment other : lines) {
      if (Math.abs(line.direction().cross(other.direction())) < Math.toRadians(SAME_WAY_DEGREES)
          && Math.abs(other.offset(line.from())) < ROW / 2 * unitsPerMm) {
        double a = other.along(line.from());
        double b = other.along(line.to());
        if (Math.min(a, b) < other.length() - alike && Math.max(a, b) > alike) {
          return true;
        }
      }
    }
    return false;
  }

  /** Where along its line the figure may stand, in the order of liking, millimetres from middle. */
  private List<Double> slides(Span span, List<Double> crossings, String text) {
    double width = Lettering.width(text, DimensionLayout.TEXT_HEIGHT) + 2 * AIR;
    double half = span.length() / 2;
    List<Double> slides = new ArrayList<>();
    for (int i = 0; i + 1 < crossings.size(); i++) {
      double gap = crossings.get(i + 1) - crossings.get(i);
      if (gap >= width * unitsPerMm) {
        slides.add(((crossings.get(i) + crossings.get(i + 1)) / 2 - half) / unitsPerMm);
      }
    }
    slides.sort(Comparator.comparingDouble(Math::abs));
    slides.add(half / unitsPerMm + width / 2);
    slides.add(-half / unitsPerMm - width / 2);
    return slides;
  }

  private Mark.Dimension mark(Span span, int row, double slide, String text) {
    Point out = span.wall().direction().left().times(-1);
    double clear =
        outermost.stream().mapToDouble(p -> p.minus(span.wall().from()).dot(out)).max().orElse(0);
    double offset = clear / unitsPerMm + FIRST_ROW + row * ROW;
    return new Mark.Dimension(
        at(span, span.start()),
        at(span, span.end()),
        -offset,
        slide,
        text,
        Layers.DIMENSIONS,
        span.subject());
  }
}
