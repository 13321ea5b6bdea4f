package longpoint.geometry;

import java.util.Collection;

/** The upright box around some points. {@link #EMPTY} holds none. */
public record Bounds(double minX, double minY, double maxX, double maxY) {
  public static final Bounds EMPTY =
      new Bounds(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  public static Bounds of(Collection<Point> points) {
    Bounds box = EMPTY;
    for (Point p : points) {
      box = box.with(p);
    }
    return box;
  }

  public boolean isEmpty() {
    return minX > maxX;
  }

  public Bounds with(Point p) {
    return new Bounds(
        Math.min(minX, p.x()), Math.min(minY, p.y()), Math.max(maxX, p.x()), Math.max(maxY, p.y()));
  }

  public Bounds with(Bounds other) {
    return new Bounds(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  public Bounds grown(double margin) {
    return isEmpty()
        ? this
        : new Bounds(minX - margin, minY - margin, maxX + margin, maxY + margin);
  }

  public double width() {
    return isEmpty() ? 0 : maxX - minX;
  }

  public double height() {
    return isEmpty() ? 0 : maxY - minY;
  }

  public Point middle() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }

  public boolean contains(Point p) {
    return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
  }
}
