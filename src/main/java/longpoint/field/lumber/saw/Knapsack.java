package longpoint.field.lumber.saw;

import java.util.ArrayList;
import java.util.List;

/**
 * The most valuable way to cut up each board, no piece oftener than it is wanted: dynamic
 * programming over whole steps, with counts split into powers of two (Martello and Toth, 1990, from
 * memory). Values are whole, so the answer is exact.
 */
final class Knapsack {
  private record Bundle(int type, int count, int size, long value) {}

  private final Demand demand;
  private final List<Bundle> bundles = new ArrayList<>();
  private final long[] best;
  private final boolean[][] taken;

  /**
   * @param values of one piece of each type; types worth nothing are left out
   */
  Knapsack(Demand demand, long[] values) {
    this.demand = demand;
    for (int i = 0; i < demand.types(); i++) {
      int most = Math.min(demand.counts()[i], demand.longestRoom() / demand.taken(i));
      for (int size = 1; most > 0 && values[i] > 0; size *= 2) {
        int count = Math.min(size, most);
        bundles.add(new Bundle(i, count, count * demand.taken(i), count * values[i]));
        most -= count;
      }
    }
    best = new long[demand.longestRoom() + 1];
    taken = new boolean[bundles.size()][best.length];
    fill();
  }

  private void fill() {
    for (int b = 0; b < bundles.size(); b++) {
      Bundle bundle = bundles.get(b);
      for (int room = best.length - 1; room >= bundle.size(); room--) {
        long with = best[room - bundle.size()] + bundle.value();
        if (with > best[room]) {
          best[room] = with;
          taken[b][room] = true;
        }
      }
    }
  }

  /** How much work it was. */
  long steps() {
    return (long) bundles.size() * best.length;
  }

  /** Greatest value that comes out of a board. */
  long value(int board) {
    return best[demand.room(board)];
  }

  /** A way of cutting with that value. */
  Pattern pattern(int board) {
    int[] counts = new int[demand.types()];
    int room = demand.room(board);
    for (int b = bundles.size() - 1; b >= 0; b--) {
      if (taken[b][room]) {
        counts[bundles.get(b).type()] += bundles.get(b).count();
        room -= bundles.get(b).size();
      }
    }
    return new Pattern(board, counts);
  }
}
