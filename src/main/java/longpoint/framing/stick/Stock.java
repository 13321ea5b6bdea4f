package longpoint.framing.stick;

import longpoint.plan.Buying;
import longpoint.plan.Plan;

/**
 * Depths of the boards that rafters are cut from, as the plan buys them.
 *
 * @param rafter of commons and jacks, &gt; 0
 * @param hip of hips and valleys, &gt; 0
 * @param ridge of ridge boards, &gt; 0
 */
record Stock(double rafter, double hip, double ridge) {
  static Stock of(Plan plan) {
    Buying.Boards own = plan.buying().boards();
    Buying.Boards usual = Buying.of(plan.unit()).boards();
    return new Stock(
        own.soundRafter(plan.unit()),
        sound(own.hip(), usual.hip()),
        sound(own.ridge(), usual.ridge()));
  }

  private static double sound(double width, double usual) {
    return width > 0 && Double.isFinite(width) ? width : usual;
  }

  double depth(RafterKind kind) {
    return switch (kind) {
      case COMMON, HIP_JACK, VALLEY_JACK, CRIPPLE, TRIMMER, HEADER -> rafter;
      case HIP, VALLEY -> hip;
      case RIDGE -> ridge;
    };
  }
}
