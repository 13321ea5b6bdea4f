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
 * A check of the whole layout for square, to be made on the bare frame once the course lines are
 * snapped and before the first sheet is nailed: two tapes pulled crosswise from the ends of the
 * fascia to the ends of a course line. If both read as here, the fascia, the course lines and the
 * plane's ends stand to each other as drawn; if one is long and the other short, the plane leans.
 *
 * @param course whose upper line the tapes go to
 * @param foot the fascia, from its end nearer the datum, as it is taped
 * @param head the course line, its ends in the same order
 */
public record SquareCheck(int course, Segment foot, Segment head) {
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
   * The check with the highest course line that is long enough; none where there is no such line,
   * as on a plane of one course.
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
        .map(l -> new SquareCheck(course(deck, l), foot.get(), new Segment(l.from(), l.to())));
  }

  private static int course(PlaneDeck deck, ChalkLine line) {
    return deck.courses().stream()
        .filter(c -> Math.abs(c.to() - line.from().y()) <= deck.panel().sliver())
        .findFirst()
        .orElseThrow()
        .number();
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
