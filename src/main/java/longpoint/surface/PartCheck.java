package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.plan.EdgeKind;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.units.LengthFigure;
import longpoint.wording.Phrase;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Looks a part's roof over on every solve: the planes share out the roof's ground to the last bit,
 * every eave has a plane, and no plane drops below its own fascia. What fails is said, so that no
 * wrong figure leaves unmarked.
 */
final class PartCheck {
  /**
   * Share of the ground that rounding may lose: a square millimetre on a thousand square metres.
   */
  private static final double SHARE = 1e-9;

  private final PartSpec spec;
  private final List<Piece> pieces;
  private final double grain;
  private final List<Problem> faults = new ArrayList<>();

  private PartCheck(PartSpec spec, List<Piece> pieces, double grain) {
    this.spec = spec;
    this.pieces = pieces;
    this.grain = grain;
  }

  /**
   * Faults of a part's roof.
   *
   * @param ground the roof outline with its open sides moved out, worked out without the planes
   */
  static List<Problem> check(PartSpec spec, List<Piece> pieces, Geometry ground, double grain) {
    PartCheck check = new PartCheck(spec, pieces, grain);
    check.filled(ground);
    for (List<Side> ring : spec.rings()) {
      for (int i = 0; i < ring.size(); i++) {
        if (PartSolver.isEave(ring.get(i))) {
          check.eave(ring, i);
        }
      }
    }
    return check.faults;
  }

  private void filled(Geometry ground) {
    double shared = pieces.stream().mapToDouble(p -> p.ground().getArea()).sum();
    if (Math.abs(shared - ground.getArea())
        > SHARE * ground.getArea() + grain * ground.getLength()) {
      faults.add(
          Problem.error(
              spec.part(), Phrase.of("surface.part.notFilled", PlaceName.part(spec.part()))));
    }
  }

  private void eave(List<Side> ring, int i) {
    Side side = ring.get(i);
    List<Piece> own = pieces.stream().filter(p -> p.side() == side.index()).toList();
    if (own.isEmpty()) {
      faults.add(overtaken(side));
    }
    double past =
        Math.max(
            past(side, ring.get(Math.floorMod(i - 1, ring.size()))),
            past(side, ring.get((i + 1) % ring.size())));
    double lowest =
        FasciaLevels.height(side)
            - past * side.slope().ratio()
            - 8 * grain * (1 + side.slope().ratio());
    for (Piece piece : own) {
      for (Coordinate c : piece.ground().getCoordinates()) {
        if (piece.plane().heightAt(Jts.point(c)) < lowest) {
          faults.add(
              Problem.error(side.id(), Phrase.of("surface.dropsBelow", PlaceName.wall(side))));
          return;
        }
      }
    }
  }

  /** How far a plane may run on past its own fascia, under the rake of a wall nearly in line. */
  private static double past(Side side, Side neighbour) {
    boolean rake = neighbour.kind() == EdgeKind.GABLE;
    return rake && Contour.flat(side.wall(), neighbour.wall())
        ? Math.max(0, neighbour.reach() - side.reach())
        : 0;
  }

  /**
   * An eave set so high above the lowest one that the roof beside it closes over its wall before it
   * comes up to its fascia: nothing is left for its own plane, and the wall under it ends like a
   * gable. Once its heel is low enough for its plane to reach its fascia from the lowest eave's
   * level, it has a plane of its own whatever stands beside it.
   */
  private Problem overtaken(Side side) {
    double lowest =
        spec.sides().stream()
            .filter(PartSolver::isEave)
            .mapToDouble(s -> s.plateHeight() + s.heel())
            .min()
            .orElseThrow();
    double heel = FasciaLevels.heelFor(side, Math.max(lowest, highestOver(side)));
    double always = lowest + side.slope().ratio() * side.reach() - side.plateHeight();
    if (side.heel() <= always) {
      return Problem.error(side.id(), Phrase.of("surface.noPlane", PlaceName.wall(side)));
    }
    return new Problem(
        Problem.Level.ERROR,
        side.id(),
        Phrase.of("surface.overtaken", PlaceName.wall(side)),
        heel < side.heel()
            ? Phrase.of("surface.overtaken.lower", new LengthFigure(heel, spec.unit()))
            : Phrase.of("surface.overtaken.least", new LengthFigure(always, spec.unit())));
  }

  /** The highest point of the roof along a side's own edge. */
  private double highestOver(Side side) {
    double highest = Double.NEGATIVE_INFINITY;
    for (Piece piece : pieces) {
      for (Coordinate c : piece.ground().getCoordinates()) {
        Point p = Jts.point(c);
        if (Math.abs(-side.wall().offset(p) - side.reach()) < 8 * grain
            && side.wall().distance(p) < 2 * side.reach() + 8 * grain) {
          highest = Math.max(highest, piece.plane().heightAt(p));
        }
      }
    }
    return highest;
  }
}
