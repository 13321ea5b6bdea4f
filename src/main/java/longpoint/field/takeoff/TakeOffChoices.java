package longpoint.field.takeoff;

import java.util.Objects;
import longpoint.units.LengthUnit;

/**
 * What the user decides about quantities. Lengths in plan units, areas in square plan units.
 *
 * @param roofingWaste share added to the roof's area for cutting, 0.08 is 8 %, ≥ 0
 * @param bundlesPerSquare bundles that cover 100 square feet (or 10 m²), &gt; 0
 * @param underlayRoll area that one roll covers, laps taken off, &gt; 0
 * @param nails spacing of the deck's nails
 * @param rating stamped on the panels
 */
public record TakeOffChoices(
    double roofingWaste,
    double bundlesPerSquare,
    double underlayRoll,
    NailSchedule nails,
    SpanRating rating) {
  public TakeOffChoices {
    Objects.requireNonNull(nails);
    Objects.requireNonNull(rating);
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

  /**
   * Common practice: 8 % waste, three bundles to the square, 300 square feet net from a roll of
   * felt, nails at 6 and 12 in, panels rated 24/16.
   */
  public static TakeOffChoices of(LengthUnit unit) {
    double foot = unit.fromMillimetres(12 * LengthUnit.MM_PER_INCH);
    return new TakeOffChoices(0.08, 3, 300 * foot * foot, NailSchedule.of(unit), SpanRating.S24_16);
  }

  public TakeOffChoices withWaste(double share) {
    return new TakeOffChoices(share, bundlesPerSquare, underlayRoll, nails, rating);
  }
}
