package longpoint.sheets.solid;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Point3;

/**
 * A flat piece of the house. Seen from outside (a roof from above) its outer edge runs
 * counter-clockwise; a fascia is seen from either side.
 *
 * @param kind what it is made of
 * @param subject id of what it shows: a side for a wall and for the plane that rises from it
 * @param rings its outer edge, then its holes, all in one plane; each of three corners or more
 */
public record SolidFace(Kind kind, String subject, List<List<Point3>> rings) {
  /** What a face is made of. */
  public enum Kind {
    ROOF,
    /** From the datum to the roof, or between a lower and a higher plane. */
    WALL,
    /** Board along an eave or a rake. */
    FASCIA
  }

  public SolidFace {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(subject);
    rings = rings.stream().map(List::copyOf).toList();
    if (rings.isEmpty() || rings.stream().anyMatch(r -> r.size() < 3)) {
      throw new IllegalArgumentException("a face needs three corners: " + subject);
    }
  }

  /** Its true area times its outward direction, holes taken off. */
  public Point3 areaVector() {
    double x = 0;
    double y = 0;
    double z = 0;
    for (List<Point3> ring : rings) {
      Point3 o = ring.get(0);
      for (int i = 1; i + 1 < ring.size(); i++) {
        Point3 a = ring.get(i);
        Point3 b = ring.get(i + 1);
        double ax = a.x() - o.x();
        double ay = a.y() - o.y();
        double az = a.z() - o.z();
        double bx = b.x() - o.x();
        double by = b.y() - o.y();
        double bz = b.z() - o.z();
        x += (ay * bz - az * by) / 2;
        y += (az * bx - ax * bz) / 2;
        z += (ax * by - ay * bx) / 2;
      }
    }
    return new Point3(x, y, z);
  }

  /** True area. */
  public double area() {
    return areaVector().distance(new Point3(0, 0, 0));
  }
}
