package longpoint.geometry;

/**
 * A straight line in plan from one point to another. Its left side is the inside of a ring that
 * runs counter-clockwise.
 */
public record Segment(Point from, Point to) {
  public double length() {
    return from.distance(to);
  }

  /** One unit long, from start to end. */
  public Point direction() {
    return to.minus(from).unit();
  }

  public Point middle() {
    return from.toward(to, 0.5);
  }

  /** Distance of a point from the endless line, positive to the left. */
  public double offset(Point p) {
    return direction().cross(p.minus(from));
  }

  /** How far along the endless line the foot of a point lies, from the start. */
  public double along(Point p) {
    return direction().dot(p.minus(from));
  }

  /** Distance of a point from the segment itself, never negative. */
  public double distance(Point p) {
    double length = length();
    if (length == 0) {
      return from.distance(p);
    }
    double share = Math.max(0, Math.min(1, along(p) / length));
    return from.toward(to, share).distance(p);
  }
}
