package longpoint.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Area and first moments of ground, and of what is left of it on one side of a line. All are sums
 * over the rings' corners, so pieces cut apart add up to the whole but for rounding; a ring cut off
 * where it is not convex may run along the cut twice, which neither area nor moment notices.
 *
 * @param rings outer rings counter-clockwise, holes clockwise
 */
public record Patch(List<Ring> rings) {
  public Patch {
    rings = List.copyOf(rings);
  }

  public static Patch of(List<Region> regions) {
    List<Ring> rings = new ArrayList<>();
    for (Region region : regions) {
      rings.add(region.shell());
      rings.addAll(region.holes());
    }
    return new Patch(rings);
  }

  public boolean isEmpty() {
    return rings.isEmpty();
  }

  public double area() {
    return rings.stream().mapToDouble(Ring::signedArea).sum();
  }

  /**
   * Where its area balances.
   *
   * @throws ArithmeticException if it has no area
   */
  public Point centre() {
    Point about = rings.get(0).points().get(0);
    double twice = 0;
    double x = 0;
    double y = 0;
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Point a = ring.corner(i).minus(about);
        Point b = ring.corner(i + 1).minus(about);
        double cross = a.cross(b);
        twice += cross;
        x += cross * (a.x() + b.x());
        y += cross * (a.y() + b.y());
      }
    }
    if (twice == 0) {
      throw new ArithmeticException("ground without an area balances nowhere");
    }
    return about.plus(new Point(x / (3 * twice), y / (3 * twice)));
  }

  /**
   * What lies on one side of a line.
   *
   * @param normal of the line, any length but 0
   * @param most what normal·p comes to on the line; kept is where it comes to no more
   */
  public Patch within(Point normal, double most) {
    List<Ring> kept = new ArrayList<>();
    for (Ring ring : rings) {
      List<Point> points = within(ring, normal, most);
      if (points.size() >= 3) {
        kept.add(new Ring(points));
      }
    }
    return new Patch(kept);
  }

  /** Sutherland and Hodgman, Reentrant polygon clipping (1974), for one line. */
  private static List<Point> within(Ring ring, Point normal, double most) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.corner(i);
      Point b = ring.corner(i + 1);
      double da = normal.dot(a) - most;
      double db = normal.dot(b) - most;
      if (da <= 0) {
        kept.add(a);
      }
      if (da < 0 && db > 0 || da > 0 && db < 0) {
        kept.add(a.toward(b, da / (da - db)));
      }
    }
    return kept;
  }

  /** What lies between two parallel lines. */
  public Patch between(Point normal, double least, double most) {
    return within(normal, most).within(normal.times(-1), -least);
  }

  /** Least and most that normal·p comes to on it. */
  public double[] reach(Point normal) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Ring ring : rings) {
      for (Point p : ring.points()) {
        least = Math.min(least, normal.dot(p));
        most = Math.max(most, normal.dot(p));
      }
    }
    return new double[] {least, most};
  }
}
