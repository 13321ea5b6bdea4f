package longpoint.editor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * An endless line that the pointer may be held on.
 *
 * @param through a point on it; lengths along it count from here
 * @param along its direction, one unit long
 * @param pace one whole step along it is this many of the user's steps: itself on most lines; one
 *     across and one up at 45°, so that corners keep whole figures
 */
record Guide(Point through, Point along, Point pace, Snap.Kind kind, Supplier<String> reason) {
  /**
   * Two unit directions whose cross product is smaller than this are one direction: a
   * ten-thousandth of a degree, below what rounding of drawn corners leaves and far below anything
   * visible.
   */
  private static final double SAME_DIRECTION = 2e-6;

  private Guide(Point through, Point along, Snap.Kind kind, Supplier<String> reason) {
    this(through, along, along, kind, reason);
  }

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
                () -> Messages.text("snap.inline", target.name().get())));
      }
    }
    for (Target target : targets) {
      if (target.ends()) {
        Point corner = target.wall().from();
        Supplier<String> reason = target.level();
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

  private static void fan(
      List<Guide> guides, Point anchor, Point base, Optional<Supplier<String>> wall) {
    add(guides, anchor, base, "parallel", wall);
    add(guides, anchor, base.left(), "square", wall);
    add(guides, anchor, base.plus(base.left()), "diagonal", wall);
    add(guides, anchor, base.minus(base.left()), "diagonal", wall);
  }

  private static void add(
      List<Guide> guides, Point anchor, Point pace, String how, Optional<Supplier<String>> wall) {
    Point along = how.equals("diagonal") ? pace.unit() : pace;
    if (guides.stream().noneMatch(g -> parallel(g.along, along))) {
      Supplier<String> reason =
          () ->
              wall.map(w -> Messages.text("snap." + how, w.get()))
                  .orElseGet(() -> Messages.text("snap.page." + how));
      guides.add(new Guide(anchor, along, pace, Snap.Kind.SQUARE, reason));
    }
  }

  /** Whether two unit directions are one and the same, or opposite. */
  static boolean parallel(Point a, Point b) {
    return Math.abs(a.cross(b)) < SAME_DIRECTION;
  }

  double distance(Point p) {
    return Math.abs(along.cross(p.minus(through)));
  }

  /**
   * The foot of a point on the line, in whole paces from {@link #through}.
   *
   * @param step the user's step; 0 for none
   */
  Point foot(Point p, double step) {
    double length = along.dot(p.minus(through));
    return step > 0
        ? through.plus(pace.times(Math.rint(length / (step * pace.length())) * step))
        : through.plus(along.times(length));
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
