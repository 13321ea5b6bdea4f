package longpoint.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import longpoint.plan.AsBuilt;
import longpoint.plan.OnSite;
import longpoint.plan.PlanDimension.Corner;
import longpoint.plan.Supplied;

/** Readings and supplier's lists of every shape a file can hold. */
final class RandomOnSite {
  private RandomOnSite() {}

  static OnSite of(Random r) {
    return new OnSite(
        r.nextBoolean() ? AsBuilt.NONE : walls(r), r.nextBoolean() ? Supplied.NONE : trusses(r));
  }

  private static AsBuilt walls(Random r) {
    List<AsBuilt.Tape> tapes = new ArrayList<>();
    for (int i = r.nextInt(4); i > 0; i--) {
      tapes.add(new AsBuilt.Tape(corner(r), corner(r), above(r), use(r), RandomPlans.extras(r)));
    }
    List<AsBuilt.PlateReading> plates = new ArrayList<>();
    for (int i = r.nextInt(4); i > 0; i--) {
      plates.add(
          new AsBuilt.PlateReading(
              corner(r), RandomPlans.number(r), use(r), RandomPlans.extras(r)));
    }
    return new AsBuilt(
        r.nextBoolean() ? Optional.empty() : Optional.of(above(r)),
        tapes,
        plates,
        RandomPlans.extras(r));
  }

  private static double above(Random r) {
    return Math.abs(RandomPlans.number(r)) + 1e-3;
  }

  private static Corner corner(Random r) {
    return new Corner(RandomPlans.text(r), r.nextInt(9));
  }

  private static AsBuilt.Use use(Random r) {
    return AsBuilt.Use.values()[r.nextInt(2)];
  }

  private static Supplied trusses(Random r) {
    List<Supplied.Row> rows = new ArrayList<>();
    for (int i = r.nextInt(5); i > 0; i--) {
      rows.add(
          new Supplied.Row(
              r.nextInt(99),
              RandomPlans.text(r),
              1 + r.nextInt(40),
              new Supplied.Figures(
                  length(r),
                  length(r),
                  r.nextBoolean() ? Optional.empty() : Optional.of(RandomPlans.slope(r)),
                  r.nextBoolean() ? Optional.empty() : Optional.of(RandomPlans.slope(r)),
                  length(r),
                  length(r),
                  length(r),
                  length(r),
                  r.nextBoolean() ? Optional.empty() : Optional.of(1 + r.nextInt(4))),
              RandomPlans.extras(r)));
    }
    return new Supplied(RandomPlans.text(r), rows, RandomPlans.extras(r));
  }

  private static Optional<Double> length(Random r) {
    return r.nextBoolean() ? Optional.empty() : Optional.of(RandomPlans.number(r));
  }
}
