package longpoint.framing.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;

/**
 * Runs that come in over another roof end where that roof reaches the top of their walls, even if
 * their outline is drawn further in, as it is for most dormers: beyond, no wall carries anything
 * and what stands there stands on the other roof. A run that comes in lower than the wall beneath
 * ends at that wall.
 */
final class RunsInSight {
  private final Plan plan;
  private final double same;
  private final List<Run> runs;
  private final List<Problem> problems = new ArrayList<>();

  private RunsInSight(Plan plan, List<Run> runs) {
    this.plan = plan;
    this.same = Shop.of(plan.unit()).mark();
    this.runs = new ArrayList<>(runs);
  }

  /**
   * @param found the runs of every part by itself
   */
  static FoundRuns of(Plan plan, FoundRuns found) {
    RunsInSight cut = new RunsInSight(plan, found.runs());
    plan.joins().forEach(cut::end);
    List<Problem> problems = new ArrayList<>(found.problems());
    problems.addAll(cut.problems);
    return new FoundRuns(cut.runs, found.meetings(), found.proposals(), problems);
  }

  private void end(Join join) {
    for (Run wing : List.copyOf(runs)) {
      if (wing.part().id().equals(join.upper()) && !isRafters(wing)) {
        Optional<Run> cut = RunFinder.isOpen(wing.end()) ? ended(join, wing) : Optional.of(wing);
        replace(
            join, wing, RunFinder.isOpen(wing.start()) ? cut.flatMap(w -> begun(join, w)) : cut);
      }
    }
  }

  /** Rafters end one by one, each where it comes to the other roof. */
  private static boolean isRafters(Run wing) {
    return wing.part().frame().method() == Frame.Method.RAFTER;
  }

  private Optional<Run> begun(Join join, Run wing) {
    return ended(join, wing.reversed())
        .map(turned -> turned.length() < wing.length() ? turned.reversed() : wing);
  }

  /** With its END where its walls end; empty if it has none. */
  private Optional<Run> ended(Join join, Run wing) {
    Optional<Meeting> meeting =
        RunFinder.first(runs, join, lower -> RunFinder.meeting(plan, join, wing, lower));
    double past =
        meeting.filter(Meeting::takesValleyTrusses).map(m -> m.depth() - m.wallsEnd()).orElse(0.0);
    if (past <= same) {
      return Optional.of(wing);
    }
    double thickness = wing.part().frame().thickness();
    double length = wing.length() - past;
    if (length < thickness) {
      return Optional.empty();
    }
    boolean atWall = meeting.map(Meeting::wallsEnd).orElse(0.0) == 0;
    return Optional.of(wing.endedAt(atWall ? length : wholeBays(wing, length)));
  }

  /** Up to the last truss of the layout: on the roof beneath it goes on as the valley set. */
  private static double wholeBays(Run wing, double length) {
    double thickness = wing.part().frame().thickness();
    double spacing = wing.part().frame().spacing();
    double bays = Math.floor((length - thickness / 2) / spacing);
    return Math.max(thickness, bays * spacing + thickness / 2);
  }

  private void replace(Join join, Run wing, Optional<Run> cut) {
    if (cut.isPresent()) {
      runs.set(runs.indexOf(wing), cut.get());
    } else {
      runs.remove(wing);
      problems.add(
          Problem.warning(
              wing.part().id(),
              Phrase.of(
                  "framing.join.under",
                  PlaceName.of(wing.part()),
                  PlaceName.part(join.lower()).in(plan))));
    }
  }
}
