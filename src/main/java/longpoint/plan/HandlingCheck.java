package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/** Whether weights, loads and spacings of restraint can be meant. */
final class HandlingCheck {
  /** A pound is 0.45359237 kg by definition (1959); a foot 0.3048 m. */
  private static final double KG_PER_LB = 0.45359237;

  private static final double PCF = KG_PER_LB / (0.3048 * 0.3048 * 0.3048);
  private static final double PSF = KG_PER_LB / (0.3048 * 0.3048);

  /** Kilonewtons on a square metre for each pound on a square foot. */
  private static final double KPA = PSF * 9.80665 / 1000;

  private final LengthUnit unit;
  private final List<Problem> problems = new ArrayList<>();

  private HandlingCheck(LengthUnit unit) {
    this.unit = unit;
  }

  static List<Problem> check(Plan plan) {
    HandlingCheck check = new HandlingCheck(plan.unit());
    Handling given = plan.handling();
    check.weights(given.weights());
    check.loads(given.loads());
    check.restraint(given.restraint());
    plan.parts().forEach(check::lifts);
    return check.problems.stream().distinct().toList();
  }

  private void weights(Handling.Weights w) {
    between("weights.lumber", w.lumber(), metric(10, PCF), metric(80, PCF));
    between("weights.panel", w.panel(), metric(0.2, PSF), metric(20, PSF));
    w.trusses()
        .values()
        .forEach(
            t ->
                between(
                    "weights.truss", Optional.of(t), Double.MIN_VALUE, metric(20_000, KG_PER_LB)));
  }

  private void loads(Handling.Loads l) {
    for (Optional<Double> load : List.of(l.dead(), l.live(), l.snow(), l.ceiling())) {
      between("loads", load, 0, metric(1000, KPA));
    }
  }

  private void restraint(Handling.Restraint r) {
    double foot = unit.fromMillimetres(12 * LengthUnit.MM_PER_INCH);
    between("restraint", r.rows(), foot, 40 * foot);
    between("restraint", r.bottomRows(), foot, 40 * foot);
    between("restraint", r.board(), 4 * foot, 40 * foot);
  }

  private void lifts(Part part) {
    for (Lift lift : part.frame().placements().lifts()) {
      double foot = unit.fromMillimetres(12 * LengthUnit.MM_PER_INCH);
      Optional<Double> hook = lift.rigging().hook();
      if (hook.isPresent() && !(hook.get() >= foot / 12 && hook.get() <= 1000 * foot)) {
        problems.add(Problem.warning(part.id(), Phrase.of("plan.lift.hook", lift.name())));
      }
      int at = lift.rigging().hangAt().size();
      if (at == 1 || at > 4) {
        problems.add(Problem.warning(part.id(), Phrase.of("plan.lift.hangAt", lift.name(), at)));
      }
    }
  }

  private double metric(double pounds, double factor) {
    return switch (unit) {
      case INCH -> pounds;
      case MILLIMETRE -> pounds * factor;
    };
  }

  private void between(String what, Optional<Double> value, double least, double most) {
    if (value.isPresent() && !(value.get() >= least && value.get() <= most)) {
      problems.add(Problem.warning("plan", Phrase.of("plan." + what)));
    }
  }
}
