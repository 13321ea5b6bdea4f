package longpoint.field.chalk;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longpoint.deck.PieceEdge;
import longpoint.deck.PlaneDeck;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * A check of a whole layout for square: two tapes pulled crosswise, from the ends of an edge that
 * stands to the ends of a snapped line. If both read as here, edge and lines stand to each other as
 * drawn; if one is long and the other short, the layout leans.
 *
 * <p>On the bare frame, before the first sheet is nailed, the tapes go from the fascia to the
 * highest course line; for what is set on the finished deck, from the feet of the set lines to the
 * lowest valley truss.
 *
 * @param foot the ends the tapes start from, nearer the datum first, as they are taped
 * @param head the line they go to, its ends in the same order
 */
public record SquareCheck(Segment foot, ChalkLine head) {
  /** A course line this much shorter than the fascia, as a share, checks little. */
  private static final double SHORT = 0.5;

  public SquareCheck {
    Objects.requireNonNull(foot);
    Objects.requireNonNull(head);
  }

  /** The tapes, from the fascia up: first from the end nearer the datum. */
  public List<Segment> tapes() {
    return List.of(new Segment(foot.from(), head.to()), new Segment(foot.to(), head.from()));
  }

  /**
   * The check of a plane's courses with the highest line that is long enough; none where there is
   * no such line, as on a plane of one course.
   *
   * @param courses lines of kind COURSE, course by course from the fascia
   */
  static Optional<SquareCheck> of(PlaneDeck deck, Datum datum, List<ChalkLine> courses) {
    Optional<Segment> foot = foot(deck, datum);
    if (foot.isEmpty()) {
      return Optional.empty();
    }
    double least = SHORT * foot.get().length();
    return courses.stream()
        .filter(l -> l.diagonal() >= least)
        .max(
            Comparator.comparingDouble((ChalkLine l) -> l.from().y())
                .thenComparingDouble(ChalkLine::diagonal))
        .map(l -> new SquareCheck(foot.get(), l));
  }

  /**
   * The check of a valley set with the lowest of its trusses; none where it has no two set lines.
   *
   * @param lines of one overlay, all kinds
   */
  static Optional<SquareCheck> of(List<ChalkLine> lines) {
    List<Point> feet =
        lines.stream()
            .filter(l -> l.kind() == ChalkLine.Kind.SET)
            .map(ChalkLine::from)
            .sorted(Comparator.comparingDouble(Point::x))
            .toList();
    return feet.size() != 2
        ? Optional.empty()
        : lines.stream()
            .filter(l -> l.kind() == ChalkLine.Kind.BEARING)
            .findFirst()
            .map(l -> new SquareCheck(new Segment(feet.get(0), feet.get(1)), l));
  }

  /** The longest unbroken stretch of fascia. */
  private static Optional<Segment> foot(PlaneDeck deck, Datum datum) {
    double near = deck.panel().sliver();
    List<Segment> stretches =
        deck.rims().stream()
            .filter(e -> e.use() == PieceEdge.Use.FASCIA)
            .map(PieceEdge::line)
            .filter(s -> Math.abs(s.from().y()) <= near && Math.abs(s.to().y()) <= near)
            .map(s -> new Segment(datum.taped(s.from()), datum.taped(s.to())))
            .map(s -> s.from().x() <= s.to().x() ? s : new Segment(s.to(), s.from()))
            .sorted(Comparator.comparingDouble(s -> s.from().x()))
            .toList();
    Segment best = null;
    Segment run = null;
    for (Segment stretch : stretches) {
      boolean on = run != null && stretch.from().x() - run.to().x() <= near;
      run = on ? new Segment(run.from(), stretch.to()) : stretch;
      best = best == null || run.length() > best.length() ? run : best;
    }
    return Optional.ofNullable(best).map(SquareCheck::level);
  }

  private static Segment level(Segment s) {
    return new Segment(new Point(s.from().x(), 0), new Point(s.to().x(), 0));
  }
}
