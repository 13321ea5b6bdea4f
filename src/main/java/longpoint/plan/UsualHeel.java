package longpoint.plan;

import longpoint.units.LengthUnit;

/**
 * The heel of sides that say nothing, in a plan that says nothing either. Trusses come with one of
 * 4 1/2 in or 115 mm (common practice). Rafters sit on the whole width of their plate, or on as
 * much of it as a notch of a quarter of their depth gives where the roof is steep; the same heel
 * goes all round a part, so that its hips stand on its corners.
 */
public final class UsualHeel {
  /**
   * Share of a rafter's depth that may be cut away at its end without a second look (IRC R502.8.1
   * and R802.7.1 as quoted in the trade press); the local code rules.
   */
  public static final double NOTCH_SHARE = 0.25;

  /**
   * Least bearing of a rafter on wood in mm: 1 1/2 in or 38 mm (IRC R802.6); the local code rules.
   */
  public static final double LEAST_BEARING = 38;

  private UsualHeel() {}

  /** Heel of trusses, in plan units. */
  public static double ofTrusses(LengthUnit unit) {
    return switch (unit) {
      case INCH -> 4.5;
      case MILLIMETRE -> 115;
    };
  }

  /**
   * The heel of a part's sides that have none of their own, in plan units. Finite for whatever can
   * be drawn.
   */
  static double of(Plan plan, Part part) {
    return part.frame().method() == Frame.Method.RAFTER
        ? ofRafters(plan, part)
        : ofTrusses(plan.unit());
  }

  private static double ofRafters(Plan plan, Part part) {
    double depth = plan.buying().boards().soundRafter(plan.unit());
    double plate = part.frame().choices().sticks().plateWidth(plan.unit());
    double bearing = Math.min(plate, plan.unit().fromMillimetres(LEAST_BEARING));
    double wanted = 0;
    double full = 0;
    double scant = Double.POSITIVE_INFINITY;
    for (Edge edge : part.edges()) {
      double slope = edge.slope().orElse(plan.defaults().slope()).ratio();
      if (edge.kind() == EdgeKind.EAVE && slope > 0 && Double.isFinite(slope)) {
        wanted = Math.max(wanted, least(depth, slope, plate));
        full = Math.max(full, seated(depth, slope, plate));
        scant = Math.min(scant, seated(depth, slope, bearing));
      }
    }
    return wanted > 0 ? Math.max(full, Math.min(wanted, scant)) : ofTrusses(plan.unit());
  }

  /**
   * The least heel that keeps three quarters of a rafter's depth and a seat no wider than the
   * plate.
   *
   * @param depth of the rafter square to its edge, &gt; 0
   * @param slope rise over run, &gt; 0
   * @param plate width, &gt; 0
   */
  public static double least(double depth, double slope, double plate) {
    return Math.max(plumb(depth, slope) * (1 - NOTCH_SHARE), seated(depth, slope, plate));
  }

  /** The heel that a level seat of some width leaves. */
  private static double seated(double depth, double slope, double seat) {
    return plumb(depth, slope) - seat * slope;
  }

  private static double plumb(double depth, double slope) {
    return depth * Math.sqrt(1 + slope * slope);
  }
}
