package longpoint.field.takeoff;

import longpoint.units.LengthUnit;

/**
 * Roofing and underlay by area. Areas in square plan units.
 *
 * @param area of the roof that shows, true
 * @param withWaste the same and the user's waste
 * @param squares of {@code withWaste}: hundreds of square feet, or tens of square metres
 * @param bundles whole bundles for {@code withWaste}
 * @param underlay area to cover, counted twice where the slope is below 4 in 12 (double layer, IRC
 *     R905)
 * @param rolls whole rolls for that
 */
public record Covering(
    double area, double withWaste, double squares, long bundles, double underlay, long rolls) {

  /** A count that is whole but for rounding is whole. */
  private static final double ROUNDING = 1e-9;

  /**
   * @param area of the roof that shows
   * @param low share of it on slopes that take a double underlay
   */
  static Covering of(double area, double low, LengthUnit unit, TakeOffChoices choices) {
    double withWaste = area * (1 + choices.roofingWaste());
    double squares = withWaste / square(unit);
    double underlay = area + low;
    return new Covering(
        area,
        withWaste,
        squares,
        whole(squares * choices.bundlesPerSquare()),
        underlay,
        whole(underlay / choices.underlayRoll()));
  }

  /** 100 square feet; in metric plans 10 square metres. */
  static double square(LengthUnit unit) {
    return switch (unit) {
      case INCH -> 100 * 144;
      case MILLIMETRE -> 10 * 1e6;
    };
  }

  /** The next whole number up. */
  static long whole(double count) {
    return (long) Math.ceil(count * (1 - ROUNDING));
  }
}
