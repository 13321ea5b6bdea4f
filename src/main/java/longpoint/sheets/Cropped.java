package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/** Lines cut off at the edge of a box. */
final class Cropped {
  private Cropped() {}

  /**
   * @param marks paths only
   */
  static List<Mark> marks(List<Mark> marks, Bounds window) {
    List<Mark> kept = new ArrayList<>();
    for (Mark mark : marks) {
      Mark.Path path = (Mark.Path) mark;
      int last = path.closed() ? path.points().size() : path.points().size() - 1;
      boolean inside = path.points().stream().allMatch(window::contains);
      if (inside) {
        kept.add(path);
      }
      for (int i = 0; i < last && !inside; i++) {
        Point from = path.points().get(i);
        Point to = path.points().get((i + 1) % path.points().size());
        line(new Segment(from, to), window)
            .map(l -> Mark.Path.line(l.from(), l.to(), path.layer(), path.subject()))
            .ifPresent(kept::add);
      }
    }
    return kept;
  }

  /** The piece of a line in a box, by the method of Liang and Barsky (ACM TOG 3, 1984). */
  static Optional<Segment> line(Segment line, Bounds box) {
    Point from = line.from();
    Point to = line.to();
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double[] p = {-dx, dx, -dy, dy};
    double[] q = {
      from.x() - box.minX(), box.maxX() - from.x(), from.y() - box.minY(), box.maxY() - from.y()
    };
    double in = 0;
    double out = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0 && q[i] < 0) {
        return Optional.empty();
      }
      if (p[i] < 0) {
        in = Math.max(in, q[i] / p[i]);
      } else if (p[i] > 0) {
        out = Math.min(out, q[i] / p[i]);
      }
    }
    return in < out
        ? Optional.of(new Segment(from.toward(to, in), from.toward(to, out)))
        : Optional.empty();
  }
}
