package longpoint.deck;

import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Segment;

/**
 * How far a saw leans from square, in degrees, at the edges of a deck.
 *
 * <p>Two decks that meet along a line are cut in the plane halfway between them: each leans half
 * the angle between their faces' normals. A deck that comes down on another is cut to lie flat on
 * it: a right angle less the angle between the normals. Against a wall the cut is plumb.
 */
final class Bevel {
  private Bevel() {}

  static double along(Unfold own, Segment flat, Ground.Line line) {
    return switch (line.line().kind()) {
      case RIDGE, HIP, VALLEY, BREAK ->
          line.beyond().map(other -> between(own.normal(), other.normal()) / 2).orElse(0.0);
      case ABUTMENT, STEP -> plumb(own, flat);
      case EAVE, RAKE -> 0;
    };
  }

  static double onDeckBelow(Unfold own, Unfold below) {
    return 90 - between(own.normal(), below.normal());
  }

  /** Lean of an upright cut along a line of the plane. */
  private static double plumb(Unfold own, Segment flat) {
    Point run = own.plan(flat.to()).minus(own.plan(flat.from()));
    if (run.length() == 0) {
      return 0;
    }
    Point across = run.unit().left();
    Point3 n = own.normal();
    return Math.toDegrees(
        Math.asin(Math.min(1, Math.abs(n.x() * across.x() + n.y() * across.y()))));
  }

  private static double between(Point3 a, Point3 b) {
    double cos = a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cos))));
  }
}
