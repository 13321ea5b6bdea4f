package longpoint.framing.truss;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;

/** The lowest of several sloping lines: the top of a truss under several roof planes. */
public final class Envelope {
  /**
   * Corners closer than this share of the width are one. Rounding of plan coordinates is a million
   * times smaller, and a millionth of a forty-foot span is 0.0005 in.
   */
  private static final double SAME = 1e-6;

  private Envelope() {}

  /**
   * A straight line z = at0 + slope · v.
   *
   * @param at0 height at v = 0
   */
  public record Line(double at0, double slope) {
    public double at(double v) {
      return at0 + slope * v;
    }
  }

  /**
   * The lowest line everywhere from one place to another, as corners (v, z).
   *
   * @param from first v
   * @param to last v, &gt; from
   */
  public static List<Point> lowest(List<Line> lines, double from, double to) {
    List<Point> corners = new ArrayList<>();
    double same = (to - from) * SAME;
    double v = from;
    Line on = lowestAt(lines, from, to);
    corners.add(new Point(v, on.at(v)));
    while (true) {
      double next = to;
      Line crossing = on;
      for (Line other : lines) {
        // Only a line that falls away more can come to lie lower further on.
        if (other.slope() < on.slope()) {
          double meet = (other.at0() - on.at0()) / (on.slope() - other.slope());
          boolean sooner = meet < next - same;
          boolean steeper = meet < next + same && other.slope() < crossing.slope();
          if (sooner || (steeper && crossing != on)) {
            next = Math.max(meet, v);
            crossing = other;
          }
        }
      }
      if (crossing == on || next >= to - same) {
        corners.add(new Point(to, on.at(to)));
        return List.copyOf(corners);
      }
      if (next > v + same) {
        corners.add(new Point(next, on.at(next)));
      }
      v = next;
      on = crossing;
    }
  }

  private static Line lowestAt(List<Line> lines, double v, double to) {
    Line best = lines.get(0);
    for (Line line : lines) {
      boolean lower = line.at(v) < best.at(v);
      boolean tieButLowerLater = line.at(v) == best.at(v) && line.at(to) < best.at(to);
      if (lower || tieButLowerLater) {
        best = line;
      }
    }
    return best;
  }
}
