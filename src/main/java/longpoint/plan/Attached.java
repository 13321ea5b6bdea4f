package longpoint.plan;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * Parts that stand against a wall of another: joined to it as the upper part, with an open side on
 * the wall's line. When the wall moves they go along, and so does whatever stands against them.
 */
public final class Attached {
  /**
   * How far the ends of an open side may lie off the wall's line, as a share of the wall's length:
   * a few thousandths of an inch on the longest house, which covers rounding and nothing drawn.
   */
  static final double ON_THE_LINE = 1e-6;

  private Attached() {}

  /**
   * The plan with a part reshaped and everything that stood against its moved walls moved along.
   * Walls are told by their numbers, which must be as they were.
   *
   * @param reshaped a part of the plan after a side was moved or given a length
   */
  public static Plan follow(Plan plan, Part reshaped) {
    Plan followed = plan.withPart(reshaped);
    Part before = plan.part(reshaped.id()).orElseThrow();
    for (int i = 0; i < before.sideCount() && before.sideCount() == reshaped.sideCount(); i++) {
      Segment wall = before.side(i);
      Segment moved = reshaped.side(i);
      if (wall.length() > 0 && moved.length() > 0 && parallel(wall, moved)) {
        followed = carry(plan, followed, before.id(), wall, -wall.offset(moved.from()));
      }
    }
    return followed;
  }

  /**
   * The plan with the parts that stood against a wall moved along with it.
   *
   * @param before the plan as it was, which says what stood there
   * @param after the plan with the wall moved
   * @param outward how far the wall went, away from the inside of its part
   */
  public static Plan carry(Plan before, Plan after, String part, Segment wall, double outward) {
    if (outward == 0) {
      return after;
    }
    Motion along = Motion.shift(wall.direction().left().times(-outward));
    Plan carried = after;
    for (String id : against(before, part, wall)) {
      Optional<Part> there = carried.part(id);
      if (there.isPresent()) {
        carried = carried.withPart(along.on(there.get()));
      }
    }
    return carried;
  }

  /** Ids of parts and of everything that stands against any of them, the given ones first. */
  public static List<String> with(Plan plan, List<String> parts) {
    Set<String> all = new LinkedHashSet<>(parts);
    for (String id : parts) {
      Optional<Part> part = plan.part(id);
      for (int i = 0; part.isPresent() && i < part.get().sideCount(); i++) {
        Segment wall = part.get().side(i);
        if (wall.length() > 0) {
          all.addAll(against(plan, id, wall));
        }
      }
    }
    return List.copyOf(all);
  }

  /** Ids of the parts against a wall of a part, and of those against any wall of theirs. */
  public static Set<String> against(Plan plan, String part, Segment wall) {
    Set<String> found = new LinkedHashSet<>();
    for (Join join : plan.joins()) {
      boolean touches =
          join.lower().equals(part)
              && plan.part(join.upper()).filter(p -> touches(p, wall)).isPresent();
      if (touches && !join.upper().equals(part)) {
        found.add(join.upper());
      }
    }
    for (String id : Set.copyOf(found)) {
      addAllOn(plan, id, found);
    }
    found.remove(part);
    return found;
  }

  private static void addAllOn(Plan plan, String part, Set<String> found) {
    for (Join join : plan.joins()) {
      if (join.lower().equals(part)
          && plan.part(join.upper()).isPresent()
          && found.add(join.upper())) {
        addAllOn(plan, join.upper(), found);
      }
    }
  }

  private static boolean touches(Part part, Segment wall) {
    for (int i = 0; i < part.sideCount(); i++) {
      if (part.edges().get(i).kind() == EdgeKind.OPEN && lies(part.side(i), wall)) {
        return true;
      }
    }
    return false;
  }

  private static boolean lies(Segment side, Segment wall) {
    double off = Math.max(Math.abs(wall.offset(side.from())), Math.abs(wall.offset(side.to())));
    double low = Math.min(wall.along(side.from()), wall.along(side.to()));
    double high = Math.max(wall.along(side.from()), wall.along(side.to()));
    return off <= ON_THE_LINE * wall.length() && low < wall.length() && high > 0;
  }

  private static boolean parallel(Segment a, Segment b) {
    Point u = a.direction();
    Point v = b.direction();
    return Math.abs(u.cross(v)) < Reshape.PARALLEL && u.dot(v) > 0;
  }
}
