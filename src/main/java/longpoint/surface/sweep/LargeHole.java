package longpoint.surface.sweep;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * Finds the ears of a hole with many corners, one after another, in the very order {@link
 * HoleFiller} would find them by looking at every corner each time: the roundest first, of equal
 * ones the first in the ring.
 *
 * <ul>
 *   <li>Candidates wait in a queue, the roundest at its head.
 *   <li>A candidate with a corner in its way waits at that corner until it is cut off.
 *   <li>What may be in the way is looked up in a grid, laid out anew when half the corners are
 *       gone.
 * </ul>
 */
final class LargeHole {
  private final Front front;
  private final TileClock clock;
  private final double now;
  private final int[] ring;
  private final double[] x;
  private final double[] y;
  private final int[] before;
  private final int[] after;
  private final boolean[] gone;

  /** How often a place's shape has changed: older candidates for it are void. */
  private final int[] changes;

  private final PriorityQueue<Candidate> queue = new PriorityQueue<>();
  private final Candidate[] waiting;
  private int size;

  private double lowX;
  private double lowY;
  private double cell;
  private int columns;
  private int rows;
  private int laidFor;
  private int[] start;
  private int[] filed;

  /** A corner that may be an ear; the roundest comes first, then the first in the ring. */
  private static final class Candidate implements Comparable<Candidate> {
    final int place;
    final double roundness;
    final int changes;
    Candidate nextWaiting;

    Candidate(int place, double roundness, int changes) {
      this.place = place;
      this.roundness = roundness;
      this.changes = changes;
    }

    @Override
    public int compareTo(Candidate other) {
      int order = Double.compare(other.roundness, roundness);
      return order != 0 ? order : Integer.compare(place, other.place);
    }
  }

  LargeHole(Front front, TileClock clock, double now, int[] corners, int size) {
    this.front = front;
    this.clock = clock;
    this.now = now;
    this.size = size;
    ring = Arrays.copyOf(corners, size);
    x = new double[size];
    y = new double[size];
    before = new int[size];
    after = new int[size];
    gone = new boolean[size];
    changes = new int[size];
    waiting = new Candidate[size];
    for (int i = 0; i < size; i++) {
      x[i] = front.x(ring[i], now);
      y[i] = front.y(ring[i], now);
      before[i] = i == 0 ? size - 1 : i - 1;
      after[i] = i + 1 == size ? 0 : i + 1;
    }
    layGrid();
  }

  int size() {
    return size;
  }

  int before(int place) {
    return before[place];
  }

  int after(int place) {
    return after[place];
  }

  boolean isGone(int place) {
    return gone[place];
  }

  /** Tells how round the corner at a place is, at first and when a neighbour was cut off. */
  void offer(int place, double roundness) {
    changes[place]++;
    if (roundness > 0) {
      queue.add(new Candidate(place, roundness, changes[place]));
    }
  }

  /** The place of the next ear, or -1 when there is none. */
  int ear() {
    while (true) {
      Candidate best = queue.poll();
      if (best == null) {
        return -1;
      }
      if (gone[best.place] || changes[best.place] != best.changes) {
        continue;
      }
      int inTheWay = inTheWay(best.place);
      if (inTheWay < 0) {
        return best.place;
      }
      best.nextWaiting = waiting[inTheWay];
      waiting[inTheWay] = best;
    }
  }

  /** Cuts an ear off; its neighbours have to be offered anew. */
  void cut(int place) {
    gone[place] = true;
    size--;
    after[before[place]] = after[place];
    before[after[place]] = before[place];
    for (Candidate c = waiting[place]; c != null; ) {
      Candidate next = c.nextWaiting;
      c.nextWaiting = null;
      queue.add(c);
      c = next;
    }
    waiting[place] = null;
    if (2 * size < laidFor) {
      layGrid();
    }
  }

  private int inTheWay(int place) {
    int a = before[place];
    int b = after[place];
    int p = ring[a];
    int v = ring[place];
    int n = ring[b];
    double fromX = Math.min(x[place], Math.min(x[a], x[b])) - clock.grain;
    double toX = Math.max(x[place], Math.max(x[a], x[b])) + clock.grain;
    double fromY = Math.min(y[place], Math.min(y[a], y[b])) - clock.grain;
    double toY = Math.max(y[place], Math.max(y[a], y[b])) + clock.grain;
    int lastRow = row(toY);
    int lastColumn = column(toX);
    for (int r = row(fromY); r <= lastRow; r++) {
      int end = start[r * columns + lastColumn + 1];
      for (int i = start[r * columns + column(fromX)]; i < end; i++) {
        int at = filed[i];
        int q = ring[at];
        if (!gone[at]
            && x[at] >= fromX
            && x[at] <= toX
            && y[at] >= fromY
            && y[at] <= toY
            && q != p
            && q != v
            && q != n
            && clock.turn(p, v, q, now) >= 0
            && clock.turn(v, n, q, now) >= 0
            && clock.turn(n, p, q, now) >= 0) {
          return at;
        }
      }
    }
    return -1;
  }

  private void layGrid() {
    laidFor = size;
    lowX = Double.POSITIVE_INFINITY;
    lowY = Double.POSITIVE_INFINITY;
    double highX = Double.NEGATIVE_INFINITY;
    double highY = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < ring.length; i++) {
      if (!gone[i]) {
        lowX = Math.min(lowX, x[i]);
        highX = Math.max(highX, x[i]);
        lowY = Math.min(lowY, y[i]);
        highY = Math.max(highY, y[i]);
      }
    }
    double width = highX - lowX;
    double height = highY - lowY;
    // About as many squares as corners, also where these lie nearly in one line.
    cell = Math.max(Math.sqrt(width * height / size), Math.max(width, height) / size);
    cell = cell > 0 ? cell : 1;
    columns = (int) (width / cell) + 1;
    rows = (int) (height / cell) + 1;
    start = new int[columns * rows + 1];
    for (int i = 0; i < ring.length; i++) {
      if (!gone[i]) {
        start[square(i) + 1]++;
      }
    }
    for (int s = 0; s < columns * rows; s++) {
      start[s + 1] += start[s];
    }
    filed = new int[size];
    int[] at = Arrays.copyOf(start, columns * rows);
    for (int i = 0; i < ring.length; i++) {
      if (!gone[i]) {
        filed[at[square(i)]++] = i;
      }
    }
  }

  private int square(int place) {
    return row(y[place]) * columns + column(x[place]);
  }

  private int column(double atX) {
    return Math.max(0, Math.min(columns - 1, (int) ((atX - lowX) / cell)));
  }

  private int row(double atY) {
    return Math.max(0, Math.min(rows - 1, (int) ((atY - lowY) / cell)));
  }
}
