package longpoint.framing.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.plan.Join;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;

/**
 * A part drawn clean across another, as a cross gable is. The taller ridge runs through (common
 * practice); the other part is two wings, one on each side, that end at the walls of the one that
 * runs through, each with a valley set or a girder of its own. Of equal ones the lower part of the
 * join runs through.
 */
final class CrossingRuns {
  /** Sine of the angle by which two ridges may be off square. */
  private static final double SQUARE = 1.0 / 8 / 240;

  private final Plan plan;
  private final double same;
  private final List<Run> runs;
  private final List<Meeting> meetings = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private CrossingRuns(Plan plan, List<Run> runs) {
    this.plan = plan;
    this.same = Shop.of(plan.unit()).mark();
    this.runs = new ArrayList<>(runs);
  }

  /**
   * @param found the runs of every part by itself
   */
  static FoundRuns parted(Plan plan, FoundRuns found) {
    CrossingRuns crossing = new CrossingRuns(plan, found.runs());
    plan.joins().forEach(crossing::part);
    return new FoundRuns(crossing.runs, found.meetings(), found.proposals(), found.problems())
        .and(new FoundRuns(List.of(), crossing.meetings, List.of(), crossing.problems));
  }

  private void part(Join join) {
    Optional<Run> upper = only(join.upper());
    Optional<Run> lower = only(join.lower());
    if (upper.isEmpty() || lower.isEmpty() || !square(upper.get(), lower.get())) {
      return;
    }
    boolean taller = upper.get().ridgeHeight() > lower.get().ridgeHeight() + same;
    Run through = taller ? upper.get() : lower.get();
    Run parted = taller ? lower.get() : upper.get();
    if (!reachesAcross(parted, through)) {
      return;
    }
    double near = Math.min(across(parted, 0, through), across(parted, parted.length(), through));
    Run along = across(parted, 0, through) < 0 ? parted : parted.reversed();
    double far = along.length() - (-near) - through.width();
    List<Run> wings =
        List.of(
            along.openedAt(parted.id() + ".0", -near),
            along.reversed().openedAt(parted.id() + ".1", far));
    runs.remove(parted);
    runs.addAll(wings);
    if (taller) {
      Join turned = join.between(join.lower(), join.upper());
      wings.forEach(w -> RunFinder.meeting(plan, turned, w, through).ifPresent(meetings::add));
      problems.add(
          Problem.warning(
              through.part().id(),
              Phrase.of(
                  "framing.cross.taller",
                  PlaceName.of(through.part()),
                  PlaceName.of(parted.part()))));
    }
  }

  /** The run of a part that is one straight run under two slopes. */
  private Optional<Run> only(String part) {
    List<Run> own = runs.stream().filter(r -> r.part().id().equals(part)).toList();
    return own.size() == 1
            && own.get(0).extensions().isEmpty()
            && own.get(0).low().isEave()
            && own.get(0).high().isEave()
        ? Optional.of(own.get(0))
        : Optional.empty();
  }

  private static boolean square(Run one, Run other) {
    return Math.abs(one.axes().along().dot(other.axes().along())) < SQUARE;
  }

  /** Whether it comes in over one eave of a run and out over the other, between its ends. */
  private boolean reachesAcross(Run wing, Run run) {
    double a = across(wing, 0, run);
    double b = across(wing, wing.length(), run);
    double low = run.axes().u(wing.axes().at(0, 0));
    double high = run.axes().u(wing.axes().at(0, wing.width()));
    double thickness = wing.part().frame().thickness();
    return Math.min(a, b) < -thickness
        && Math.max(a, b) > run.width() + thickness
        && Math.min(low, high) > -same
        && Math.max(low, high) < run.length() + same;
  }

  /** Where an end of a wing lies across a run. */
  private static double across(Run wing, double u, Run run) {
    return run.axes().v(wing.axes().at(u, wing.width() / 2));
  }
}
