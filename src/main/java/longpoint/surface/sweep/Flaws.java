package longpoint.surface.sweep;

import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/** What makes an outline unfit to be swept, found before the sweep. */
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
      return new SweepResult.Failed(0, SweepResult.Reason.COUNTS);
    }
    SweepResult.Failed bad = badSpeed(speeds);
    bad = bad != null ? bad : badRing(rings);
    if (bad != null || sides > PAIRWISE) {
      return bad;
    }
    int crossed = Crossings.first(rings, sides);
    return crossed < 0 ? null : new SweepResult.Failed(crossed, SweepResult.Reason.CROSSED);
  }

  private static SweepResult.Failed badSpeed(double[] speeds) {
    boolean moves = false;
    for (int i = 0; i < speeds.length; i++) {
      if (!(speeds[i] >= 0 && speeds[i] <= Double.MAX_VALUE)) {
        return new SweepResult.Failed(i, SweepResult.Reason.SLOPE);
      }
      moves |= speeds[i] > 0;
    }
    return moves ? null : new SweepResult.Failed(0, SweepResult.Reason.NO_EAVE);
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
          return new SweepResult.Failed(side + i, SweepResult.Reason.NO_LENGTH);
        }
      }
      if (ring.counterClockwise() != (r == 0)) {
        return new SweepResult.Failed(side, SweepResult.Reason.TURNED);
      }
      side += points.size();
    }
    return null;
  }
}
