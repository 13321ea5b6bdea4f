package longpoint.editor.tools;

import java.util.Optional;
import longpoint.editor.PointerShape;
import longpoint.editor.Ref;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;

/** What the pointer looks like over things. */
final class Pointing {
  /** Tangent of 22.5°: between two of the eight directions there are shapes for. */
  private static final double BETWEEN = 0.4142;

  private Pointing() {}

  /** Over something that may be dragged, or over nothing. */
  static PointerShape over(Optional<Ref> ref, Plan plan) {
    Optional<Ref> there = ref.filter(r -> r.in(plan));
    if (there.isEmpty()) {
      return PointerShape.ARROW;
    }
    if (there.get() instanceof Ref.OfSide side) {
      Segment wall = plan.part(side.part()).orElseThrow().side(side.side());
      return wall.length() > 0 ? square(wall) : PointerShape.MOVE;
    }
    return there.get() instanceof Ref.OfCorner ? PointerShape.MOVE : PointerShape.HAND;
  }

  /** Two arrows square to a wall. */
  static PointerShape square(Segment wall) {
    Point out = wall.direction().left();
    if (Math.abs(out.y()) <= BETWEEN * Math.abs(out.x())) {
      return PointerShape.ACROSS;
    }
    if (Math.abs(out.x()) <= BETWEEN * Math.abs(out.y())) {
      return PointerShape.UP;
    }
    return out.x() * out.y() > 0 ? PointerShape.RISING : PointerShape.FALLING;
  }
}
