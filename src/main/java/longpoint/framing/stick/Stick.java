package longpoint.framing.stick;

import java.util.Objects;
import java.util.OptionalDouble;
import longpoint.framing.rafter.Incline;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * One rafter in its place. Its line runs in plan from wall face, valley or deck at the foot to the
 * middle of what it meets at the head.
 *
 * @param part id of the part
 * @param run id of the run
 * @param foot lower end of the line
 * @param head upper end of the line
 * @param slope rise over run along the line, ≥ 0
 * @param tail plan length past the foot, ≥ 0
 * @param over plan length past the head, over a wall there, ≥ 0
 * @param atFoot how its foot or tail is cut
 * @param atHead how its head is cut
 * @param falls of the roof to both sides of a hip; of a valley, how far it climbs there
 * @param heel plumb from the plate to the frame plane at the foot; empty where it has no plate
 * @param row of jacks it belongs to: those between the same two lines; empty for others
 */
record Stick(
    RafterKind kind,
    String part,
    String run,
    Point foot,
    Point head,
    double slope,
    double tail,
    double over,
    Joint atFoot,
    Joint atHead,
    Falls falls,
    OptionalDouble heel,
    String row) {
  /**
   * How far the planes beside a hip fall for each unit stepped level and square away from it.
   *
   * @param left looking up the hip, ≥ 0
   * @param right looking up the hip, ≥ 0
   */
  record Falls(double left, double right) {
    static final Falls NONE = new Falls(0, 0);

    /** Of two planes beside a hip, in no order. */
    static Falls beside(Point up, Plane one, Plane other) {
      Point left = up.unit().left();
      double a = one.a() * left.x() + one.b() * left.y();
      double b = other.a() * left.x() + other.b() * left.y();
      // A plane's height steps down towards its own side only.
      return new Falls(Math.max(0, -Math.min(a, b)), Math.max(0, Math.max(a, b)));
    }

    /** Of one plane beside a hip or valley, for both sides. */
    static Falls even(Point up, Plane plane) {
      Point left = up.unit().left();
      double fall = Math.abs(plane.a() * left.x() + plane.b() * left.y());
      return new Falls(fall, fall);
    }

    double steeper() {
      return Math.max(left, right);
    }
  }

  Stick {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(atFoot);
    Objects.requireNonNull(atHead);
    Objects.requireNonNull(heel);
  }

  static Stick of(RafterKind kind, String part, String run, Point foot, Point head, double slope) {
    return new Stick(
        kind,
        part,
        run,
        foot,
        head,
        slope,
        0,
        0,
        Joint.NONE,
        Joint.NONE,
        Falls.NONE,
        OptionalDouble.empty(),
        "");
  }

  Stick withTail(double tail) {
    return with(tail, over, atFoot, atHead, falls, heel, row);
  }

  Stick withOver(double over) {
    return with(tail, over, atFoot, atHead, falls, heel, row);
  }

  Stick withFoot(Joint foot) {
    return with(tail, over, foot, atHead, falls, heel, row);
  }

  Stick withHead(Joint head) {
    return with(tail, over, atFoot, head, falls, heel, row);
  }

  Stick withFalls(Falls falls) {
    return with(tail, over, atFoot, atHead, falls, heel, row);
  }

  Stick withHeel(double heel) {
    return with(tail, over, atFoot, atHead, falls, OptionalDouble.of(heel), row);
  }

  Stick withRow(String row) {
    return with(tail, over, atFoot, atHead, falls, heel, row);
  }

  private Stick with(
      double tail,
      double over,
      Joint atFoot,
      Joint atHead,
      Falls falls,
      OptionalDouble heel,
      String row) {
    return new Stick(
        kind, part, run, foot, head, slope, tail, over, atFoot, atHead, falls, heel, row);
  }

  Stick as(RafterKind kind) {
    return new Stick(
        kind, part, run, foot, head, slope, tail, over, atFoot, atHead, falls, heel, row);
  }

  /** The same between other ends in plan. */
  Stick between(Point foot, Point head) {
    return new Stick(
        kind, part, run, foot, head, slope, tail, over, atFoot, atHead, falls, heel, row);
  }

  /** Whether it is a rafter at all: where planes do not meet as drawn, the line falls or is nil. */
  boolean climbs() {
    return slope >= 0 && Double.isFinite(slope) && foot.distance(head) > 0;
  }

  Point up() {
    return head.minus(foot);
  }

  Segment inPlan() {
    return new Segment(foot, head);
  }

  Incline line() {
    return new Incline(foot.distance(head), slope);
  }

  /** From the tail's plumb cut, or the shortened foot, to the shortened head. */
  Incline cut() {
    return line().shortened(atFoot.off() + atHead.off()).extended(tail + over);
  }

  /** Drop of the edge of a hip that is not backed. */
  double drop(double thickness) {
    return kind == RafterKind.HIP ? thickness / 2 * falls.steeper() : 0;
  }
}
