package longpoint.geometry;

/**
 * A plane that is nowhere upright: z = a·x + b·y + c.
 *
 * @param a rise per unit of x
 * @param b rise per unit of y
 * @param c height at the origin
 */
public record Plane(double a, double b, double c) {
  /**
   * The plane that rises to the left of a line.
   *
   * @param line level line in the plane
   * @param height height of that line
   * @param slope rise over run, away from the line to its left
   */
  public static Plane risingFrom(Segment line, double height, double slope) {
    Point up = line.direction().left();
    double a = up.x() * slope;
    double b = up.y() * slope;
    return new Plane(a, b, height - a * line.from().x() - b * line.from().y());
  }

  public double heightAt(Point p) {
    return a * p.x() + b * p.y() + c;
  }

  public Point3 lift(Point p) {
    return p.at(heightAt(p));
  }

  /** Rise over run, never negative. */
  public double slope() {
    return Math.hypot(a, b);
  }

  /** True area over plan area: √(1 + slope²). */
  public double areaFactor() {
    return Math.sqrt(1 + a * a + b * b);
  }

  /** The same plane raised, measured plumb. */
  public Plane raised(double by) {
    return new Plane(a, b, c + by);
  }
}
