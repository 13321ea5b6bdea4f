package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.plan.Buying;
import longpoint.plan.Defaults;
import longpoint.plan.Plan;
import longpoint.plan.PlanCheck;
import longpoint.units.SlopeText;
import longpoint.wording.Phrase;

/** Cures of figures that hold for the whole plan: what cannot be meant goes back to the usual. */
final class PlanCures {
  private static final String BUYING = "plan.buying.";

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
      cures.add(Cures.cure("buying", PlanCommands.buying(buying(plan))));
    }
    return cures;
  }

  private static boolean isBuyingOdd(Plan plan) {
    return !odd(plan).isEmpty();
  }

  /** What the check finds odd in what is bought, by the ends of its keys. */
  private static Set<String> odd(Plan plan) {
    return PlanCheck.check(plan).stream()
        .filter(p -> p.wrong() instanceof Phrase w && w.key().startsWith(BUYING))
        .map(p -> ((Phrase) p.wrong()).key().substring(BUYING.length()))
        .collect(Collectors.toSet());
  }

  /** The plan's, with the usual for what is odd. */
  private static Buying buying(Plan plan) {
    Set<String> odd = odd(plan);
    Buying usual = Buying.of(plan.unit());
    Buying sound = plan.buying();
    sound = odd.contains("waste") ? sound.withWaste(usual.roofingWaste()) : sound;
    sound = odd.contains("bundles") ? sound.withBundles(usual.bundlesPerSquare()) : sound;
    sound = odd.contains("roll") ? sound.withRoll(usual.underlayRoll()) : sound;
    sound = odd.contains("nails") ? sound.withNails(usual.nails()) : sound;
    Buying.Boards now = sound.boards();
    Buying.Boards boards = usual.boards();
    boolean wide = odd.contains("widths");
    return sound.withBoards(
        new Buying.Boards(
            odd.contains("kerf") ? boards.kerf() : now.kerf(),
            odd.contains("lengths") ? boards.lengths() : now.lengths(),
            wide ? boards.blocking() : now.blocking(),
            wide ? boards.rafter() : now.rafter(),
            wide ? boards.hip() : now.hip(),
            wide ? boards.ridge() : now.ridge(),
            wide ? boards.fascia() : now.fascia(),
            wide ? boards.rake() : now.rake(),
            wide ? boards.rakeThickness() : now.rakeThickness()));
  }

  static Defaults lengths(Defaults now, Defaults usual) {
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
