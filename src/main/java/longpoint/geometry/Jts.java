package longpoint.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** To JTS shapes and back. Rings come back without the repeated end and turned the house way. */
public final class Jts {
  public static final GeometryFactory FACTORY = new GeometryFactory();

  private Jts() {}

  public static Coordinate coordinate(Point p) {
    return new Coordinate(p.x(), p.y());
  }

  public static Point point(Coordinate c) {
    return new Point(c.x, c.y);
  }

  public static LinearRing linearRing(Ring ring) {
    Coordinate[] c = new Coordinate[ring.size() + 1];
    for (int i = 0; i < c.length; i++) {
      c[i] = coordinate(ring.corner(i));
    }
    return FACTORY.createLinearRing(c);
  }

  public static Polygon polygon(Ring ring) {
    return FACTORY.createPolygon(linearRing(ring));
  }

  public static Polygon polygon(Region region) {
    return FACTORY.createPolygon(
        linearRing(region.shell()),
        region.holes().stream().map(Jts::linearRing).toArray(LinearRing[]::new));
  }

  /** The polygons of a result; points and lines left over from an overlay are dropped. */
  public static List<Region> regions(Geometry geometry) {
    List<Region> out = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      Geometry g = geometry.getGeometryN(i);
      if (g instanceof Polygon p) {
        if (!p.isEmpty()) {
          out.add(region(p));
        }
      } else if (g.getNumGeometries() > 1) {
        out.addAll(regions(g));
      }
    }
    return out;
  }

  private static Region region(Polygon p) {
    List<Ring> holes = new ArrayList<>();
    for (int i = 0; i < p.getNumInteriorRing(); i++) {
      holes.add(ring(p.getInteriorRingN(i), false));
    }
    return new Region(ring(p.getExteriorRing(), true), holes);
  }

  private static Ring ring(LinearRing line, boolean counterClockwise) {
    Coordinate[] c = line.getCoordinates();
    List<Point> points = new ArrayList<>(c.length - 1);
    for (int i = 0; i + 1 < c.length; i++) {
      points.add(point(c[i]));
    }
    Ring ring = new Ring(points);
    return Orientation.isCCW(c) == counterClockwise ? ring : ring.reversed();
  }
}
