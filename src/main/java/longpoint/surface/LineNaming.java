package longpoint.surface;

import java.util.Optional;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Side;

/** What the framer calls a line, from the planes beside it and the side it lies on. */
final class LineNaming {
  /**
   * Rise over run below which a line is level. A ridge that rises less than a thousandth of an inch
   * in 80 feet was meant to be level.
   */
  private static final double LEVEL = 1e-6;

  /**
   * Two planes whose gradients differ by less than this are one plane to the eye and the level: no
   * line shows between them.
   */
  private static final double FLUSH = 1e-6;

  /**
   * Cosine of the angle between two directions of fall beyond which the planes stand back to back:
   * their sloping top is a ridge, not a hip. 155° lies between the angles people build to: a hip
   * between a bay's slanting side and the wall behind falls to sides 135° or 150° apart, a ridge
   * between walls out of parallel seldom less than 165°.
   */
  private static final double BACK_TO_BACK = Math.cos(Math.toRadians(155));

  private LineNaming() {}

  /**
   * The line between two planes that meet at equal height, or nothing when they are flush.
   *
   * @param line with {@code left} on its left
   */
  static Optional<LineKind> between(Segment line, Plane left, Plane right) {
    Point along = line.direction();
    Point in = along.left();
    double intoLeft = gradient(left).dot(in);
    double intoRight = -gradient(right).dot(in);
    if (Math.abs(intoLeft + intoRight) < FLUSH) {
      return Optional.empty();
    }
    boolean convex = intoLeft + intoRight < 0;
    if (Math.abs(gradient(left).dot(along)) < LEVEL) {
      boolean bothFall = intoLeft < 0 && intoRight < 0;
      boolean bothRise = intoLeft > 0 && intoRight > 0;
      return Optional.of(bothFall ? LineKind.RIDGE : bothRise ? LineKind.VALLEY : LineKind.BREAK);
    }
    if (!convex) {
      return Optional.of(LineKind.VALLEY);
    }
    double turn = gradient(left).unit().dot(gradient(right).unit());
    return Optional.of(turn < BACK_TO_BACK ? LineKind.RIDGE : LineKind.HIP);
  }

  /**
   * The edge of a plane where nothing of the same height goes on.
   *
   * @param line with the plane on its left
   * @param on the side of the part whose roof edge the line lies on, if it lies on one
   */
  static LineKind edge(Segment line, Plane plane, int ownSide, Optional<Side> on) {
    boolean level = Math.abs(gradient(plane).dot(line.direction())) < LEVEL;
    boolean fallsAway = gradient(plane).dot(line.direction().left()) < 0;
    if (on.isPresent() && on.get().kind() == EdgeKind.ABUTMENT) {
      return LineKind.ABUTMENT;
    }
    if (on.isPresent() && on.get().index() == ownSide) {
      return LineKind.EAVE;
    }
    if (!level) {
      return LineKind.RAKE;
    }
    return fallsAway ? LineKind.RIDGE : LineKind.EAVE;
  }

  private static Point gradient(Plane plane) {
    return new Point(plane.a(), plane.b());
  }
}
