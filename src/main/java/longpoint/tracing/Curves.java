package longpoint.tracing;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.tracing.Stroke.Vertex;

/** Arcs, circles and ellipses as strokes. */
final class Curves {
  /** Pieces of a whole ellipse: they stand off a thousandth of its half axis. */
  private static final int ELLIPSE_PIECES = 72;

  private static final double WHOLE = 2 * Math.PI;

  private Curves() {}

  /** Counter-clockwise from one angle to the other, in degrees. */
  static Stroke arc(
      String layer, Point centre, double radius, double fromDegrees, double toDegrees, int line) {
    double sweep = (toDegrees - fromDegrees) % 360;
    if (sweep <= 0) {
      sweep += 360;
    }
    Point from = centre.plus(polar(fromDegrees).times(radius));
    Point to = centre.plus(polar(toDegrees).times(radius));
    double bulge = Math.tan(Math.toRadians(sweep) / 4);
    return new Stroke(layer, List.of(new Vertex(from, bulge), new Vertex(to, 0)), false, line);
  }

  static Stroke circle(String layer, Point centre, double radius, int line) {
    Point right = centre.plus(new Point(radius, 0));
    Point left = centre.minus(new Point(radius, 0));
    return new Stroke(layer, List.of(new Vertex(right, 1), new Vertex(left, 1)), true, line);
  }

  /**
   * @param axis from the centre to the end of the longer half axis
   * @param ratio of the shorter half axis to the longer; below 0 where it runs clockwise
   * @param from parameter of the start, radians
   * @param to parameter of the end, radians
   */
  static Stroke ellipse(
      String layer, Point centre, Point axis, double ratio, double from, double to, int line) {
    double sweep = to - from;
    if (sweep <= 0) {
      sweep += WHOLE;
    }
    boolean whole = Math.abs(sweep - WHOLE) < 1e-9;
    int pieces = Math.max(2, (int) Math.ceil(Math.abs(sweep) / WHOLE * ELLIPSE_PIECES));
    List<Vertex> vertices = new ArrayList<>();
    for (int i = 0; i < (whole ? pieces : pieces + 1); i++) {
      double t = from + sweep * i / pieces;
      Point p = axis.times(Math.cos(t)).plus(axis.left().times(ratio * Math.sin(t)));
      vertices.add(new Vertex(centre.plus(p), 0));
    }
    return new Stroke(layer, vertices, whole, line);
  }

  /** A sagitta that is small for the size of a stroke, where its unit is not known yet. */
  static double fine(Stroke stroke) {
    Bounds box = Bounds.of(stroke.vertices().stream().map(Vertex::at).toList());
    return Math.max(Math.max(box.width(), box.height()) * 1e-3, Double.MIN_NORMAL);
  }

  private static Point polar(double degrees) {
    double quarter = Math.rint(degrees / 90);
    if (degrees == quarter * 90) {
      int turns = Math.floorMod((int) quarter, 4);
      return new Point(turns == 0 ? 1 : turns == 2 ? -1 : 0, turns == 1 ? 1 : turns == 3 ? -1 : 0);
    }
    return new Point(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)));
  }
}
