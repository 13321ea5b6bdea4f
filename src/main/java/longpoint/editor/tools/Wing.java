package longpoint.editor.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.editor.NewPart;
import longpoint.editor.Ref;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * An addition against one wall: a box with a gable at its far end, eaves along its sides, and the
 * side on the wall open, so that its roof runs on to the house as an overlay.
 *
 * @param house the wall it stands against
 * @param start distance of its near side from the wall's start
 * @param width along the wall; negative lays it off toward the wall's start
 * @param depth away from the wall
 */
record Wing(Ref.OfSide house, double start, double width, double depth) {
  /** Whether there is anything to build. */
  boolean hasSize() {
    return width != 0 && depth > 0;
  }

  /** Whether it keeps to the wall. */
  boolean fits(Plan plan) {
    double end = start + width;
    return Math.min(start, end) >= 0 && Math.max(start, end) <= wall(plan).length();
  }

  Segment wall(Plan plan) {
    return plan.part(house.part()).orElseThrow().side(house.side());
  }

  /** The new part; empty without size. */
  Optional<Part> part(Plan plan) {
    if (!hasSize()) {
      return Optional.empty();
    }
    Point low = on(plan, Math.min(start, start + width));
    Point high = on(plan, Math.max(start, start + width));
    Point out = wall(plan).direction().left().times(-depth);
    Ring outline = new Ring(List.of(low.plus(out), high.plus(out), high, low));
    List<EdgeKind> kinds = List.of(EdgeKind.GABLE, EdgeKind.EAVE, EdgeKind.OPEN, EdgeKind.EAVE);
    return Optional.of(
        NewPart.of(plan, "wing", outline, kinds)
            .withPlateHeight(plan.part(house.part()).orElseThrow().plateHeight()));
  }

  /** The plan with the wing and its join. */
  Optional<Plan> built(Plan plan) {
    return part(plan)
        .map(
            wing -> {
              List<Join> joins = new ArrayList<>(plan.joins());
              joins.add(Join.overlay(wing.id(), house.part()));
              return plan.withPart(wing).withJoins(joins);
            });
  }

  /** A place on the wall; its two ends are met exactly. */
  private Point on(Plan plan, double along) {
    Segment wall = wall(plan);
    return along == wall.length() ? wall.to() : wall.from().plus(wall.direction().times(along));
  }
}
