package longpoint.tracing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Problem;
import longpoint.stop.CalledOff;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;

/**
 * From strokes to outlines: strokes to lines of points in the plan's unit, lines to closed chains
 * ({@link Chains}), chains to clean rings, and which ring stands in which.
 */
final class Tracing {
  /** Ends nearer than this meet, millimetres: an eighth of an inch, finer than framing is. */
  private static final double JOINED = 3.175;

  /**
   * Ends of two chains farther apart than this are left, millimetres: five feet, wider than the
   * doors that are left out of a wall line.
   */
  private static final double REACH = 1524;

  /** How far a straight piece of an arc may stand off it, millimetres. */
  private static final double OFF_ARC = 3;

  /** Ground a part covers at least, square millimetres: posts and symbols are no parts. */
  private static final double LEAST_GROUND = 1e6;

  /** How far off the wall a corner may stand and still be none, millimetres. */
  private static final double STRAIGHT = 0.01;

  /** Beyond this a plan is moved to the origin, millimetres: a survey's coordinates. */
  private static final double FAR = 1e6;

  /** Noise of a CAD program's own sums; lengths keep a millionth of the plan's unit. */
  private static final double GRAIN = 1e6;

  private final LengthUnit unit;
  private final Traced.Gaps what;
  private final List<Gap> gaps = new ArrayList<>();
  private final List<List<Point>> lines = new ArrayList<>();
  private final List<Problem> notes = new ArrayList<>();

  private Tracing(LengthUnit unit, Traced.Gaps what) {
    this.unit = unit;
    this.what = what;
  }

  /**
   * @param factor plan units to a unit of the strokes
   * @param what becomes of lines that would close if their ends met
   */
  static Traced of(List<Stroke> strokes, double factor, LengthUnit unit, Traced.Gaps what) {
    Tracing tracing = new Tracing(unit, what);
    List<Outline> outlines = tracing.outlines(strokes, factor);
    return new Traced(outlines, tracing.gaps, tracing.lines, tracing.notes);
  }

  private double units(double millimetres) {
    return unit.fromMillimetres(millimetres);
  }

  private List<Outline> outlines(List<Stroke> strokes, double factor) {
    Point shift = shift(strokes, factor);
    List<Found> found = new ArrayList<>();
    for (String layer : strokes.stream().map(Stroke::layer).distinct().toList()) {
      CalledOff.check();
      List<List<Point>> open = new ArrayList<>();
      for (Stroke stroke : strokes) {
        if (stroke.layer().equals(layer)) {
          List<Point> points = points(stroke, factor, shift);
          lines.add(points);
          if (stroke.closed()) {
            lines.add(List.of(points.get(points.size() - 1), points.get(0)));
            ring(layer, points, found);
          } else {
            open.add(points);
          }
        }
      }
      Chains chains = Chains.of(open, units(JOINED), units(REACH), what);
      chains.rings().forEach(r -> ring(layer, r, found));
      chains.gaps().forEach(g -> gap(new Gap(layer, g.from(), g.to())));
    }
    found.sort(Comparator.comparingDouble((Found f) -> f.ring().area()).reversed());
    return nested(withoutTwins(found));
  }

  /** A ring that has been found, not yet compared with the others. */
  private record Found(String layer, Ring ring) {}

  private List<Point> points(Stroke stroke, double factor, Point shift) {
    List<Point> out = new ArrayList<>();
    for (Point p : stroke.points(units(OFF_ARC) / factor)) {
      Point at = p.times(factor).minus(shift);
      out.add(new Point(Math.rint(at.x() * GRAIN) / GRAIN, Math.rint(at.y() * GRAIN) / GRAIN));
    }
    return out;
  }

  private Point shift(List<Stroke> strokes, double factor) {
    Bounds box =
        Bounds.of(
            strokes.stream().flatMap(s -> s.vertices().stream()).map(Stroke.Vertex::at).toList());
    Point corner = box.isEmpty() ? new Point(0, 0) : new Point(box.minX(), box.minY());
    Point at = corner.times(factor);
    if (Math.max(Math.abs(at.x()), Math.abs(at.y())) < units(FAR)) {
      return new Point(0, 0);
    }
    notes.add(Problem.note("plan", Phrase.of("tracing.far")));
    return new Point(Math.floor(at.x()), Math.floor(at.y()));
  }

  private void ring(String layer, List<Point> points, List<Found> found) {
    List<Point> corners = corners(points);
    if (corners.size() < 3) {
      return;
    }
    Ring ring = new Ring(corners);
    double mm = unit.toMillimetres(1);
    if (ring.area() * mm * mm >= LEAST_GROUND) {
      found.add(new Found(layer, ring.counterClockwise() ? ring : ring.reversed()));
    }
  }

  /** Without points that stand on one another or in the middle of a straight wall. */
  private List<Point> corners(List<Point> points) {
    List<Point> apart = new ArrayList<>();
    for (Point p : points) {
      if (apart.isEmpty() || apart.get(apart.size() - 1).distance(p) > units(STRAIGHT)) {
        apart.add(p);
      }
    }
    while (apart.size() > 1
        && apart.get(0).distance(apart.get(apart.size() - 1)) <= units(JOINED)) {
      apart.remove(apart.size() - 1);
    }
    for (int i = 0; i < apart.size() && apart.size() > 2; ) {
      Point before = apart.get(Math.floorMod(i - 1, apart.size()));
      Point after = apart.get((i + 1) % apart.size());
      if (new Segment(before, after).distance(apart.get(i)) <= units(STRAIGHT)) {
        apart.remove(i);
        i = Math.max(0, i - 1);
      } else {
        i++;
      }
    }
    return apart;
  }

  private List<Found> withoutTwins(List<Found> found) {
    List<Found> single = new ArrayList<>();
    for (Found f : found) {
      boolean twin = single.stream().anyMatch(s -> same(s.ring(), f.ring()));
      if (twin) {
        notes.add(Problem.note("plan", Phrase.of("tracing.twice", f.layer())));
      } else {
        single.add(f);
      }
    }
    return single;
  }

  private boolean same(Ring a, Ring b) {
    return a.size() == b.size()
        && Math.abs(a.area() - b.area()) <= 1e-6 * a.area()
        && b.points().stream().allMatch(p -> a.distance(p) <= units(JOINED));
  }

  /** The list runs from the largest down, so whatever stands around a ring comes before it. */
  private static List<Outline> nested(List<Found> found) {
    List<Outline> outlines = new ArrayList<>();
    for (Found f : found) {
      int depth = (int) outlines.stream().filter(o -> isInside(f.ring(), o.ring())).count();
      outlines.add(new Outline(f.layer(), f.ring(), depth));
    }
    return outlines;
  }

  /** Rings that share a wall stand beside each other: all corners must be inside or on the line. */
  private static boolean isInside(Ring inner, Ring outer) {
    double near = 1e-6 * Math.sqrt(outer.area());
    boolean any = false;
    for (Point p : inner.points()) {
      if (outer.distance(p) > near) {
        if (!outer.contains(p)) {
          return false;
        }
        any = true;
      }
    }
    return any;
  }

  private void gap(Gap gap) {
    gaps.add(gap);
    String key =
        switch (what) {
          case LEFT_OPEN -> "tracing.open";
          case CLOSED -> "tracing.closed";
        };
    notes.add(
        Problem.warning(
            "plan",
            Phrase.of(
                key,
                gap.layer(),
                length(gap.width()),
                length(gap.from().x()),
                length(gap.from().y()),
                length(gap.to().x()),
                length(gap.to().y()))));
  }

  private LengthFigure length(double length) {
    return new LengthFigure(length, unit);
  }
}
