package longpoint.tracing;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.tracing.Stroke.Vertex;

/**
 * Where a block's own coordinates come to lie in the drawing: {@code x = a u + c v + e}, {@code y =
 * b u + d v + f}.
 */
record Inserting(double a, double b, double c, double d, double e, double f) {
  static final Inserting NONE = new Inserting(1, 0, 0, 1, 0, 0);

  /** Seen from behind: an entity whose extrusion points down is drawn on the back of the paper. */
  static final Inserting FROM_BEHIND = new Inserting(-1, 0, 0, 1, 0, 0);

  /** How unlike two scales may be and still leave arcs round. */
  private static final double SAME = 1e-9;

  static Inserting moved(Point by) {
    return new Inserting(1, 0, 0, 1, by.x(), by.y());
  }

  static Inserting scaled(double x, double y) {
    return new Inserting(x, 0, 0, y, 0, 0);
  }

  static Inserting turned(double degrees) {
    double quarter = Math.rint(degrees / 90);
    if (degrees == quarter * 90) {
      // Exactly, or walls turned a quarter would not stand square.
      int turns = Math.floorMod((int) quarter, 4);
      double cos = turns == 0 ? 1 : turns == 2 ? -1 : 0;
      double sin = turns == 1 ? 1 : turns == 3 ? -1 : 0;
      return new Inserting(cos, sin, -sin, cos, 0, 0);
    }
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    return new Inserting(cos, sin, -sin, cos, 0, 0);
  }

  /** This after {@code first}. */
  Inserting after(Inserting first) {
    return new Inserting(
        a * first.a + c * first.b,
        b * first.a + d * first.b,
        a * first.c + c * first.d,
        b * first.c + d * first.d,
        a * first.e + c * first.f + e,
        b * first.e + d * first.f + f);
  }

  Point on(Point p) {
    return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }

  /** Arcs stay arcs where the scale is even; else they are cut into straight pieces first. */
  Stroke on(Stroke stroke) {
    double size = Math.hypot(a, b);
    boolean even =
        Math.abs(Math.hypot(c, d) - size) <= SAME * size
            && Math.abs(a * c + b * d) <= SAME * size * size;
    double turn = a * d - b * c < 0 ? -1 : 1;
    List<Vertex> vertices = new ArrayList<>();
    if (even || !stroke.isRound()) {
      stroke.vertices().forEach(v -> vertices.add(new Vertex(on(v.at()), v.bulge() * turn)));
    } else {
      double small = Curves.fine(stroke);
      stroke.points(small).forEach(p -> vertices.add(new Vertex(on(p), 0)));
    }
    return new Stroke(stroke.layer(), vertices, stroke.closed(), stroke.line());
  }
}
