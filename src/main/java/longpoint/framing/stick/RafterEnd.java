package longpoint.framing.stick;

import java.util.Objects;
import java.util.Optional;

/**
 * How one end of a rafter is cut. Left and right are those of somebody who looks up the rafter from
 * its foot; the two halves of an end differ where it comes into a corner.
 *
 * @param on what it comes to
 * @param by mark of the rafter or truss it comes to, if there is one
 * @param off plan length that comes off the line on its middle; negative for a ridge that runs on
 * @param faceCut angle of the cut on the rafter's side, degrees from its edge: a plumb cut but for
 *     a foot that stands on a deck
 * @param bevel how far the saw is tilted for a foot on a deck, degrees from square; for plumb cuts
 *     it is what each half lacks from 90 in plan
 * @param left half of the end
 * @param right half of the end
 * @param point how far left of the middle both halves meet; 0 for the middle
 * @param order in which it is set among the rafters of a peak, from 1; 0 where there is no order
 */
public record RafterEnd(
    Bearing on,
    Optional<String> by,
    double off,
    double faceCut,
    double bevel,
    Cheek left,
    Cheek right,
    double point,
    int order) {
  /**
   * Half of an end.
   *
   * @param planAngle between the cut and the rafter's length in plan, degrees; 90 is square
   * @param sideCut the same on the top edge
   * @param reach plan length by which its outer edge stands beyond the middle of the end; negative
   *     where it stays behind
   */
  public record Cheek(double planAngle, double sideCut, double reach) {}

  public RafterEnd {
    Objects.requireNonNull(on);
    Objects.requireNonNull(by);
  }

  /** The sharper of both side cuts. */
  public double sideCut() {
    return Math.min(left.sideCut(), right.sideCut());
  }

  /** Whether it takes two cuts that are no single plane. */
  public boolean isDouble() {
    return Math.abs(left.reach() + right.reach()) > 1e-9;
  }

  /** How far both halves' common point stands beyond the middle of the end, in plan. */
  public double pointReach(double half) {
    double share = point / half;
    return share > 0 ? -share * right.reach() : share * left.reach();
  }

  /** The same end of a rafter of the other hand, or seen by somebody who looks the other way. */
  public RafterEnd turned() {
    return new RafterEnd(on, by, off, faceCut, bevel, right, left, -point, order);
  }

  RafterEnd by(Optional<String> mark) {
    return new RafterEnd(on, mark, off, faceCut, bevel, left, right, point, order);
  }
}
