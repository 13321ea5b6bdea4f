package longpoint.surface;

import java.util.List;
import java.util.Optional;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.EdgeKind;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** What must hold of a part before its roof can be worked out at all. */
final class PartFitness {
  private PartFitness() {}

  /** The first thing in the way, if there is one. */
  static Optional<Problem> check(PartSpec spec) {
    List<Side> sides = spec.sides();
    for (Side side : sides) {
      if (side.wall().length() == 0) {
        return error(side, "has no length", "Remove one of its two corners.");
      }
      if (side.kind() == EdgeKind.EAVE && !(side.slope().ratio() > 0)) {
        return error(side, "is an eave with no slope", "Give it a slope, or make it a gable.");
      }
      if (!(side.overhang() >= 0) || Double.isInfinite(side.overhang())) {
        return error(side, "has no possible overhang", "Set the overhang to 0 or more.");
      }
      if (!Double.isFinite(side.heel() + side.plateHeight() + side.fascia())) {
        return error(side, "has no possible height", "Type its plate, heel and fascia again.");
      }
    }
    if (sides.stream().noneMatch(PartSolver::isEave)) {
      return Optional.of(
          Problem.error(
              spec.part(),
              "No side of "
                  + Wording.part(spec.part())
                  + " is an eave, so its roof slopes nowhere.",
              "Make at least one side an eave."));
    }
    return outline(spec);
  }

  private static Optional<Problem> outline(PartSpec spec) {
    List<Ring> rings =
        spec.rings().stream()
            .map(r -> new Ring(r.stream().map(s -> s.wall().from()).toList()))
            .toList();
    if (!rings.get(0).counterClockwise()) {
      return error(spec.rings().get(0).get(0), "runs clockwise", "Turn the outline round.");
    }
    for (int i = 1; i < rings.size(); i++) {
      if (rings.get(i).counterClockwise()) {
        return error(spec.rings().get(i).get(0), "runs counter-clockwise", "Turn the hole round.");
      }
    }
    Polygon polygon =
        Jts.FACTORY.createPolygon(
            Jts.linearRing(rings.get(0)),
            rings.subList(1, rings.size()).stream()
                .map(Jts::linearRing)
                .toArray(LinearRing[]::new));
    TopologyValidationError wrong = new IsValidOp(polygon).getValidationError();
    if (wrong == null) {
      return Optional.empty();
    }
    Point where = Jts.point(wrong.getCoordinate());
    Side near =
        spec.sides().stream()
            .min((a, b) -> Double.compare(a.wall().distance(where), b.wall().distance(where)))
            .orElseThrow();
    return error(near, "crosses or touches another side", "Pull the two sides apart.");
  }

  private static Optional<Problem> error(Side side, String fault, String cure) {
    String name = Wording.side(side);
    String start = Character.toUpperCase(name.charAt(0)) + name.substring(1);
    return Optional.of(Problem.error(side.id(), start + " " + fault + ".", cure));
  }
}
