package longpoint.editor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * An endless line that the pointer may be held on.
 *
 * @param through a point on it; lengths along it count from here
 * @param along its direction, one unit long
 */
record Guide(Point through, Point along, Snap.Kind kind, String reason) {
  /**
   * Two unit directions whose cross product is smaller than this are one direction: a
   * ten-thousandth of a degree, below what rounding of drawn corners leaves and far below anything
   * visible.
   */
  private static final double SAME_DIRECTION = 2e-6;

  private static final double HALF = Math.sqrt(0.5);

  /** Lines on which walls would run on, and lines straight across and straight up from corners. */
  static List<Guide> inLine(List<Target> targets) {
    List<Guide> guides = new ArrayList<>();
    for (Target target : targets) {
      if (target.whole()) {
        guides.add(
            new Guide(
                target.wall().from(),
                target.wall().direction(),
                Snap.Kind.IN_LINE,
                Messages.text("snap.inline", target.name())));
      }
    }
    for (Target target : targets) {
      if (target.ends()) {
        Point corner = target.wall().from();
        String reason = target.level();
        guides.add(new Guide(corner, new Point(1, 0), Snap.Kind.IN_LINE, reason));
        guides.add(new Guide(corner, new Point(0, 1), Snap.Kind.IN_LINE, reason));
      }
    }
    return guides;
  }

  /**
   * Lines from an anchor parallel, square and at 45° to walls, those at the anchor first, and to
   * the page. The first reason found for a direction is the one that counts.
   */
  static List<Guide> square(Point anchor, List<Target> targets) {
    List<Guide> guides = new ArrayList<>();
    // The side drawn last is at the end of the list and touches the anchor: it comes first.
    List<Target> nearestFirst = new ArrayList<>(targets);
    Collections.reverse(nearestFirst);
    nearestFirst.removeIf(t -> !t.whole());
    nearestFirst.sort(Comparator.comparingDouble(t -> t.wall().distance(anchor)));
    for (Target target : nearestFirst) {
      fan(guides, anchor, target.wall().direction(), Optional.of(target.name()));
    }
    fan(guides, anchor, new Point(1, 0), Optional.empty());
    return guides;
  }

  private static void fan(List<Guide> guides, Point anchor, Point base, Optional<String> wall) {
    Point diagonal = base.plus(base.left()).times(HALF);
    add(guides, anchor, base, wall, "parallel");
    add(guides, anchor, base.left(), wall, "square");
    add(guides, anchor, diagonal, wall, "diagonal");
    add(guides, anchor, diagonal.left(), wall, "diagonal");
  }

  private static void add(
      List<Guide> guides, Point anchor, Point along, Optional<String> wall, String how) {
    if (guides.stream().noneMatch(g -> parallel(g.along, along))) {
      String reason =
          wall.map(w -> Messages.text("snap." + how, w))
              .orElseGet(() -> Messages.text("snap.page." + how));
      guides.add(new Guide(anchor, along, Snap.Kind.SQUARE, reason));
    }
  }

  /** Whether two unit directions are one and the same, or opposite. */
  static boolean parallel(Point a, Point b) {
    return Math.abs(a.cross(b)) < SAME_DIRECTION;
  }

  double distance(Point p) {
    return Math.abs(along.cross(p.minus(through)));
  }

  /** The foot of a point on the line, its distance from {@link #through} rounded to a step. */
  Point foot(Point p, double step) {
    double length = along.dot(p.minus(through));
    return through.plus(along.times(step > 0 ? Math.rint(length / step) * step : length));
  }

  /** Where two lines cross; empty when they are parallel. */
  Optional<Point> crossing(Guide other) {
    if (parallel(along, other.along)) {
      return Optional.empty();
    }
    double sine = along.cross(other.along);
    double length = other.through.minus(through).cross(other.along) / sine;
    return Optional.of(through.plus(along.times(length)));
  }

  /** The line as drawn to show why a point on it is held there. */
  List<Segment> shownTo(Point at) {
    return through.equals(at) ? List.of() : List.of(new Segment(through, at));
  }
}
