package longpoint.framing;

import longpoint.plan.FrameChoices.Lookout;
import longpoint.units.LengthUnit;

/**
 * The sizes and fineness a crew works to in one unit (common practice). Lengths in plan units.
 *
 * @param mark finest division a piece is cut to: 1/16 in or 1 mm
 * @param notice difference worth telling the crew about: 1/8 in or 3 mm
 * @param flat thickness of a 2x laid flat
 * @param edge depth of a 2x4
 * @param kingPost longest span drawn with a single post: 16 ft
 * @param rakeReview rake overhang beyond which a review is asked for: 24 in
 * @param haul tallest truss hauled in one piece: 12 ft; the supplier and the road decide
 * @param cap least height of a truss that stands on another: 12 in; lower ones are awkward to order
 * @param valley least length of a valley truss that a supplier is likely to make: 24 in
 * @param hipSetback longest set-back the program chooses for a hip girder by itself: 8 ft
 * @param weight of 2x4 at 35 lb/ft³ per plan unit of length: pounds per inch or kilograms per mm
 */
public record Shop(
    double mark,
    double notice,
    double flat,
    double edge,
    double kingPost,
    double rakeReview,
    double haul,
    double cap,
    double valley,
    double hipSetback,
    double weight) {
  public static Shop of(LengthUnit unit) {
    return switch (unit) {
      case INCH ->
          new Shop(1.0 / 16, 1.0 / 8, 1.5, 3.5, 192, 24, 144, 12, 24, 96, 1.5 * 3.5 * 35 / 1728);
      case MILLIMETRE -> new Shop(1, 3, 38, 89, 4877, 610, 3660, 305, 610, 2440, 38 * 89 * 560e-9);
    };
  }

  /** Depth of a lookout square to the slope. */
  public double lookoutDepth(Lookout lookout) {
    return lookout == Lookout.FLAT ? flat : edge;
  }

  /** Width of a lookout measured up the slope. */
  public double lookoutWidth(Lookout lookout) {
    return lookout == Lookout.FLAT ? edge : flat;
  }

  /**
   * A length cut so that it never comes out too long: down to the mark below. A figure that stands
   * on a mark but for the rounding of arithmetic counts as standing on it.
   */
  public double cutDown(double length) {
    return Math.floor(length / mark + DUST) * mark;
  }

  /**
   * Share of a mark that sums of binary fractions can be short by. A millionth of 1/16 in is far
   * below any tape and far above the rounding of lengths of a thousand feet.
   */
  private static final double DUST = 1e-6;
}
