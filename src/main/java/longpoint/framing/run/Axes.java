package longpoint.framing.run;

import longpoint.geometry.Point;

/**
 * A run's own directions: {@code u} along its ridge, {@code v} to the left of that.
 *
 * @param origin where u and v are 0
 * @param along one unit long, the direction of u
 */
public record Axes(Point origin, Point along) {
  public Point at(double u, double v) {
    return origin.plus(along.times(u)).plus(along.left().times(v));
  }

  public double u(Point p) {
    return along.dot(p.minus(origin));
  }

  public double v(Point p) {
    return along.cross(p.minus(origin));
  }

  /** The same directions turned so that u runs along the old v, and v against the old u. */
  Axes turnedLeft(Point origin) {
    return new Axes(origin, along.left());
  }
}
