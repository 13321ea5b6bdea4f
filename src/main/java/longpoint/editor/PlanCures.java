package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import longpoint.plan.Buying;
import longpoint.plan.Defaults;
import longpoint.plan.Plan;
import longpoint.plan.PlanCheck;
import longpoint.units.SlopeText;
import longpoint.wording.Phrase;

/** Cures of figures that hold for the whole plan: what cannot be meant goes back to the usual. */
final class PlanCures {
  private PlanCures() {}

  static List<Cure> of(Plan plan) {
    List<Cure> cures = new ArrayList<>();
    Defaults now = plan.defaults();
    Defaults usual = Defaults.of(plan.unit());
    if (!(now.slope().ratio() > 0)) {
      cures.add(
          Cures.cure(
              "default.slope",
              PlanCommands.defaults(d -> d.withSlope(usual.slope())),
              SlopeText.of(usual.slope())));
    }
    boolean negative = !(now.overhang() >= 0 && now.heel().orElse(0.0) >= 0 && now.fascia() >= 0);
    if (negative || !(now.ridgeBlockRelief() >= 0) || !(now.lookoutSpacing() > 0)) {
      cures.add(Cures.cure("default.lengths", PlanCommands.defaults(d -> lengths(d, usual))));
    }
    if (isBuyingOdd(plan)) {
      Buying buying = Buying.of(plan.unit());
      cures.add(Cures.cure("buying", PlanCommands.buying(buying)));
    }
    return cures;
  }

  private static boolean isBuyingOdd(Plan plan) {
    return PlanCheck.check(plan).stream()
        .anyMatch(p -> p.wrong() instanceof Phrase w && w.key().startsWith("plan.buying."));
  }

  private static Defaults lengths(Defaults now, Defaults usual) {
    return new Defaults(
        now.slope(),
        sound(now.overhang(), usual.overhang()),
        now.heel().filter(h -> h >= 0),
        sound(now.fascia(), usual.fascia()),
        sound(now.ridgeBlockRelief(), usual.ridgeBlockRelief()),
        sound(now.lookoutFirst(), usual.lookoutFirst()),
        now.lookoutSpacing() > 0 ? now.lookoutSpacing() : usual.lookoutSpacing(),
        now.extras());
  }

  private static double sound(double length, double usual) {
    return length >= 0 ? length : usual;
  }
}
