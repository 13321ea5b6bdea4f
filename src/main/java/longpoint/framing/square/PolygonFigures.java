package longpoint.framing.square;

/**
 * Framing-square figures for a corner of any angle where both roofs have the same slope: the
 * octagon, the bay of six sides and the rest.
 *
 * @param square slope of the common rafters
 * @param corner inside angle between the two walls in plan, degrees, between 0 and 180
 */
public record PolygonFigures(SquareFigures square, double corner) {
  public PolygonFigures {
    if (!(corner > 0 && corner < 180)) {
      throw new IllegalArgumentException("a corner is between 0 and 180 degrees, not " + corner);
    }
  }

  /** A regular building of some number of sides. */
  public static PolygonFigures regular(SquareFigures square, int sides) {
    return new PolygonFigures(square, 180.0 * (sides - 2) / sides);
  }

  private double half() {
    return Math.toRadians(corner) / 2;
  }

  /** Plan run of the hip per unit run of the common rafter: 13 (12.99) for an octagon. */
  public double hipRun() {
    return square.run() / Math.sin(half());
  }

  /** Half of a side per unit run of the common rafter: 5 (4.97) for an octagon. */
  public double tangent() {
    return square.run() / Math.tan(half());
  }

  public double hip() {
    return Math.hypot(hipRun(), square.rise());
  }

  /** Difference in length of neighbouring jacks that stand {@code spacing} apart on the plate. */
  public double jackDifference(double spacing) {
    return spacing / tangent() * square.common();
  }
}
