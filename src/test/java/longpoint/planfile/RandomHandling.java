package longpoint.planfile;

import static longpoint.planfile.RandomPlans.extras;
import static longpoint.planfile.RandomPlans.number;
import static longpoint.planfile.RandomPlans.point;
import static longpoint.planfile.RandomPlans.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import longpoint.geometry.Point;
import longpoint.plan.Handling;
import longpoint.plan.Lift;

/** Weights, loads, restraint and lifts of any kind, for round trips. */
final class RandomHandling {
  private RandomHandling() {}

  static Handling of(Random r) {
    return new Handling(
        new Handling.Weights(
            maybe(r),
            maybe(r),
            r.nextBoolean() ? Map.of() : Map.of("T" + r.nextInt(9), number(r), "GE1 ½", number(r)),
            extras(r)),
        new Handling.Loads(
            maybe(r),
            Handling.Loads.DeadOn.values()[r.nextInt(2)],
            maybe(r),
            maybe(r),
            maybe(r),
            extras(r)),
        new Handling.Restraint(maybe(r), maybe(r), maybe(r), extras(r)));
  }

  static Lift lift(Random r) {
    return new Lift(
        text(r),
        places(r),
        r.nextBoolean() ? Optional.empty() : Optional.of(new Lift.Stretch(point(r), point(r))),
        r.nextBoolean() ? List.of() : List.of(Lift.Also.DECK, Lift.Also.BLOCKS),
        new Lift.Rigging(
            r.nextBoolean() ? Optional.empty() : Optional.of(2 + r.nextInt(3)),
            places(r),
            maybe(r)),
        extras(r));
  }

  private static List<Point> places(Random r) {
    return r.nextBoolean() ? List.of() : List.of(point(r), point(r));
  }

  private static Optional<Double> maybe(Random r) {
    return r.nextBoolean() ? Optional.empty() : Optional.of(number(r));
  }
}
