package longpoint.field.chalk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.deck.DeckPlan;
import longpoint.deck.PieceEdge;
import longpoint.deck.PlaneDeck;
import longpoint.framing.FramingSet;
import longpoint.framing.gable.Ladder;
import longpoint.framing.valley.ValleyLine;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;

/** What the frame draws on the deck: valley sets as overbuilds, ladders as lookouts. */
final class SiteLines {
  private final Plan plan;

  SiteLines(Plan plan) {
    this.plan = plan;
  }

  /** Valley sets that stand on a deck; where parts are framed through there is none beneath. */
  List<Overbuild> overbuilds(FramingSet framing) {
    List<Overbuild> overbuilds = new ArrayList<>();
    for (ValleySet set : framing.valleySets()) {
      Part upper = part(set.upper());
      if (overlays(upper, part(set.lower()))) {
        overbuilds.add(overbuild(set, upper));
      }
    }
    return overbuilds;
  }

  /** The part of a run: a part's main run has its id, the others add a dot and a number. */
  private Part part(String run) {
    String main = run.substring(0, run.lastIndexOf('.') < 0 ? run.length() : run.lastIndexOf('.'));
    return plan.part(run)
        .or(() -> plan.part(main))
        .orElseThrow(() -> new IllegalArgumentException("no part for run " + run));
  }

  private boolean overlays(Part upper, Part lower) {
    return plan.joins().stream()
        .anyMatch(
            j ->
                j.method() == Join.Method.OVERLAY
                    && j.upper().equals(upper.id())
                    && j.lower().equals(lower.id()));
  }

  private static Overbuild overbuild(ValleySet set, Part upper) {
    List<Segment> bearings = new ArrayList<>();
    for (ValleyTruss truss : set.trusses()) {
      bearings.add(
          new Segment(
              set.axes().at(truss.x(), truss.left()), set.axes().at(truss.x(), -truss.right())));
    }
    double foot = set.setLines().stream().mapToDouble(ValleyLine::x).min().orElse(set.last());
    return new Overbuild(
        set.plane(),
        upper.name(),
        new Segment(set.axes().at(foot, 0), set.axes().at(set.apex().x(), 0)),
        lines(set, set.setLines()),
        bearings,
        lines(set, set.sheetLines()),
        upper.frame().thickness());
  }

  private static List<Segment> lines(ValleySet set, List<ValleyLine> lines) {
    return lines.stream().map(l -> new Segment(set.foot(l), set.top(l))).toList();
  }

  /** Ladders on the rakes they belong to. */
  List<Lookouts> lookouts(FramingSet framing, DeckPlan deck) {
    List<Lookouts> lookouts = new ArrayList<>();
    for (Ladder ladder : framing.ladders()) {
      rake(ladder, deck).ifPresent(lookouts::add);
    }
    return lookouts;
  }

  /**
   * Seen from outside the gable the left rake is the right end of its plane, seen from the ground
   * in front of that plane; the right rake the left end.
   */
  private Optional<Lookouts> rake(Ladder ladder, DeckPlan deck) {
    Optional<Side> gable = side(ladder.side());
    if (gable.isEmpty()) {
      return Optional.empty();
    }
    for (PlaneDeck plane : deck.planes()) {
      for (PieceEdge rim : plane.rims()) {
        boolean rightEnd = rim.line().to().y() > rim.line().from().y();
        if (rim.use() == PieceEdge.Use.RAKE
            && rightEnd == (ladder.rake() == Ladder.Rake.LEFT)
            && above(gable.get(), plane, rim)) {
          return Optional.of(marks(ladder, plane, rim, gable.get()));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Side> side(String id) {
    return plan.parts().stream()
        .flatMap(p -> plan.sides(p).stream())
        .filter(s -> s.id().equals(id))
        .findFirst();
  }

  /** Whether a rake hangs over a gable wall at its overhang. */
  private static boolean above(Side gable, PlaneDeck plane, PieceEdge rim) {
    double near = plane.panel().sliver();
    Point middle = plane.unfold().plan(rim.line().middle());
    return plane.plane().startsWith(gable.part() + "/")
        && Math.abs(gable.wall().offset(middle) + gable.reach()) <= near
        && gable.wall().along(middle) > -plane.panel().length()
        && gable.wall().along(middle) < gable.wall().length() + plane.panel().length();
  }

  /** Lookouts are measured from the tail's plumb cut; the deck starts a fascia farther out. */
  private Lookouts marks(Ladder ladder, PlaneDeck plane, PieceEdge rim, Side gable) {
    double fascia = gable.fascia() * plane.unfold().stretch();
    List<Double> marks = ladder.lookouts().stream().map(v -> v + fascia).toList();
    double foot = Math.min(rim.line().from().y(), rim.line().to().y());
    Segment rake =
        rim.line().from().y() == foot
            ? rim.line()
            : new Segment(rim.line().to(), rim.line().from());
    double wall = ladder.overhang();
    return new Lookouts(plane.plane(), rake, marks, wall, wall + ladder.backSpan());
  }
}
