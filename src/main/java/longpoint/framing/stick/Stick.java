package longpoint.framing.stick;

import java.util.Objects;
import longpoint.framing.rafter.Incline;
import longpoint.framing.rafter.Shortening;
import longpoint.geometry.Point;

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
 * @param atFoot what it meets at its foot
 * @param atHead what it meets at its head
 * @param drop of an unbacked hip, ≥ 0
 */
record Stick(
    RafterKind kind,
    String part,
    String run,
    Point foot,
    Point head,
    double slope,
    double tail,
    Joint atFoot,
    Joint atHead,
    double drop) {
  /**
   * An end that bears on something.
   *
   * @param thickness of what it bears on; 0 for a wall or a deck
   * @param angle between the two in plan, degrees, more than 0, at most 90
   */
  record Joint(double thickness, double angle) {
    static final Joint NONE = new Joint(0, 90);

    /** Plan length that comes off. */
    double shortening() {
      return Shortening.against(thickness, angle);
    }
  }

  Stick {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(atFoot);
    Objects.requireNonNull(atHead);
  }

  /** Whether it is a rafter at all: where planes do not meet as drawn, the line falls or is nil. */
  boolean climbs() {
    return slope >= 0 && Double.isFinite(slope) && foot.distance(head) > 0;
  }

  Incline line() {
    return new Incline(foot.distance(head), slope);
  }

  /** From the tail's plumb cut, or the shortened foot, to the shortened head. */
  Incline cut() {
    return line().shortened(atFoot.shortening() + atHead.shortening()).extended(tail);
  }
}
