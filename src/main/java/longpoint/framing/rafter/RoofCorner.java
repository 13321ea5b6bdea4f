package longpoint.framing.rafter;

/**
 * Where two roof planes of any slopes meet over a corner of any angle: hip outside, valley inside.
 * Plates are at one height. All angles follow from equal height on both planes along the line.
 *
 * @param slopeA rise over run of plane A, &gt; 0
 * @param slopeB rise over run of plane B, &gt; 0
 * @param angle between the two eaves in plan on the side of the hip, degrees, between 0 and 180
 */
public record RoofCorner(double slopeA, double slopeB, double angle) {
  public RoofCorner {
    if (!(slopeA > 0) || !(slopeB > 0) || !(angle > 0 && angle < 180)) {
      throw new IllegalArgumentException("no corner: " + slopeA + ", " + slopeB + ", " + angle);
    }
  }

  public static RoofCorner square(double slopeA, double slopeB) {
    return new RoofCorner(slopeA, slopeB, 90);
  }

  private double alpha() {
    double w = Math.toRadians(angle);
    return Math.atan2(slopeB * Math.sin(w), slopeA + slopeB * Math.cos(w));
  }

  private double beta() {
    return Math.toRadians(angle) - alpha();
  }

  /** Plan angle from the eave of A to the line, degrees: atan(B's slope / A's) if square. */
  public double planAngleA() {
    return Math.toDegrees(alpha());
  }

  public double planAngleB() {
    return Math.toDegrees(beta());
  }

  /** Plan run of the line per unit rise: √(1/A² + 1/B²) if square. */
  public double runPerRise() {
    return 1 / slope();
  }

  /** Rise of the line over its own plan run. */
  public double slope() {
    return slopeA * Math.sin(alpha());
  }

  /** The line itself over a given run of A's common rafter. */
  public Incline overCommonRunA(double run) {
    return new Incline(run / Math.sin(alpha()), slope());
  }

  /**
   * How much longer each jack on plane A is than the one before it.
   *
   * @param spacing between jacks along the eave of A
   */
  public double jackDifferenceA(double spacing) {
    return new Incline(spacing * Math.tan(alpha()), slopeA).length();
  }

  public double jackDifferenceB(double spacing) {
    return new RoofCorner(slopeB, slopeA, angle).jackDifferenceA(spacing);
  }

  /** Backing bevel towards A, degrees from the square top edge of the hip. */
  public double backingA() {
    return Math.toDegrees(Math.atan(fallA() * Math.cos(Math.atan(slope()))));
  }

  public double backingB() {
    return new RoofCorner(slopeB, slopeA, angle).backingA();
  }

  /** Angle between the two planes seen from below a hip, degrees, under 180. */
  public double dihedral() {
    return 180 - backingA() - backingB();
  }

  /**
   * Drop of an unbacked hip set with its middle on the corner line: the deeper of both sides.
   *
   * @param thickness of the hip, ≥ 0
   */
  public double drop(double thickness) {
    return thickness / 2 * Math.max(fallA(), new RoofCorner(slopeB, slopeA, angle).fallA());
  }

  /** Fall of plane A per unit stepped level and square away from the hip. */
  private double fallA() {
    return slopeA * Math.cos(alpha());
  }
}
