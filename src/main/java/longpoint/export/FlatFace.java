package longpoint.export;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Triangles;

/**
 * A face of a solid cut into triangles whose corners are its own.
 *
 * @param normal outward, of unit length; nought for a face of no area, which has no triangles
 */
record FlatFace(Point3 normal, List<Triangle> triangles) {
  /** Twice the area of a face, as a share of its squared size, below which it is a line. */
  private static final double LINE = 1e-9;

  /**
   * @param corners three, counter-clockwise seen from outside
   * @param cuts which sides are cuts through the face and none of its edges: bit 0 for the side
   *     from the first corner, and so on
   */
  record Triangle(List<Point3> corners, int cuts) {}

  private record Side(Point from, Point to) {}

  static FlatFace of(Solid.Face face) {
    List<Point3> outer = face.rings().get(0);
    Point3 twice = normal(outer);
    double length = length(twice);
    double size = outer.stream().mapToDouble(p -> length(step(outer.get(0), p))).max().orElse(0);
    if (length <= LINE * size * size) {
      return new FlatFace(new Point3(0, 0, 0), List.of());
    }
    Point3 normal = new Point3(twice.x() / length, twice.y() / length, twice.z() / length);
    return new FlatFace(normal, cut(face, normal));
  }

  private static List<Triangle> cut(Solid.Face face, Point3 normal) {
    Map<Point, Point3> places = new HashMap<>();
    Set<Side> edges = new HashSet<>();
    List<Ring> flat = new ArrayList<>();
    for (List<Point3> ring : face.rings()) {
      List<Point> points = new ArrayList<>();
      for (Point3 p : ring) {
        Point seen = seen(p, normal);
        places.putIfAbsent(seen, p);
        points.add(seen);
      }
      for (int i = 0; i < points.size(); i++) {
        edges.add(new Side(points.get(i), points.get((i + 1) % points.size())));
      }
      flat.add(new Ring(points));
    }
    List<Triangle> triangles = new ArrayList<>();
    for (Ring ring : Triangles.of(new Region(flat.get(0), flat.subList(1, flat.size())))) {
      int cuts = 0;
      for (int i = 0; i < 3; i++) {
        Side side = new Side(ring.corner(i), ring.corner(i + 1));
        boolean edge = edges.contains(side) || edges.contains(new Side(side.to(), side.from()));
        cuts |= edge ? 0 : 1 << i;
      }
      triangles.add(new Triangle(ring.points().stream().map(places::get).toList(), cuts));
    }
    return triangles;
  }

  /** Along the axis the face looks along most, so that it stays wide; its turn is kept. */
  private static Point seen(Point3 p, Point3 normal) {
    double x = Math.abs(normal.x());
    double y = Math.abs(normal.y());
    double z = Math.abs(normal.z());
    if (z >= x && z >= y) {
      return normal.z() > 0 ? new Point(p.x(), p.y()) : new Point(p.y(), p.x());
    }
    if (x >= y) {
      return normal.x() > 0 ? new Point(p.y(), p.z()) : new Point(p.z(), p.y());
    }
    return normal.y() > 0 ? new Point(p.z(), p.x()) : new Point(p.x(), p.z());
  }

  /** Twice the ring's area along its normal (Newell's rule). */
  private static Point3 normal(List<Point3> ring) {
    double x = 0;
    double y = 0;
    double z = 0;
    Point3 o = ring.get(0);
    for (int i = 1; i + 1 < ring.size(); i++) {
      Point3 a = step(o, ring.get(i));
      Point3 b = step(o, ring.get(i + 1));
      x += a.y() * b.z() - a.z() * b.y();
      y += a.z() * b.x() - a.x() * b.z();
      z += a.x() * b.y() - a.y() * b.x();
    }
    return new Point3(x, y, z);
  }

  private static double length(Point3 p) {
    return Math.sqrt(p.x() * p.x() + p.y() * p.y() + p.z() * p.z());
  }

  private static Point3 step(Point3 from, Point3 to) {
    return new Point3(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
  }
}
