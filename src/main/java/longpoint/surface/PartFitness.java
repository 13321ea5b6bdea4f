package longpoint.surface;

import java.util.List;
import java.util.Optional;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.EdgeKind;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.wording.Phrase;
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
        return error(side, "plan.noLength");
      }
      if (side.kind() == EdgeKind.EAVE && !(side.slope().ratio() > 0)) {
        return error(side, "plan.slope.none");
      }
      if (!(side.overhang() >= 0) || Double.isInfinite(side.overhang())) {
        return error(side, "surface.overhang");
      }
      if (!Double.isFinite(side.heel() + side.plateHeight() + side.fascia())) {
        return error(side, "surface.height");
      }
    }
    if (sides.stream().noneMatch(PartSolver::isEave)) {
      return Optional.of(
          Problem.error(spec.part(), Phrase.of("plan.noEave", PlaceName.part(spec.part()))));
    }
    return outline(spec);
  }

  private static Optional<Problem> outline(PartSpec spec) {
    List<Ring> rings =
        spec.rings().stream()
            .map(r -> new Ring(r.stream().map(s -> s.wall().from()).toList()))
            .toList();
    if (!rings.get(0).counterClockwise()) {
      return error(spec.rings().get(0).get(0), "surface.clockwise");
    }
    for (int i = 1; i < rings.size(); i++) {
      if (rings.get(i).counterClockwise()) {
        return error(spec.rings().get(i).get(0), "surface.counterClockwise");
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
    return error(near, "surface.crosses");
  }

  private static Optional<Problem> error(Side side, String key) {
    return Optional.of(Problem.error(side.id(), Phrase.of(key, PlaceName.wall(side))));
  }
}
