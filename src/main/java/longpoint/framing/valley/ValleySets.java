package longpoint.framing.valley;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.run.Axes;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.Join.MadeFor;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.wording.Phrase;

/**
 * Stands a valley set wherever one run comes in over a plane of another.
 *
 * @param sets one for each meeting that has one
 */
public record ValleySets(List<ValleySet> sets, List<Problem> problems) {
  public ValleySets {
    sets = List.copyOf(sets);
    problems = List.copyOf(problems);
  }

  public static ValleySets stand(Plan plan, List<Meeting> meetings) {
    List<ValleySet> sets = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Meeting m : meetings) {
      if (m.takesValleyTrusses()) {
        stand(m, problems).ifPresent(sets::add);
      }
    }
    return new ValleySets(sets, problems);
  }

  private static Optional<ValleySet> stand(Meeting m, List<Problem> problems) {
    Run wing = m.upper();
    if (!wing.low().isEave() || !wing.high().isEave()) {
      problems.add(
          Problem.note(wing.id(), Phrase.of("framing.valley.oneWay", PlaceName.of(wing.part()))));
      return Optional.empty();
    }
    ValleySite site = site(m);
    ValleyLayout layout = ValleyLayout.lay(site);
    if (layout.apexX() <= site.last()) {
      return Optional.empty();
    }
    if (!layout.meets()) {
      problems.add(
          Problem.warning(
              wing.id(), Phrase.of("framing.valley.taller", PlaceName.of(wing.part()))));
    }
    Side side = m.lower().bound(m.bank()).side().orElseThrow();
    return Optional.of(
        new ValleySet(
            wing.id(),
            m.lower().id(),
            side.id(),
            axes(m),
            layout.shift(),
            layout.firstGap(),
            site.last(),
            new ValleySet.Apex(layout.apexX(), layout.apexV()),
            layout.trusses(),
            layout.setLines(),
            layout.sheetLines(),
            site));
  }

  /** Up the main slope from where the wing's ridge crosses the main wall's outside face. */
  private static Axes axes(Meeting m) {
    Run wing = m.upper();
    Point end = wing.axes().at(wing.length(), wing.ridgeV());
    Point up = wing.axes().along();
    return new Axes(end.minus(up.times(m.depth())), up);
  }

  private static ValleySite site(Meeting m) {
    Run wing = m.upper();
    Run lower = m.lower();
    Side side = lower.bound(m.bank()).side().orElseThrow();
    boolean bare = m.manner() == Meeting.Manner.THROUGH;
    ValleySite.Main main =
        new ValleySite.Main(
            side.slope().ratio(),
            side.plateHeight() + side.heel(),
            bare ? 0 : lower.part().deck().thickness(),
            -side.reach(),
            planeRun(lower, m.bank()));
    Side left = wing.high().side().orElseThrow();
    Side right = wing.low().side().orElseThrow();
    ValleySite.Wing roof =
        new ValleySite.Wing(
            wing.ridgeHeight(),
            left.slope().ratio(),
            right.slope().ratio(),
            wing.part().deck().thickness(),
            wing.width() - wing.ridgeV() + left.reach(),
            wing.ridgeV() + right.reach());
    return new ValleySite(
        main,
        roof,
        m.depth(),
        wing.part().frame().spacing(),
        wing.part().frame().thickness(),
        bare ? MadeFor.FRAME : m.manner().madeFor());
  }

  /** Plan distance from the wall to the top of the plane beneath. */
  private static double planeRun(Run lower, Bank bank) {
    return switch (bank) {
      case LOW -> lower.ridgeV();
      case HIGH -> lower.width() - lower.ridgeV();
      case START, END -> lower.hipRun(bank);
    };
  }
}
