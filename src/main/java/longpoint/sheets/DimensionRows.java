package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.units.LengthText;

/**
 * Stands dimensions outside the building, in rows that step outward. Those of slanting walls come
 * first, since they have the least choice, then the short ones, which stand nearer. Each tries, row
 * by row, the middle of its line, then the gaps between other extension lines, then past its ends,
 * and takes the first place where its figure covers nothing, nothing runs through it and no roof
 * lies beneath it; failing that, the first where it covers no other figure.
 */
final class DimensionRows {
  /** On paper, millimetres. */
  private static final double FIRST_ROW = 9;

  private static final double ROW = 7;

  /** Room on each side of a figure between the ends of its line. */
  private static final double AIR = 1.5;

  /** What is shorter on paper is a blot, not a dimension. */
  private static final double SHORTEST = 0.5;

  /** More rows than this no one reads. */
  private static final int ROWS = 12;

  /** Rows tried before the far side of the building is. */
  private static final int NEAR_ROWS = 5;

  /** Gaps between extension lines that are tried for a figure, from the middle out. */
  private static final int GAPS = 4;

  private final Plan plan;
  private final double unitsPerMm;
  private final Clutter clutter;
  private final Bounds limit;
  private final List<Region> grounds;
  private final List<Segment> lines = new ArrayList<>();
  private int crossed;

  /**
   * @param limit no dimension stands outside it
   * @param grounds that dimensions keep off where they can
   */
  DimensionRows(Plan plan, double unitsPerMm, Clutter clutter, Bounds limit, List<Region> grounds) {
    this.grounds = List.copyOf(grounds);
    this.plan = plan;
    this.unitsPerMm = unitsPerMm;
    this.clutter = clutter;
    this.limit = limit;
  }

  /** The dimensions that have a place within the limit; their room is taken in the clutter. */
  List<Mark> place(List<WallSpans.Span> wanted) {
    List<WallSpans.Span> spans = new ArrayList<>(wanted);
    spans.sort(
        Comparator.comparing(WallSpans.Span::square).thenComparingDouble(WallSpans.Span::length));
    List<Mark> placed = new ArrayList<>();
    for (WallSpans.Span span : spans) {
      Optional<Mark.Dimension> mark = place(span, crossings(span, spans));
      if (mark.isPresent()) {
        clutter.take(clutter.shape(mark.get()));
        lines.add(DimensionLayout.of(mark.get(), unitsPerMm).line());
        placed.add(mark.get());
      }
    }
    return placed;
  }

  /** Where extension lines of the same rows fall inside a span, from its start, with both ends. */
  private static List<Double> crossings(WallSpans.Span span, List<WallSpans.Span> all) {
    TreeSet<Double> inside = new TreeSet<>(List.of(0.0, span.length()));
    for (WallSpans.Span other : all) {
      if (span.facesLike(other)) {
        for (Point end : List.of(other.from(), other.to())) {
          double along = span.wall().along(end) - span.start();
          if (along > 0 && along < span.length()) {
            inside.add(along);
          }
        }
      }
    }
    return new ArrayList<>(inside);
  }

  private Optional<Mark.Dimension> place(WallSpans.Span span, List<Double> crossings) {
    if (span.length() < SHORTEST * unitsPerMm) {
      return Optional.empty();
    }
    String text = LengthText.of(span.length(), plan.unit());
    List<Double> slides = slides(span, crossings, text);
    Optional<Mark.Dimension> secondBest = Optional.empty();
    for (double offset : offsets(span, unitsPerMm)) {
      for (double slide : slides) {
        Mark.Dimension mark = mark(span, offset, slide, text);
        if (figureStands(mark) && !runsAlongAnother(mark)) {
          Clutter.Shape shape = clutter.shape(mark);
          if (shape.allCorners(limit::contains)) {
            if (!clutter.crosses(shape) && !standsOnRoof(mark, shape)) {
              return Optional.of(mark);
            }
            secondBest = secondBest.or(() -> Optional.of(mark));
          }
        }
      }
    }
    crossed += secondBest.isPresent() ? 1 : 0;
    return secondBest;
  }

  /** How many figures found no place free of strokes and roofs. */
  int crossed() {
    return crossed;
  }

  /** Rows before the wall, then rows beyond the far side of the building, then more before it. */
  private static List<Double> offsets(WallSpans.Span span, double unitsPerMm) {
    List<Double> offsets = new ArrayList<>();
    for (int row = 0; row < NEAR_ROWS; row++) {
      offsets.add(-span.clear() / unitsPerMm - FIRST_ROW - row * ROW);
    }
    for (int row = 0; row < NEAR_ROWS; row++) {
      offsets.add(span.behind() / unitsPerMm + FIRST_ROW + row * ROW);
    }
    for (int row = NEAR_ROWS; row < ROWS; row++) {
      offsets.add(-span.clear() / unitsPerMm - FIRST_ROW - row * ROW);
    }
    return offsets;
  }

  /** Whether the dimension line or its figure lies over a wall's ground or a roof. */
  private boolean standsOnRoof(Mark.Dimension mark, Clutter.Shape shape) {
    Segment line = DimensionLayout.of(mark, unitsPerMm).line();
    List<Point> points = new ArrayList<>(List.of(line.from(), line.middle(), line.to()));
    shape.lettering().forEach(b -> points.addAll(b.corners()));
    return points.stream().anyMatch(p -> grounds.stream().anyMatch(g -> g.contains(p)));
  }

  /** Asked of the figure alone first: it settles most places, and is one box. */
  private boolean figureStands(Mark.Dimension mark) {
    Clutter.Shape figure = clutter.shape(DimensionLayout.of(mark, unitsPerMm).text());
    return figure.allCorners(limit::contains) && !clutter.covers(figure);
  }

  private boolean runsAlongAnother(Mark.Dimension mark) {
    Segment line = DimensionLayout.of(mark, unitsPerMm).line();
    double touch = AIR * unitsPerMm / 10;
    for (Segment other : lines) {
      if (WallSpans.parallel(line, other)
          && Math.abs(other.offset(line.from())) < ROW / 2 * unitsPerMm) {
        double a = other.along(line.from());
        double b = other.along(line.to());
        if (Math.min(a, b) < other.length() - touch && Math.max(a, b) > touch) {
          return true;
        }
      }
    }
    return false;
  }

  /** Where along its line the figure may stand, in the order of liking, millimetres from middle. */
  private List<Double> slides(WallSpans.Span span, List<Double> crossings, String text) {
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
    slides = new ArrayList<>(slides.subList(0, Math.min(GAPS, slides.size())));
    slides.add(half / unitsPerMm + width / 2);
    slides.add(-half / unitsPerMm - width / 2);
    return slides;
  }

  private static Mark.Dimension mark(
      WallSpans.Span span, double offset, double slide, String text) {
    return new Mark.Dimension(
        span.from(), span.to(), offset, slide, text, Layers.DIMENSIONS, span.subject());
  }
}
