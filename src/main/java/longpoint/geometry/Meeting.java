package longpoint.geometry;

import java.util.Optional;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Whether and where things in plan meet. */
public final class Meeting {
  private Meeting() {}

  /** Where two segments cross or touch; the middle of what they share if they lie along it. */
  public static Optional<Point> of(Segment a, Segment b) {
    LineIntersector lines = new RobustLineIntersector();
    lines.computeIntersection(
        Jts.coordinate(a.from()),
        Jts.coordinate(a.to()),
        Jts.coordinate(b.from()),
        Jts.coordinate(b.to()));
    return switch (lines.getIntersectionNum()) {
      case LineIntersector.NO_INTERSECTION -> Optional.empty();
      case LineIntersector.POINT_INTERSECTION -> Optional.of(Jts.point(lines.getIntersection(0)));
      default ->
          Optional.of(
              Jts.point(lines.getIntersection(0)).toward(Jts.point(lines.getIntersection(1)), 0.5));
    };
  }

  /** Whether a point lies inside a ring or on it; the ring may run either way round. */
  public static boolean holds(Ring ring, Point p) {
    return PointLocation.isInRing(Jts.coordinate(p), Jts.linearRing(ring).getCoordinates());
  }

  /**
   * How much ground two regions share.
   *
   * @param a whose rings neither cross themselves nor each other
   * @param b likewise
   */
  public static double sharedArea(Region a, Region b) {
    Geometry shared =
        OverlayNGRobust.overlay(Jts.polygon(a), Jts.polygon(b), OverlayNG.INTERSECTION);
    return shared.getArea();
  }
}
