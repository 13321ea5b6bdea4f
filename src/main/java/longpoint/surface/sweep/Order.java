package longpoint.surface.sweep;

/**
 * Puts numbers in order without boxing them: houses are solved many times a second while dragging.
 */
final class Order {
  /** Up to here plain insertion beats merging. */
  private static final int SMALL = 24;

  private Order() {}

  /** The places of the keys in rising order; equal keys keep their order. */
  static int[] of(double[] keys, int count) {
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      order[i] = i;
    }
    if (count <= SMALL) {
      insert(keys, order, 0, count);
    } else {
      merge(keys, order, new int[count], 0, count);
    }
    return order;
  }

  /** The places of points, from left to right and, of equal x, from below. */
  static int[] of(double[] x, double[] y, int count) {
    int[] order = of(x, count);
    for (int i = 0; i < count; ) {
      int j = i + 1;
      while (j < count && x[order[j]] == x[order[i]]) {
        j++;
      }
      if (j - i > 1) {
        double[] keys = new double[j - i];
        int[] same = new int[j - i];
        for (int k = i; k < j; k++) {
          keys[k - i] = y[order[k]];
          same[k - i] = order[k];
        }
        int[] ranks = of(keys, j - i);
        for (int k = i; k < j; k++) {
          order[k] = same[ranks[k - i]];
        }
      }
      i = j;
    }
    return order;
  }

  private static void insert(double[] keys, int[] order, int from, int to) {
    for (int i = from + 1; i < to; i++) {
      int moved = order[i];
      int j = i;
      while (j > from && keys[order[j - 1]] > keys[moved]) {
        order[j] = order[j - 1];
        j--;
      }
      order[j] = moved;
    }
  }

  private static void merge(double[] keys, int[] order, int[] spare, int from, int to) {
    if (to - from <= SMALL) {
      insert(keys, order, from, to);
      return;
    }
    int middle = (from + to) >>> 1;
    merge(keys, order, spare, from, middle);
    merge(keys, order, spare, middle, to);
    System.arraycopy(order, from, spare, from, to - from);
    int a = from;
    int b = middle;
    for (int i = from; i < to; i++) {
      boolean left = b >= to || (a < middle && keys[spare[a]] <= keys[spare[b]]);
      order[i] = left ? spare[a++] : spare[b++];
    }
  }
}
