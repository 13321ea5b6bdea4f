package longpoint.framing.valley;

import java.util.List;
import java.util.Objects;
import longpoint.framing.run.Axes;
import longpoint.geometry.Point;

/**
 * A valley set in its place.
 *
 * @param upper id of the wing's run
 * @param lower id of the run beneath
 * @param plane id of the plane it stands on
 * @param axes u is x, up the main slope; v is to the left of the wing's centre line, looking up
 * @param shift plan distance the set slid down because of the deck
 * @param firstGap last ordinary truss to the first of the set, uphill face to uphill face
 * @param last x of the uphill face of the last ordinary truss
 * @param apex where the set line's two sides meet
 * @param trusses from the eave up; where the supplier's list is given, those of the list
 * @param supplied every truss of the supplier's list with the gap that its chord makes; empty
 *     without a list
 * @param setLines where chord ends land, left then right
 * @param sheetLines where the wing's sheathing ends, left then right
 * @param site the figures it was worked out from
 */
public record ValleySet(
    String upper,
    String lower,
    String plane,
    Axes axes,
    double shift,
    double firstGap,
    double last,
    Apex apex,
    List<ValleyTruss> trusses,
    List<SuppliedSet.Placed> supplied,
    List<ValleyLine> setLines,
    List<ValleyLine> sheetLines,
    ValleySite site) {
  /**
   * @param x plan distance from the main wall face
   * @param v up the deck
   */
  public record Apex(double x, double v) {}

  public ValleySet {
    Objects.requireNonNull(axes);
    trusses = List.copyOf(trusses);
    supplied = List.copyOf(supplied);
    setLines = List.copyOf(setLines);
    sheetLines = List.copyOf(sheetLines);
  }

  /** Plan point of the foot of a set line or sheet line. */
  public Point foot(ValleyLine line) {
    return axes.at(line.x(), toLeft(line) * line.half());
  }

  /** Plan point of the top of a set line or sheet line. */
  public Point top(ValleyLine line) {
    return axes.at(line.apexX(), toLeft(line) * line.apexHalf());
  }

  private static double toLeft(ValleyLine line) {
    return line.side() == ValleyLine.Side.LEFT ? 1 : -1;
  }
}
