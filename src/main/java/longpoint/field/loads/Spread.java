package longpoint.field.loads;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import longpoint.geometry.Patch;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * Shares the ground of one plane out among the members under it. Members run up the slope; where
 * one ends the ground is cut across, so that in each strip the same members stand side by side.
 *
 * <p>Two things are told of each bay between neighbours: the ground nearer to each, parted half way
 * (the trade's tributary area), and by the rule of the lever what each carries of the bay's load,
 * as if the sheathing were a plank on both. What lies past the last member, as under a rake's
 * ladder, is a lever over the last two. Ground with no member up the slope, as at the top of a hip
 * end of step-down trusses, lies on those that cross it.
 */
final class Spread {
  /** Told what comes to a member. */
  interface Taker {
    /** Ground nearer to this member than to any other. */
    void ground(Member member, Patch ground);

    /**
     * The load of so much ground, at a place on the member's line; may be negative past a lever.
     */
    void load(Member member, Point at, double ground);

    /** Ground without any member. */
    void nobody(Patch ground);
  }

  /** Directions nearer than this sine are the same. */
  private static final double PARALLEL = 1e-6;

  /** Coordinates this near, as a share of the ground's size, are the same: rounding. */
  private static final double SAME = 1e-9;

  /** Sheathing lies on no member farther away than this many spacings. */
  private static final double FARTHEST = 2;

  /** A hip's member stands no farther from the hip than this share of the plane. */
  private static final double EDGE = 0.02;

  private final Patch ground;
  private final Point up;
  private final Point over;
  private final Taker taker;
  private final double same;
  private final double farthest;
  private final double[] reachUp;
  private final double[] reachOver;

  private Spread(Patch ground, Point up, double spacing, Taker taker) {
    this.farthest = FARTHEST * spacing;
    this.ground = ground;
    this.up = up;
    this.over = up.left().times(-1);
    this.taker = taker;
    this.reachUp = ground.reach(up);
    this.reachOver = ground.reach(over);
    this.same =
        SAME
            * (Math.abs(reachUp[0])
                + Math.abs(reachUp[1])
                + Math.abs(reachOver[0])
                + Math.abs(reachOver[1]));
  }

  /** A member as a line over = at + lean · up, where it stands. */
  private record Line(Member member, double low, double high, double at, double lean) {
    double over(double up) {
      return at + lean * up;
    }

    Line moved(double by) {
      return new Line(member, low, high, at + by, lean);
    }
  }

  /**
   * @param ground not empty
   * @param up the slope, one unit in plan
   * @param members of the part
   * @param spacing of its members: ground much farther from any is nobody's
   */
  static void out(Patch ground, Point up, List<Member> members, double spacing, Taker taker) {
    if (!ground.isEmpty() && ground.area() > 0) {
      new Spread(ground, up, spacing, taker).share(members, Looked.UP_THE_SLOPE);
    }
  }

  /** Which way members are looked for. */
  private enum Looked {
    UP_THE_SLOPE,
    ACROSS
  }

  private void share(List<Member> members, Looked looked) {
    List<Line> lines = new ArrayList<>();
    List<Member> crossing = new ArrayList<>();
    for (Member m : members) {
      double sine = Math.abs(m.direction().cross(up));
      double cosine = Math.abs(m.direction().dot(up));
      if (cosine < PARALLEL) {
        crossing.add(m);
      } else if ((near(m.reach()) || looked == Looked.ACROSS)
          && (sine < PARALLEL || m.lie() == Member.Lie.UNDER_A_CORNER && bounds(m))) {
        lines.add(line(m, sine < PARALLEL, looked));
      }
    }
    TreeSet<Double> cuts = new TreeSet<>(List.of(reachUp[0], reachUp[1]));
    for (Line line : lines) {
      cut(cuts, line.low());
      cut(cuts, line.high());
      if (line.lean() != 0) {
        lines.forEach(other -> crossing(line, other).ifPresent(v -> cut(cuts, v)));
      }
    }
    List<Double> all = new ArrayList<>(cuts);
    int from = -1;
    for (int i = 0; i + 1 < all.size(); i++) {
      double low = all.get(i);
      double high = all.get(i + 1);
      double middle = (low + high) / 2;
      List<Line> here =
          lines.stream()
              .filter(l -> l.low() < middle && middle < l.high())
              .sorted(Comparator.comparingDouble(l -> l.over(middle)))
              .toList();
      if (here.isEmpty() || here.stream().noneMatch(l -> l.lean() == 0)) {
        from = from < 0 ? i : from;
        continue;
      }
      if (from >= 0) {
        others(all.get(from), low, crossing, lines, looked);
        from = -1;
      }
      strip(ground.between(up, low, high), here);
    }
    if (from >= 0) {
      others(all.get(from), reachUp[1], crossing, lines, looked);
    }
  }

  /** Height up the slope where two lines cross, if they do. */
  private static OptionalDouble crossing(Line a, Line b) {
    double lean = a.lean() - b.lean();
    if (Math.abs(lean) < PARALLEL) {
      return OptionalDouble.empty();
    }
    double v = (b.at() - a.at()) / lean;
    boolean both = Math.max(a.low(), b.low()) < v && v < Math.min(a.high(), b.high());
    return both ? OptionalDouble.of(v) : OptionalDouble.empty();
  }

  /** Whether a member runs along the edge of this ground. */
  private boolean bounds(Member m) {
    double near = EDGE * Math.max(reachUp[1] - reachUp[0], reachOver[1] - reachOver[0]);
    Point middle = m.axis().middle();
    return ground.rings().stream().anyMatch(r -> r.distance(middle) < near);
  }

  private void cut(TreeSet<Double> cuts, double at) {
    if (at > reachUp[0] + same && at < reachUp[1] - same) {
      Double below = cuts.floor(at);
      Double above = cuts.ceiling(at);
      if (at - below > same && above - at > same) {
        cuts.add(at);
      }
    }
  }

  /** Whether a member lies by this ground at all. */
  private boolean near(Segment s) {
    double uMin = Math.min(over.dot(s.from()), over.dot(s.to()));
    double uMax = Math.max(over.dot(s.from()), over.dot(s.to()));
    double vMin = Math.min(up.dot(s.from()), up.dot(s.to()));
    double vMax = Math.max(up.dot(s.from()), up.dot(s.to()));
    return uMax >= reachOver[0] - same
        && uMin <= reachOver[1] + same
        && vMax >= reachUp[0] - same
        && vMin <= reachUp[1] + same;
  }

  /** Down to the edge of the ground, if that is near, where its lower end is a wall's. */
  private Line line(Member m, boolean straight, Looked looked) {
    Segment s = m.reach();
    boolean rises = up.dot(s.to()) >= up.dot(s.from());
    Point low = rises ? s.from() : s.to();
    Point high = rises ? s.to() : s.from();
    Member.End foot = rises ? m.first() : m.last();
    double a = up.dot(low);
    double b = up.dot(high);
    double lean = straight ? 0 : (over.dot(high) - over.dot(low)) / (b - a);
    boolean clear =
        foot.kind() == BearingLoad.On.WALL
            || foot.kind() == BearingLoad.On.GABLE_WALL
            || foot.kind() == BearingLoad.On.NO_WALL;
    double at = over.dot(low) - lean * a;
    if (looked == Looked.ACROSS) {
      // What lies past both ends of those that cross is cut so small that it hangs on with them.
      return new Line(m, a - farthest, b + farthest, at, lean);
    }
    return new Line(
        m, clear && straight ? Math.min(a, Math.max(reachUp[0], a - farthest)) : a, b, at, lean);
  }

  private void strip(Patch strip, List<Line> lines) {
    if (strip.isEmpty()) {
      return;
    }
    List<Line> apart = new ArrayList<>();
    for (Line line : lines) {
      double[] reach = strip.reach(up);
      double middle = (reach[0] + reach[1]) / 2;
      if (apart.isEmpty() || line.over(middle) - apart.get(apart.size() - 1).over(middle) > same) {
        apart.add(line);
      }
    }
    Line first = apart.get(0);
    if (apart.size() == 1) {
      alone(strip, first);
      return;
    }
    Line last = apart.get(apart.size() - 1);
    past(strip.within(normal(first), first.at()), first, apart.get(1));
    past(beyond(strip, last), last, apart.get(apart.size() - 2));
    for (int i = 0; i + 1 < apart.size(); i++) {
      Line a = apart.get(i);
      Line b = apart.get(i + 1);
      Patch bay = beyond(strip, a).within(normal(b), b.at());
      if (!isBare(bay)) {
        Line half = new Line(a.member(), 0, 0, (a.at() + b.at()) / 2, (a.lean() + b.lean()) / 2);
        Patch nearA = bay.within(normal(half), half.at());
        Patch nearB = beyond(bay, half);
        if (wide(bay, a, b)) {
          alone(nearA, a);
          alone(nearB, b);
        } else {
          ground(a.member(), nearA);
          ground(b.member(), nearB);
          lever(bay, a, b);
        }
      }
    }
  }

  /** Whether members stand too far from each other for sheathing to reach. */
  private boolean wide(Patch bay, Line a, Line b) {
    double v = up.dot(bay.centre());
    return b.over(v) - a.over(v) > 2 * farthest;
  }

  private Point normal(Line line) {
    return over.minus(up.times(line.lean()));
  }

  private Patch beyond(Patch patch, Line line) {
    return patch.within(normal(line).times(-1), -line.at());
  }

  /** Beyond the last: a lever over the last two, if the ladder is no longer than its back span. */
  private void past(Patch patch, Line last, Line inner) {
    Patch near = near(patch, last);
    if (isBare(near)) {
      return;
    }
    ground(last.member(), near);
    double v = up.dot(near.centre());
    double out = Math.abs(over.dot(near.centre()) - last.over(v));
    if (out <= Math.abs(inner.over(v) - last.over(v))) {
      lever(near, last, inner);
    } else {
      taker.load(last.member(), at(last.over(v), v), near.area());
    }
  }

  /** What of some ground is near enough to lie on a member; the rest is nobody's. */
  private Patch near(Patch patch, Line line) {
    Line before = line.moved(-farthest);
    Line after = line.moved(farthest);
    nobody(patch.within(normal(before), before.at()));
    nobody(beyond(patch, after));
    return beyond(patch, before).within(normal(after), after.at());
  }

  private void nobody(Patch patch) {
    if (!isBare(patch)) {
      taker.nobody(patch);
    }
  }

  /** Both carry what a plank over both would bring them. */
  private void lever(Patch bay, Line a, Line b) {
    double area = bay.area();
    Point centre = bay.centre();
    double v = up.dot(centre);
    double gap = b.over(v) - a.over(v);
    if (Math.abs(gap) <= same) {
      taker.load(a.member(), at(a.over(v), v), area);
      return;
    }
    double share = (over.dot(centre) - a.over(v)) / gap;
    taker.load(a.member(), at(a.over(v), v), area * (1 - share));
    taker.load(b.member(), at(b.over(v), v), area * share);
  }

  private void alone(Patch all, Line line) {
    Patch patch = near(all, line);
    if (!isBare(patch)) {
      all(patch, line);
    }
  }

  /** The whole of it on one member, at its middle's height. */
  private void all(Patch patch, Line line) {
    ground(line.member(), patch);
    double v = up.dot(patch.centre());
    taker.load(line.member(), at(line.over(v), v), patch.area());
  }

  private Point at(double u, double v) {
    return over.times(u).plus(up.times(v));
  }

  private void ground(Member member, Patch patch) {
    if (!isBare(patch)) {
      taker.ground(member, patch);
    }
  }

  private boolean isBare(Patch patch) {
    return patch.isEmpty() || Math.abs(patch.area()) <= same * same;
  }

  /** Ground without a member up the slope: on those that cross it, else on one close by. */
  private void others(
      double low, double high, List<Member> crossing, List<Line> lines, Looked looked) {
    Patch patch = ground.between(up, low, high);
    if (isBare(patch)) {
      return;
    }
    List<Member> here =
        crossing.stream()
            .filter(m -> m.way() != Member.Way.THROUGH)
            .filter(m -> beside(m, patch))
            .toList();
    if (looked == Looked.UP_THE_SLOPE && !here.isEmpty()) {
      new Spread(patch, over, farthest / FARTHEST, taker).share(here, Looked.ACROSS);
      return;
    }
    lines.stream()
        .min(Comparator.comparingDouble(l -> away(l, patch.centre())))
        .filter(l -> away(l, patch.centre()) <= farthest)
        .ifPresentOrElse(l -> all(patch, l), () -> taker.nobody(patch));
  }

  /** Whether a member that crosses runs through some ground or close by. */
  private boolean beside(Member m, Patch patch) {
    double[] wide = patch.reach(over);
    double[] tall = patch.reach(up);
    double a = over.dot(m.reach().from());
    double b = over.dot(m.reach().to());
    double v = up.dot(m.axis().from());
    return Math.max(a, b) > wide[0] + same
        && Math.min(a, b) < wide[1] - same
        && v >= tall[0] - farthest
        && v <= tall[1] + farthest;
  }

  private double away(Line line, Point p) {
    return line.member().reach().distance(p);
  }
}
