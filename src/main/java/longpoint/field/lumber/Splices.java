package longpoint.field.lumber;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Where a row of boards is jointed that is longer than the longest board: over what carries it, in
 * as few pieces as that allows, and then with the shortest piece as long as it can be.
 */
final class Splices {
  /** Ten bays of two feet are a board of twenty, but for the rounding of arithmetic. */
  private static final double ROUNDING = 1e-9;

  private Splices() {}

  /**
   * Lengths of the pieces from the start of the row.
   *
   * @param row length of the whole row
   * @param carriers places along it where a joint is carried, in any order
   * @param longest piece that can be had, &gt; 0
   * @return one piece if it can be had whole; joints fall anywhere where no carrier is in reach
   */
  static List<Double> of(double row, List<Double> carriers, double longest) {
    List<Double> places = new ArrayList<>(List.of(0.0, row));
    carriers.stream().filter(c -> c > 0 && c < row).forEach(places::add);
    Collections.sort(places);
    double reach = longest * (1 + ROUNDING);
    fillGaps(places, reach);
    int n = places.size();
    int[] pieces = new int[n];
    double[] shortest = new double[n];
    int[] before = new int[n];
    shortest[0] = Double.POSITIVE_INFINITY;
    for (int to = 1; to < n; to++) {
      pieces[to] = Integer.MAX_VALUE;
      for (int from = to - 1; from >= 0 && places.get(to) - places.get(from) <= reach; from--) {
        double least = Math.min(shortest[from], places.get(to) - places.get(from));
        boolean fewer = pieces[from] + 1 < pieces[to];
        if (fewer || (pieces[from] + 1 == pieces[to] && least > shortest[to])) {
          pieces[to] = pieces[from] + 1;
          shortest[to] = least;
          before[to] = from;
        }
      }
    }
    List<Double> lengths = new ArrayList<>();
    for (int at = n - 1; at > 0; at = before[at]) {
      lengths.add(0, places.get(at) - places.get(before[at]));
    }
    return lengths;
  }

  /**
   * Joints of last resort, evenly spread, where carriers stand farther apart than a board is long.
   */
  private static void fillGaps(List<Double> places, double longest) {
    List<Double> carried = List.copyOf(places);
    for (int i = 0; i + 1 < carried.size(); i++) {
      double from = carried.get(i);
      double gap = carried.get(i + 1) - from;
      int pieces = (int) Math.ceil(gap / longest);
      for (int k = 1; k < pieces; k++) {
        places.add(from + k * gap / pieces);
      }
    }
    Collections.sort(places);
  }
}
