package longpoint.deck;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The rhythm of end joints over a whole plane: a cycle of chains, one for each course in turn, each
 * as near whole sheets as the supports allow. The plain rhythm has two chains half a sheet apart.
 *
 * @param cycle joints of course 1, 2 … in order; the courses after start over with the first
 */
record JointChain(List<double[]> cycle) {
  /** No wish at all. */
  static final JointChain NONE = new JointChain(List.of(new double[0]));

  /** Least and greatest u of a plane. */
  record Ends(double left, double right) {}

  JointChain {
    cycle = List.copyOf(cycle);
  }

  double[] of(int course) {
    return cycle.get((course - 1) % cycle.size());
  }

  /**
   * The chains through chosen supports, each clear of the one before where supports allow.
   *
   * @param places of supports, in order, not empty
   * @param ends of the plane: chains stop where one sheet reaches them
   * @param anchors a joint of each chain, at least one
   */
  static JointChain through(double[] places, Ends ends, double[] anchors, Panel panel) {
    List<double[]> cycle = new ArrayList<>();
    double[] before = new double[0];
    for (double anchor : anchors) {
      before = walk(places, ends, anchor, panel, before);
      cycle.add(before);
    }
    return new JointChain(cycle);
  }

  /**
   * The support nearest half a sheet from {@code first} that keeps its distance from every joint of
   * the odd courses; ties go to the right. Without such a support, half a sheet on.
   */
  static double half(double[] places, Ends ends, double first, Panel panel) {
    double[] odd = walk(places, ends, first, panel, new double[0]);
    double best = Double.NaN;
    for (double place : places) {
      if (clear(place, odd, panel)
          && (Double.isNaN(best)
              || offHalf(place, first, panel) <= offHalf(best, first, panel) + panel.rounding())) {
        best = place;
      }
    }
    return Double.isNaN(best) ? first + panel.length() / 2 : best;
  }

  private static double offHalf(double place, double first, Panel panel) {
    return Math.abs(Math.abs(place - first) - panel.length() / 2);
  }

  /** Whether a joint keeps its distance from every joint of a neighbouring course. */
  static boolean clear(double u, double[] joints, Panel panel) {
    for (double joint : joints) {
      if (Math.abs(joint - u) < panel.apart() - panel.rounding()) {
        return false;
      }
    }
    return true;
  }

  private static double[] walk(
      double[] places, Ends ends, double start, Panel panel, double[] keepClearOf) {
    List<Double> chain = new ArrayList<>(List.of(start));
    for (int way = -1; way <= 1; way += 2) {
      double end = way < 0 ? ends.left : ends.right;
      double u = start;
      while (!Double.isNaN(u) && (end - u) * way > panel.length() + panel.rounding()) {
        u = next(places, u, way, end, panel, keepClearOf);
        if (!Double.isNaN(u)) {
          chain.add(u);
        }
      }
    }
    Collections.sort(chain);
    return chain.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * The farthest support one sheet can reach in a direction that leaves no piece too short at the
   * plane's end; failing that the farthest it can reach; or the module where there is none. Not a
   * number where no support is left.
   */
  private static double next(
      double[] places, double u, int way, double end, Panel panel, double[] keepClearOf) {
    double best = Double.NaN;
    double good = Double.NaN;
    boolean more = false;
    for (double place : places) {
      double step = (place - u) * way;
      if (step > panel.rounding()) {
        more = true;
        if (step <= panel.length() + panel.rounding() && clear(place, keepClearOf, panel)) {
          best = farther(place, best, way);
          if ((end - place) * way >= panel.shortest() - panel.rounding()) {
            good = farther(place, good, way);
          }
        }
      }
    }
    if (!Double.isNaN(good)) {
      return good;
    }
    return more && Double.isNaN(best) ? u + way * panel.length() : best;
  }

  private static double farther(double place, double than, int way) {
    return (place - than) * way <= 0 ? than : place;
  }
}
