package longpoint.geometry;

/**
 * A point, or the step between two points, in plan.
 *
 * @param x to the right, in the plan's unit, finite
 * @param y up the page, in the plan's unit, finite
 */
public record Point(double x, double y) {
  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("not a finite point: " + x + ", " + y);
    }
  }

  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /** Positive when {@code other} lies to the left of this direction. */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  public double length() {
    return Math.hypot(x, y);
  }

  public double distance(Point other) {
    return Math.hypot(other.x - x, other.y - y);
  }

  /** This step turned a quarter turn to the left. */
  public Point left() {
    return new Point(-y, x);
  }

  /**
   * This step made one unit long.
   *
   * @throws ArithmeticException if the step has no length
   */
  public Point unit() {
    double length = length();
    if (length == 0) {
      throw new ArithmeticException("a step of no length has no direction");
    }
    return new Point(x / length, y / length);
  }

  /** The point a given share of the way to {@code other}: 0 is here, 1 is there. */
  public Point toward(Point other, double share) {
    return new Point(x + (other.x - x) * share, y + (other.y - y) * share);
  }

  public Point3 at(double z) {
    return new Point3(x, y, z);
  }
}
