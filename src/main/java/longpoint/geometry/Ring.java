package longpoint.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A closed line through three or more corners; the first corner is not repeated at the end. Side
 * {@code i} runs from corner {@code i} to the next. Nothing is promised about crossings: {@code
 * plan} checks those and says where they are.
 *
 * @param points the corners in order, at least three
 */
public record Ring(List<Point> points) {
  public Ring {
    points = List.copyOf(points);
    if (points.size() < 3) {
      throw new IllegalArgumentException("a ring needs three corners, not " + points.size());
    }
  }

  /** Corners as x, y, x, y, … */
  public static Ring of(double... xy) {
    if (xy.length % 2 != 0) {
      throw new IllegalArgumentException("x and y must come in pairs");
    }
    List<Point> points = new ArrayList<>(xy.length / 2);
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return new Ring(points);
  }

  public int size() {
    return points.size();
  }

  /** Corner {@code i}, counted round and round in both directions. */
  public Point corner(int i) {
    return points.get(Math.floorMod(i, points.size()));
  }

  public Segment side(int i) {
    return new Segment(corner(i), corner(i + 1));
  }

  /** Positive when the corners run counter-clockwise. */
  public double signedArea() {
    // Taken about the first corner, so that a plan far from the origin keeps its figures.
    Point o = points.get(0);
    double twice = 0;
    for (int i = 1; i + 1 < points.size(); i++) {
      twice += points.get(i).minus(o).cross(points.get(i + 1).minus(o));
    }
    return twice / 2;
  }

  public double area() {
    return Math.abs(signedArea());
  }

  public boolean counterClockwise() {
    return signedArea() > 0;
  }

  public Ring reversed() {
    List<Point> turned = new ArrayList<>(points);
    Collections.reverse(turned);
    return new Ring(turned);
  }

  public double perimeter() {
    double sum = 0;
    for (int i = 0; i < size(); i++) {
      sum += side(i).length();
    }
    return sum;
  }

  public Bounds bounds() {
    return Bounds.of(points);
  }

  /**
   * Whether a point lies inside, by counting crossings; a point on the line itself may fall either
   * way.
   */
  public boolean contains(Point p) {
    boolean inside = false;
    int n = points.size();
    for (int i = 0; i < n; i++) {
      Point a = points.get(i);
      Point b = points.get(i + 1 < n ? i + 1 : 0);
      boolean crossesLevel = a.y() > p.y() != b.y() > p.y();
      if (crossesLevel && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Distance of a point from the line, never negative. */
  public double distance(Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < size(); i++) {
      least = Math.min(least, side(i).distance(p));
    }
    return least;
  }
}
