package longpoint.geometry;

/**
 * A point in space.
 *
 * @param x to the right, in the plan's unit, finite
 * @param y up the page, in the plan's unit, finite
 * @param z height above the plan's datum, in the plan's unit, finite
 */
public record Point3(double x, double y, double z) {
  public Point3 {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException("not a finite point: " + x + ", " + y + ", " + z);
    }
  }

  public Point plan() {
    return new Point(x, y);
  }

  public double distance(Point3 other) {
    return Math.hypot(Math.hypot(other.x - x, other.y - y), other.z - z);
  }
}
