package longpoint.field.lumber.saw;

import java.util.Arrays;

/** How one board is cut up: which board, and how many of each piece come out of it. */
final class Pattern {
  final int board;
  final int[] counts;

  Pattern(int board, int[] counts) {
    this.board = board;
    this.counts = counts;
  }

  /** How often it can be cut before one of its pieces is no longer wanted. */
  int times(int[] wanted) {
    int times = Integer.MAX_VALUE;
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        times = Math.min(times, wanted[i] / counts[i]);
      }
    }
    return times;
  }

  /** The same on the shortest board that holds it. */
  Pattern onShortest(Demand demand) {
    int taken = taken(demand);
    int shortest = 0;
    while (taken > demand.room(shortest)) {
      shortest++;
    }
    return shortest == board ? this : new Pattern(shortest, counts);
  }

  /** Length of board that becomes no piece. */
  int left(Demand demand) {
    return demand.room(board) - taken(demand);
  }

  private int taken(Demand demand) {
    int taken = 0;
    for (int i = 0; i < counts.length; i++) {
      taken += counts[i] * demand.taken(i);
    }
    return taken;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Pattern p && p.board == board && Arrays.equals(p.counts, counts);
  }

  @Override
  public int hashCode() {
    return 31 * board + Arrays.hashCode(counts);
  }
}
