package longpoint.surface;

import java.util.List;
import longpoint.geometry.Jts;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Overlays of grounds whose sides run along each other but for rounding, which is the rule here: a
 * strip ends on the outline it is cut with. Overlaid as they are, such shapes can come out as
 * nothing at all without a word; so sides nearer than the grain are made one first, and only if
 * that breaks down is the overlay left to its own devices.
 */
final class Overlay {
  private Overlay() {}

  static Geometry intersection(Geometry a, Geometry b, double grain) {
    return of(a, b, OverlayNG.INTERSECTION, grain);
  }

  static Geometry difference(Geometry a, Geometry b, double grain) {
    return of(a, b, OverlayNG.DIFFERENCE, grain);
  }

  static Geometry union(List<Geometry> all, double grain) {
    Geometry union = Jts.FACTORY.createPolygon();
    for (Geometry each : all) {
      union = of(union, each, OverlayNG.UNION, grain);
    }
    return union;
  }

  private static Geometry of(Geometry a, Geometry b, int operation, double grain) {
    try {
      return OverlayNG.overlay(a, b, operation, null, new SnappingNoder(grain));
    } catch (TopologyException upset) {
      return OverlayNGRobust.overlay(a, b, operation);
    }
  }
}
