package longpoint.drawing;

import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * A rectangle at any angle: the room that lettering or a stroke takes up.
 *
 * @param centre of the rectangle
 * @param along one unit long: direction of its length
 * @param halfLength ≥ 0
 * @param halfHeight ≥ 0
 */
public record Box(Point centre, Point along, double halfLength, double halfHeight) {
  /** The room a straight stroke takes up, half its width to each side. */
  public static Box around(Segment stroke, double width) {
    Point along = stroke.length() > 0 ? stroke.direction() : new Point(1, 0);
    return new Box(stroke.middle(), along, stroke.length() / 2 + width / 2, width / 2);
  }

  /** Counter-clockwise from the lower left, as seen along its length. */
  public List<Point> corners() {
    Point l = along.times(halfLength);
    Point h = along.left().times(halfHeight);
    return List.of(
        centre.minus(l).minus(h),
        centre.plus(l).minus(h),
        centre.plus(l).plus(h),
        centre.minus(l).plus(h));
  }

  public Box grown(double margin) {
    return new Box(centre, along, halfLength + margin, halfHeight + margin);
  }

  public Bounds bounds() {
    // Corner by corner without making them: a drawing asks for tens of thousands.
    double lx = along.x() * halfLength;
    double ly = along.y() * halfLength;
    double hx = -along.y() * halfHeight;
    double hy = along.x() * halfHeight;
    double leftX = centre.x() - lx;
    double leftY = centre.y() - ly;
    double rightX = centre.x() + lx;
    double rightY = centre.y() + ly;
    return new Bounds(
        Math.min(Math.min(leftX - hx, leftX + hx), Math.min(rightX - hx, rightX + hx)),
        Math.min(Math.min(leftY - hy, leftY + hy), Math.min(rightY - hy, rightY + hy)),
        Math.max(Math.max(leftX - hx, leftX + hx), Math.max(rightX - hx, rightX + hx)),
        Math.max(Math.max(leftY - hy, leftY + hy), Math.max(rightY - hy, rightY + hy)));
  }

  public boolean contains(Point p) {
    Point from = p.minus(centre);
    return Math.abs(from.dot(along)) <= halfLength
        && Math.abs(from.dot(along.left())) <= halfHeight;
  }

  /** Whether the two share ground. Rectangles that only touch do not. */
  public boolean overlaps(Box other) {
    Point apart = other.centre.minus(centre);
    return !parted(along, apart, other)
        && !parted(along.left(), apart, other)
        && !parted(other.along, apart, other)
        && !parted(other.along.left(), apart, other);
  }

  /** Whether a line square to the axis stands between the two. */
  private boolean parted(Point axis, Point apart, Box other) {
    return Math.abs(apart.dot(axis)) >= reach(axis) + other.reach(axis);
  }

  /** Half the shadow it throws on an axis. */
  private double reach(Point axis) {
    return halfLength * Math.abs(along.dot(axis)) + halfHeight * Math.abs(along.left().dot(axis));
  }
}
