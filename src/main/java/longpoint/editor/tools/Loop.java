package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import longpoint.editor.Messages;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/** Says whether drawn corners close to walls that can stand. */
final class Loop {
  private Loop() {}

  /** What is wrong with an outline, in words; empty when it can stand. */
  static Optional<String> wrong(List<Point> corners) {
    if (corners.size() < 3) {
      return Optional.of(Messages.text("loop.few"));
    }
    if (onOneLine(corners)) {
      return Optional.of(Messages.text("loop.flat"));
    }
    return crosses(new Ring(corners))
        ? Optional.of(Messages.text("loop.crosses"))
        : Optional.empty();
  }

  private static boolean onOneLine(List<Point> corners) {
    Segment first = new Segment(corners.get(0), corners.get(1));
    return corners.stream().allMatch(c -> turn(first.from(), first.to(), c) == 0);
  }

  private static boolean crosses(Ring ring) {
    for (int i = 0; i < ring.size(); i++) {
      for (int k = i + 1; k < ring.size(); k++) {
        boolean neighbours = k == i + 1 || i == 0 && k == ring.size() - 1;
        if (neighbours ? foldsBack(ring, k == i + 1 ? k : i) : meet(ring.side(i), ring.side(k))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether the walls at a corner lie on one another. */
  private static boolean foldsBack(Ring ring, int corner) {
    Point back = ring.corner(corner - 1).minus(ring.corner(corner));
    Point on = ring.corner(corner + 1).minus(ring.corner(corner));
    return back.cross(on) == 0 && back.dot(on) > 0;
  }

  /** Whether two walls share a point. */
  static boolean meet(Segment a, Segment b) {
    double b1 = turn(a.from(), a.to(), b.from());
    double b2 = turn(a.from(), a.to(), b.to());
    double a1 = turn(b.from(), b.to(), a.from());
    double a2 = turn(b.from(), b.to(), a.to());
    if (b1 * b2 < 0 && a1 * a2 < 0) {
      return true;
    }
    return b1 == 0 && inBox(a, b.from())
        || b2 == 0 && inBox(a, b.to())
        || a1 == 0 && inBox(b, a.from())
        || a2 == 0 && inBox(b, a.to());
  }

  private static double turn(Point from, Point to, Point p) {
    return Math.signum(to.minus(from).cross(p.minus(from)));
  }

  private static boolean inBox(Segment s, Point p) {
    return p.x() >= Math.min(s.from().x(), s.to().x())
        && p.x() <= Math.max(s.from().x(), s.to().x())
        && p.y() >= Math.min(s.from().y(), s.to().y())
        && p.y() <= Math.max(s.from().y(), s.to().y());
  }
}
