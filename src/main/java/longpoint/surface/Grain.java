package longpoint.surface;

import longpoint.geometry.Bounds;
import longpoint.geometry.Plane;

/**
 * How finely this package tells places and heights apart.
 *
 * <p>Offsets, hips and crossings of planes each lose a few of a double's 53 bits; steep roofs and
 * shallow corners a dozen more. 2⁻³⁰ of the plan's extent stands well above that loss and far below
 * anything that can be cut: on a 100 ft house it is a millionth of an inch.
 *
 * @param place two places nearer than this are one
 */
record Grain(double place) {
  private static final double SHARE = 0x1p-30;

  /**
   * Heights count as equal within a few times the place, since a plane lifts every error in plan by
   * its slope.
   */
  private static final double LIFT = 4;

  private static final double NEAR = 8;

  static Grain of(Bounds bounds) {
    return new Grain(SHARE * Math.max(bounds.width(), bounds.height()));
  }

  /**
   * Two places that ought to lie on one line do so within this: each of the lines that were crossed
   * to find them may be off by a grain or two.
   */
  double near() {
    return NEAR * place;
  }

  double height(Plane a, Plane b) {
    return place * LIFT * (1 + a.slope() + b.slope());
  }
}
