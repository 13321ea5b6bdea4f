package longpoint.framing.rafter;

/**
 * What comes off the plan run of a rafter because the wood it bears on has thickness. Every rule is
 * half the thickness, seen along the rafter: half ÷ sin of the plan angle between the two (US Navy
 * NAVEDTRA 14044 vol. 2, ch. 2, and the older handbooks say the same for the square corner).
 */
public final class Shortening {
  private Shortening() {}

  /**
   * @param thickness of the piece it bears on, ≥ 0
   * @param planAngle between the two pieces, degrees, more than 0, at most 90
   */
  public static double against(double thickness, double planAngle) {
    return thickness / 2 / Math.sin(Math.toRadians(planAngle));
  }

  /** A common rafter, or a square-cut jack, against a ridge board. */
  public static double square(double thickness) {
    return thickness / 2;
  }

  /** Half the 45° thickness: hips, valleys and jacks of a square corner with equal slopes. */
  public static double fortyFive(double thickness) {
    return fortyFiveThickness(thickness) / 2;
  }

  /** Length of a line across the edge of a board at 45°. */
  public static double fortyFiveThickness(double thickness) {
    return thickness * Math.sqrt(2);
  }
}
