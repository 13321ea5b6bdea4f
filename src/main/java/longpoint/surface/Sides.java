package longpoint.surface;

import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Side;

/** A side measured from elsewhere. */
final class Sides {
  private Sides() {}

  static Side moved(Side side, double dx, double dy) {
    Point step = new Point(dx, dy);
    return new Side(
        side.part(),
        side.index(),
        side.kind(),
        new Segment(side.wall().from().plus(step), side.wall().to().plus(step)),
        side.slope(),
        side.overhang(),
        side.heel(),
        side.plateHeight(),
        side.fascia(),
        side.inLine());
  }
}
