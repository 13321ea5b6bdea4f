package longpoint.field.takeoff;

import java.util.Objects;
import longpoint.plan.Buying;
import longpoint.plan.Plan;
import longpoint.plan.SpanRating;
import longpoint.units.LengthUnit;

/**
 * What the user decides about quantities. Lengths in plan units, areas in square plan units.
 *
 * @param roofingWaste share added to the roof's area for cutting, 0.08 is 8 %, ≥ 0
 * @param bundlesPerSquare bundles that cover 100 square feet (or 10 m²), &gt; 0
 * @param underlayRoll area that one roll covers, laps taken off, &gt; 0
 * @param nails spacing of the deck's nails
 * @param rating stamped on the panels
 * @param vent share of the attic left open for air
 */
public record TakeOffChoices(
    double roofingWaste,
    double bundlesPerSquare,
    double underlayRoll,
    NailSchedule nails,
    SpanRating rating,
    Buying.Vent vent) {
  public TakeOffChoices {
    Objects.requireNonNull(nails);
    Objects.requireNonNull(rating);
    Objects.requireNonNull(vent);
    if (!(roofingWaste >= 0) || !(bundlesPerSquare > 0) || !(underlayRoll > 0)) {
      throw new IllegalArgumentException(
          "waste is at least 0, bundles and rolls cover something: "
              + roofingWaste
              + ", "
              + bundlesPerSquare
              + ", "
              + underlayRoll);
    }
  }

  /** The plan's, and the usual one for what cannot be meant. */
  public static TakeOffChoices of(Plan plan) {
    Buying b = plan.buying();
    TakeOffChoices usual = of(plan.unit());
    return new TakeOffChoices(
        b.roofingWaste() >= 0 ? b.roofingWaste() : usual.roofingWaste,
        b.bundlesPerSquare() > 0 ? b.bundlesPerSquare() : usual.bundlesPerSquare,
        b.underlayRoll() > 0 ? b.underlayRoll() : usual.underlayRoll,
        new NailSchedule(
            b.nails().edge() > 0 ? b.nails().edge() : usual.nails.edge(),
            b.nails().field() > 0 ? b.nails().field() : usual.nails.field()),
        b.rating(),
        b.vent());
  }

  /** What is usual, see {@link Buying#of}. */
  public static TakeOffChoices of(LengthUnit unit) {
    Buying b = Buying.of(unit);
    return new TakeOffChoices(
        b.roofingWaste(),
        b.bundlesPerSquare(),
        b.underlayRoll(),
        new NailSchedule(b.nails().edge(), b.nails().field()),
        b.rating(),
        b.vent());
  }

  public TakeOffChoices withWaste(double share) {
    return new TakeOffChoices(share, bundlesPerSquare, underlayRoll, nails, rating, vent);
  }
}
