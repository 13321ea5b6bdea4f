package longpoint.field.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.PlanDimension.Corner;

/**
 * How far a corner is from the angle it was drawn with.
 *
 * @param number of the corner
 * @param part id of its part
 * @param planned angle inside the walls on the plan, degrees
 * @param built the same as they stand
 * @param over length of the shorter of its walls
 * @param out how far that wall's other end stands off the drawn angle; positive where the corner is
 *     too open
 * @param allowed what is usual to let pass over that length
 */
public record OutOfSquare(
    int number,
    String part,
    double planned,
    double built,
    double over,
    double out,
    double allowed) {
  /**
   * Half an inch in the 20 ft diagonal of a triangle of 12 and 16 ft: what home builders' and
   * remodellers' performance standards allow (seen as quoted on a site of such standards). By the
   * law of cosines that is ½ · 240 / (144 · 192) of a turn in radians.
   */
  static final double ALLOWED = 0.5 * 240 / (144 * 192);

  public boolean passes() {
    return Math.abs(out) <= allowed;
  }

  /**
   * @param at where the corners of the part stand; a corner without a place stays as drawn
   * @param first number of the part's first corner
   */
  static List<OutOfSquare> of(Part part, Map<Corner, Point> at, int first) {
    List<OutOfSquare> all = new ArrayList<>();
    int before = 0;
    for (Ring ring : part.rings()) {
      List<Point> built = BuiltPlan.corners(part, ring, before, at);
      for (int i = 0; i < ring.size(); i++) {
        Ring stands = new Ring(built);
        double planned = inside(ring, i);
        double now = inside(stands, i);
        Segment in = stands.side(i - 1);
        Segment out = stands.side(i);
        double over = Math.min(in.length(), out.length());
        double off = Math.toRadians(now - planned);
        all.add(
            new OutOfSquare(
                first + before + i,
                part.id(),
                planned,
                now,
                over,
                over * Math.sin(off),
                over * ALLOWED));
      }
      before += ring.size();
    }
    return all;
  }

  /** The angle to the left between the two sides at a corner, degrees, 0 to 360. */
  private static double inside(Ring ring, int corner) {
    Point back = ring.corner(corner - 1).minus(ring.corner(corner));
    Point on = ring.corner(corner + 1).minus(ring.corner(corner));
    double degrees = Math.toDegrees(StrictMath.atan2(on.cross(back), on.dot(back)));
    return degrees < 0 ? degrees + 360 : degrees;
  }
}
