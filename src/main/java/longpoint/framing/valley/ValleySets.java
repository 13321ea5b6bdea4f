package longpoint.framing.valley;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.framing.run.Axes;
import longpoint.framing.run.Bank;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.geometry.Point;
import longpoint.plan.Join.MadeFor;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
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
        stand(m, chords(plan, m), plan.unit(), problems).ifPresent(sets::add);
      }
    }
    return new ValleySets(sets, problems);
  }

  private static Problem taller(Part wing, Part main, LengthFigure by) {
    Phrase said =
        wing.id().equals(main.id())
            ? Phrase.of("framing.valley.tallerLeg", PlaceName.of(wing), by)
            : Phrase.of("framing.valley.taller", PlaceName.of(wing), by, PlaceName.of(main));
    return Problem.warning(wing.id(), said);
  }

  private static Optional<ValleySet> stand(
      Meeting m, List<Double> chords, LengthUnit unit, List<Problem> problems) {
    Run wing = m.upper();
    if (!wing.low().isEave() || !wing.high().isEave()) {
      problems.add(
          Problem.note(
              wing.part().id(), Phrase.of("framing.valley.oneWay", PlaceName.of(wing.part()))));
      return Optional.empty();
    }
    if (!(m.lower().planeRun(m.bank()) > 0)) {
      return Optional.empty(); // heels so unlike that the plane beneath ends before its wall
    }
    ValleySite site = site(m);
    ValleyLayout layout = ValleyLayout.lay(site);
    if (layout.apexX() <= site.last()) {
      return Optional.empty();
    }
    if (!layout.meets()) {
      problems.add(taller(wing.part(), m.lower().part(), new LengthFigure(site.taller(), unit)));
    }
    Side side = m.lower().bound(m.bank()).side().orElseThrow();
    List<SuppliedSet.Placed> supplied = SuppliedSet.place(site, chords, Shop.of(unit).notice());
    SuppliedCheck.check(m, layout, supplied, unit, problems);
    SetCheck.check(m, axes(m), layout.trusses(), unit, problems);
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
            supplied.isEmpty() ? layout.trusses() : SuppliedSet.standing(site, supplied),
            supplied,
            layout.setLines(),
            layout.sheetLines(),
            site));
  }

  /** The supplier's list, without lengths that no chord has. */
  private static List<Double> chords(Plan plan, Meeting m) {
    return plan.joins().stream()
        .filter(j -> j.upper().equals(m.upper().part().id()))
        .filter(j -> j.lower().equals(m.lower().part().id()))
        .flatMap(j -> j.chords().stream())
        .filter(length -> length > 0)
        .toList();
  }

  /** Up the main slope from where the wing's ridge crosses the main wall's outside face. */
  private static Axes axes(Meeting m) {
    Run wing = m.upper();
    Point end = wing.axes().at(wing.length(), wing.ridgeV());
    Point up = wing.axes().along();
    return new Axes(end.minus(up.times(m.depth())), up);
  }

  private static Optional<ValleySite.Front> front(Run wing, double depth) {
    return wing.start().isEave()
        ? Optional.of(
            new ValleySite.Front(
                wing.hipRun(Bank.START) - wing.length() + depth,
                wing.start().side().orElseThrow().slope().ratio()))
        : Optional.empty();
  }

  static ValleySite site(Meeting m) {
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
            lower.planeRun(m.bank()));
    Side left = wing.high().side().orElseThrow();
    Side right = wing.low().side().orElseThrow();
    ValleySite.Wing roof =
        new ValleySite.Wing(
            wing.ridgeHeight(),
            left.slope().ratio(),
            right.slope().ratio(),
            wing.part().deck().thickness(),
            wing.width() - wing.ridgeV() + left.reach(),
            wing.ridgeV() + right.reach(),
            front(wing, m.depth()));
    return new ValleySite(
        main,
        roof,
        m.depth(),
        wing.part().frame().spacing(),
        wing.part().frame().thickness(),
        bare ? MadeFor.FRAME : m.manner().madeFor());
  }
}
