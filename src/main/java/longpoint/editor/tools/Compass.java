package longpoint.editor.tools;

import java.util.Optional;
import longpoint.editor.Event;
import longpoint.geometry.Point;
import longpoint.plan.Motion;

/** Directions in degrees, counter-clockwise from straight right. */
final class Compass {
  private Compass() {}

  /** A step of a length in a direction; quarter turns are exact. */
  static Point step(double length, double degrees) {
    return Motion.turn(new Point(0, 0), degrees).on(new Point(length, 0));
  }

  /** The unit step that an arrow key points in. */
  static Optional<Point> arrow(Event.Key key) {
    return switch (key) {
      case RIGHT -> Optional.of(new Point(1, 0));
      case UP -> Optional.of(new Point(0, 1));
      case LEFT -> Optional.of(new Point(-1, 0));
      case DOWN -> Optional.of(new Point(0, -1));
      case ENTER, ESCAPE, BACKSPACE, DELETE, TAB, NEXT, PREVIOUS -> Optional.empty();
    };
  }

  /** The direction from one point to another, from 0 to just below 360. */
  static double degrees(Point from, Point to) {
    double degrees = StrictMath.toDegrees(StrictMath.atan2(to.y() - from.y(), to.x() - from.x()));
    return degrees < 0 ? degrees + 360 : degrees;
  }
}
