package longpoint.framing.stick;

import longpoint.framing.rafter.Birdsmouth;
import longpoint.plan.UsualHeel;

/**
 * The birdsmouth of a rafter, on its middle line. What is cut away weakens it: a quarter of the
 * depth at most (IRC R502.8.1 and R802.7.1 as quoted in the trade press) and a bearing of 1 1/2 in
 * at least (IRC R802.6) are the usual limits, and the local code rules.
 *
 * @param seat level cut on the plate, ≥ 0
 * @param plumb cut against the outside of the wall, ≥ 0
 * @param height plumb from the plate to the top edge above the outside of the wall, &gt; 0
 * @param notch depth square to the rafter, ≥ 0
 * @param share of the depth of the stock
 * @param bearing how much of the seat lies on the plate
 */
public record Seat(
    double seat, double plumb, double height, double notch, double share, double bearing) {
  /**
   * @param height plumb, from the plate to the top edge
   * @param slope of the rafter, &gt; 0
   * @param depth of the stock
   * @param plate width of the plate along the rafter
   */
  static Seat leaving(double height, double slope, double depth, double plate) {
    Birdsmouth cut = Birdsmouth.leaving(height, slope, depth);
    return new Seat(
        cut.seat(), cut.plumbCut(), height, cut.notch(), cut.share(), Math.min(cut.seat(), plate));
  }

  /** Whether more is cut away than is usual. */
  public boolean isDeep() {
    return share > UsualHeel.NOTCH_SHARE + 1e-9;
  }
}
