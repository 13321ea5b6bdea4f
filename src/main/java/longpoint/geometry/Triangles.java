package longpoint.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/** A region cut into triangles whose corners are the region's own. */
public final class Triangles {
  private Triangles() {}

  /** Triangles that cover the region once, each counter-clockwise; those of no area left out. */
  public static List<Ring> of(Region region) {
    List<Ring> triangles = new ArrayList<>();
    Geometry all = PolygonTriangulator.triangulate(Jts.polygon(region));
    for (int i = 0; i < all.getNumGeometries(); i++) {
      Coordinate[] c = all.getGeometryN(i).getCoordinates();
      Ring ring = new Ring(List.of(Jts.point(c[0]), Jts.point(c[1]), Jts.point(c[2])));
      if (ring.area() > 0) {
        triangles.add(ring.counterClockwise() ? ring : ring.reversed());
      }
    }
    return triangles;
  }
}
