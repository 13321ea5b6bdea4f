package longpoint.surface;

import longpoint.geometry.Plane;
import longpoint.plan.Side;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Some of the ground one eave's plane lies over, as solved for its part alone.
 *
 * @param side number of the eave in its part
 * @param plane top of framing, about the same origin as the ground
 */
record Piece(String part, int side, Plane plane, Polygon ground) {
  /** Id of the plane, the same as that of its side. */
  String id() {
    return Side.id(part, side);
  }

  Piece moved(double dx, double dy) {
    Plane there = new Plane(plane.a(), plane.b(), plane.c() - plane.a() * dx - plane.b() * dy);
    return new Piece(
        part,
        side,
        there,
        (Polygon) AffineTransformation.translationInstance(dx, dy).transform(ground));
  }

  Piece over(Polygon ground) {
    return new Piece(part, side, plane, ground);
  }
}
