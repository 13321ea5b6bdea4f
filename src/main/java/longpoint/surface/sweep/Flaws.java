package longpoint.surface.sweep;

import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/** What makes an outline unfit to be swept, found before the sweep and said with a cure. */
final class Flaws {
  /** Up to so many sides every pair is looked at. */
  private static final int PAIRWISE = 256;

  private Flaws() {}

  /** The first flaw, or null. */
  static SweepResult.Failed first(List<Ring> rings, double[] speeds) {
    int sides = 0;
    for (Ring ring : rings) {
      sides += ring.size();
    }
    if (sides == 0 || speeds.length != sides) {
      return new SweepResult.Failed(
          0, "there are " + sides + " walls but " + speeds.length + " slopes: give each its own");
    }
    SweepResult.Failed bad = badSpeed(speeds);
    bad = bad != null ? bad : badRing(rings);
    if (bad != null || sides > PAIRWISE) {
      return bad;
    }
    int crossed = Crossings.first(rings, sides);
    return crossed < 0
        ? null
        : new SweepResult.Failed(
            crossed, "this wall touches or crosses another: move one of its corners");
  }

  private static SweepResult.Failed badSpeed(double[] speeds) {
    boolean moves = false;
    for (int i = 0; i < speeds.length; i++) {
      if (!(speeds[i] >= 0 && speeds[i] <= Double.MAX_VALUE)) {
        return new SweepResult.Failed(i, "the slope over this wall is no number above zero");
      }
      moves |= speeds[i] > 0;
    }
    return moves
        ? null
        : new SweepResult.Failed(0, "every wall is a gable: give at least one wall an eave");
  }

  private static SweepResult.Failed badRing(List<Ring> rings) {
    int side = 0;
    for (int r = 0; r < rings.size(); r++) {
      Ring ring = rings.get(r);
      List<Point> points = ring.points();
      for (int i = 0; i < points.size(); i++) {
        Point a = points.get(i);
        Point b = points.get(i + 1 == points.size() ? 0 : i + 1);
        if (a.x() == b.x() && a.y() == b.y()) {
          return new SweepResult.Failed(side + i, "this wall has no length: take it out");
        }
      }
      if (ring.counterClockwise() != (r == 0)) {
        return new SweepResult.Failed(
            side, "the corners run the wrong way round: turn this outline about");
      }
      side += points.size();
    }
    return null;
  }
}
