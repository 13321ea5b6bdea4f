package longpoint.framing.rafter;

/**
 * How long a ridge board is cut. Slopes are equal and corners square. Rules from US Navy NAVEDTRA
 * 14044 vol. 2, p. 2-34, Griffith's <cite>Carpentry</cite> (1916) and King's <cite>Constructive
 * Carpentry</cite> (1912).
 */
public final class RidgeLength {
  private RidgeLength() {}

  /** Middle to middle of the hips: length less width of the building. */
  public static double hipRoof(double length, double width) {
    return Math.max(0, length - width);
  }

  /** Hips cut with one cheek against the ridge board. */
  public static double hipsOnRidge(double length, double width, double ridge, double hip) {
    return hipRoof(length, width) + ridge + Shortening.fortyFiveThickness(hip);
  }

  /** Hips cut with two cheeks between the common rafters at the end of the ridge. */
  public static double hipsBetweenCommons(double length, double width, double common) {
    return hipRoof(length, width) + common;
  }

  /**
   * A wing's ridge that ends on the supporting valley.
   *
   * @param plate length of the wing's plate
   * @param span of the wing
   * @param valley thickness of the supporting valley
   */
  public static double toSupportingValley(double plate, double span, double valley) {
    return plate + span / 2 - Shortening.fortyFive(valley);
  }

  /** A ridge that ends square against a header, as for a dormer. */
  public static double toHeader(double plate, double span, double header) {
    return plate + span / 2 - Shortening.square(header);
  }
}
