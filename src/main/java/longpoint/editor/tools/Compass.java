package longpoint.editor.tools;

import longpoint.geometry.Point;
import longpoint.plan.Motion;

/** Directions in degrees, counter-clockwise from straight right. */
final class Compass {
  private Compass() {}

  /** A step of a length in a direction; quarter turns are exact. */
  static Point step(double length, double degrees) {
    return Motion.turn(new Point(0, 0), degrees).on(new Point(length, 0));
  }

  /** The direction from one point to another, from 0 to just below 360. */
  static double degrees(Point from, Point to) {
    double degrees = StrictMath.toDegrees(StrictMath.atan2(to.y() - from.y(), to.x() - from.x()));
    return degrees < 0 ? degrees + 360 : degrees;
  }
}
