package longpoint.tracing;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;

/**
 * One line of a drawing, of straight and round pieces, in the drawing's own unit.
 *
 * @param layer it stands on
 * @param vertices at least two
 * @param closed whether the last vertex is joined to the first
 * @param line in the file where it begins, from 1
 */
record Stroke(String layer, List<Vertex> vertices, boolean closed, int line) {
  /**
   * A corner and what leads on from it.
   *
   * @param bulge the tangent of a quarter of the arc's angle to the next vertex, positive
   *     counter-clockwise; 0 for a straight piece (published DXF reference, group 42)
   */
  record Vertex(Point at, double bulge) {}

  /** Arcs are cut into at most so many pieces. */
  private static final int MOST_PIECES = 180;

  Stroke {
    vertices = List.copyOf(vertices);
  }

  static Stroke straight(String layer, Point from, Point to, int line) {
    return new Stroke(layer, List.of(new Vertex(from, 0), new Vertex(to, 0)), false, line);
  }

  boolean isRound() {
    return vertices.stream().anyMatch(v -> v.bulge() != 0);
  }

  /**
   * The corners once every arc is cut into straight pieces of even length; the first is not
   * repeated.
   *
   * @param sagitta farthest a piece may stand off its arc, drawing units, &gt; 0
   */
  List<Point> points(double sagitta) {
    List<Point> points = new ArrayList<>();
    int last = closed ? vertices.size() : vertices.size() - 1;
    for (int i = 0; i < last; i++) {
      Vertex from = vertices.get(i);
      Vertex to = vertices.get((i + 1) % vertices.size());
      points.add(from.at());
      if (from.bulge() != 0) {
        arc(from.at(), to.at(), from.bulge(), sagitta, points);
      }
    }
    if (!closed) {
      points.add(vertices.get(last).at());
    }
    return points;
  }

  private static void arc(Point from, Point to, double bulge, double sagitta, List<Point> points) {
    double chord = from.distance(to);
    if (chord == 0) {
      return;
    }
    double angle = 4 * Math.atan(bulge);
    double radius = chord / 2 / Math.abs(Math.sin(angle / 2));
    // Half the angle of a piece whose middle stands the sagitta off the arc.
    double half = Math.acos(Math.max(-1, 1 - sagitta / radius));
    int pieces = (int) Math.ceil(Math.abs(angle) / Math.max(2 * half, Math.PI / MOST_PIECES));
    Point step = to.minus(from);
    Point centre = from.toward(to, 0.5).plus(step.left().times((1 - bulge * bulge) / (4 * bulge)));
    double start = Math.atan2(from.y() - centre.y(), from.x() - centre.x());
    for (int i = 1; i < pieces; i++) {
      double at = start + angle * i / pieces;
      points.add(centre.plus(new Point(Math.cos(at), Math.sin(at)).times(radius)));
    }
  }
}
