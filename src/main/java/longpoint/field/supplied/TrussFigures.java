package longpoint.field.supplied;

import java.util.List;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;

/**
 * The figures of a truss of the layout that a list may give as well.
 *
 * @param slope rise over run of the top chord at the first bearing
 * @param otherSlope at the last
 */
record TrussFigures(
    double span,
    double height,
    double slope,
    double otherSlope,
    double overhang,
    double otherOverhang,
    double heel,
    double otherHeel,
    int plies) {
  static TrussFigures of(TrussMark mark) {
    List<Point> top = mark.profile().top();
    return new TrussFigures(
        mark.span(),
        mark.height(),
        slope(top.get(0), top.get(1)),
        slope(top.get(top.size() - 1), top.get(top.size() - 2)),
        mark.tailLow(),
        mark.tailHigh(),
        mark.heelLow(),
        mark.heelHigh(),
        mark.plies());
  }

  private static double slope(Point foot, Point up) {
    double run = Math.abs(up.x() - foot.x());
    return run == 0 ? 0 : Math.abs(up.y() - foot.y()) / run;
  }

  /** The same truss end for end. */
  TrussFigures turned() {
    return new TrussFigures(
        span, height, otherSlope, slope, otherOverhang, overhang, otherHeel, heel, plies);
  }
}
