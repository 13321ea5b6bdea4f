package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Jts;
import longpoint.plan.Problem;
import longpoint.plan.Side;
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

  private PartCheck() {}

  /**
   * Faults of a part's roof.
   *
   * @param ground the roof outline with its open sides moved out, worked out without the planes
   */
  static List<Problem> check(List<Side> sides, List<Piece> pieces, Geometry ground, double grain) {
    List<Problem> faults = new ArrayList<>();
    double shared = pieces.stream().mapToDouble(p -> p.ground().getArea()).sum();
    if (Math.abs(shared - ground.getArea())
        > SHARE * ground.getArea() + grain * ground.getLength()) {
      faults.add(
          fault(
              sides.get(0).part(),
              "The planes of " + Wording.part(sides.get(0).part()) + " do not fill its outline"));
    }
    for (Side side : sides) {
      if (PartSolver.isEave(side)) {
        check(side, pieces.stream().filter(p -> p.side() == side.index()).toList(), grain, faults);
      }
    }
    return faults;
  }

  private static void check(Side side, List<Piece> own, double grain, List<Problem> faults) {
    if (own.isEmpty()) {
      faults.add(fault(side.id(), "No roof rises from " + Wording.side(side)));
    }
    double lowest = FasciaLevels.height(side) - 8 * grain * (1 + side.slope().ratio());
    for (Piece piece : own) {
      for (Coordinate c : piece.ground().getCoordinates()) {
        if (piece.plane().heightAt(Jts.point(c)) < lowest) {
          faults.add(
              fault(side.id(), "The plane over " + Wording.side(side) + " drops below its fascia"));
          return;
        }
      }
    }
  }

  private static Problem fault(String where, String what) {
    return Problem.error(
        where,
        what + "; do not build from its figures.",
        "Move a corner or change a slope near it a little.");
  }
}
