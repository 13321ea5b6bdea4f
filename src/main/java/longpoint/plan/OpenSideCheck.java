package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Meeting;
import longpoint.geometry.Point;
import longpoint.wording.Phrase;

/**
 * Whether a part whose open side stands against another is joined to it. Without a join the roofs
 * may meet all the same, but nothing says which is built first, and no valley set is laid out.
 */
public final class OpenSideCheck {
  private OpenSideCheck() {}

  /** A warning for each open side against a part that its own is not joined to. */
  static List<Problem> check(Plan plan) {
    List<Problem> problems = new ArrayList<>();
    for (Part part : plan.parts()) {
      boolean joined = plan.joins().stream().anyMatch(j -> j.upper().equals(part.id()));
      for (int i = 0; i < part.sideCount() && !joined; i++) {
        if (part.edges().get(i).kind() == EdgeKind.OPEN && part.side(i).length() > 0) {
          against(plan, part, i, problems);
        }
      }
    }
    return problems;
  }

  private static void against(Plan plan, Part part, int side, List<Problem> problems) {
    for (Part other : plan.parts()) {
      if (!other.id().equals(part.id()) && standsAt(part, side, other)) {
        problems.add(
            Problem.warning(
                Side.id(part.id(), side),
                Phrase.of("plan.noJoin", PlaceName.of(part, side), PlaceName.of(other))));
        return;
      }
    }
  }

  /** Whether the middle of a side stands at a wall of a part, or within it. */
  public static boolean standsAt(Part part, int side, Part other) {
    Point middle = part.side(side).middle();
    if (Meeting.holds(other.outline(), middle)) {
      return true;
    }
    for (int i = 0; i < other.sideCount(); i++) {
      if (other.side(i).distance(middle) <= Attached.ON_THE_LINE * other.side(i).length()) {
        return true;
      }
    }
    return false;
  }
}
