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
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.units.LengthText;

/**
 * Stands dimensions outside the building, in rows that step outward. Shorter ones stand nearer the
 * building. Each tries, row by row, the middle of its line, then the gaps between other extension
 * lines, then past its ends, and takes the first place where its figure covers nothing and nothing
 * runs through it. No figure ever covers another.
 */
final class DimensionRows {
  /** On paper, millimetres. */
  private static final double FIRST_ROW = 9;

  private static final double ROW = 7;

  /** Room on each side of a figure between the ends of its line. */
  private static final double AIR = 1.5;

  /** More rows than this no one reads. */
  private static final int ROWS = 12;

  /** Gaps between extension lines that are tried for a figure, from the middle out. */
  private static final int GAPS = 4;

  private final Plan plan;
  private final double unitsPerMm;
  private final Clutter clutter;
  private final Bounds limit;
  private final List<Segment> lines = new ArrayList<>();

  /**
   * @param limit no dimension stands outside it
   */
  DimensionRows(Plan plan, double unitsPerMm, Clutter clutter, Bounds limit) {
    this.plan = plan;
    this.unitsPerMm = unitsPerMm;
    this.clutter = clutter;
    this.limit = limit;
  }

  /** The dimensions that have a place within the limit; their room is taken in the clutter. */
  List<Mark> place(List<WallSpans.Span> wanted) {
    List<WallSpans.Span> spans = new ArrayList<>(wanted);
    spans.sort(Comparator.comparingDouble(WallSpans.Span::length));
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
    String text = LengthText.of(span.length(), plan.unit());
    List<Double> slides = slides(span, crossings, text);
    Optional<Mark.Dimension> secondBest = Optional.empty();
    for (int row = 0; row < ROWS; row++) {
      for (double slide : slides) {
        Mark.Dimension mark = mark(span, row, slide, text);
        Clutter.Shape shape = clutter.shape(mark);
        if (shape.allCorners(limit::contains)
            && !clutter.covers(shape)
            && !runsAlongAnother(mark)) {
          if (!clutter.crosses(shape)) {
            return Optional.of(mark);
          }
          secondBest = secondBest.or(() -> Optional.of(mark));
        }
      }
    }
    return secondBest;
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

  private Mark.Dimension mark(WallSpans.Span span, int row, double slide, String text) {
    double offset = span.clear() / unitsPerMm + FIRST_ROW + row * ROW;
    return new Mark.Dimension(
        span.from(), span.to(), -offset, slide, text, Layers.DIMENSIONS, span.subject());
  }
}
