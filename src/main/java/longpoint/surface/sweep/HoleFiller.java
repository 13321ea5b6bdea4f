package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * Tiles the holes between tiles and front. A hole's border is made of the open edges of the tiles
 * around it and of bare stretches of the front; it is walked with the hole on the left and cut into
 * ears, the roundest first. Corners that lie in line now are judged by where they are just after.
 */
final class HoleFiller {
  private final Front front;
  private final Tiles tiles;
  private final TileClock clock;
  private final IntList changed;
  private double now;

  private final HoleBorder border;
  private int[] ring = new int[16];
  private int[] ref = new int[16];
  private double[] roundness = new double[16];

  HoleFiller(Front front, Tiles tiles, TileClock clock, IntList changed) {
    this.front = front;
    this.tiles = tiles;
    this.clock = clock;
    this.changed = changed;
    this.border = new HoleBorder(front, tiles);
  }

  /** Border of the holes that could not be tiled: tile edges beyond, or ~corner for stretches. */
  final IntList left = new IntList();

  /** Edges of that border across which the hole has to grow. */
  final IntList growing = new IntList();

  /** False when a border did not close. */
  boolean closed;

  /** Whether a hole whose corners all lie in line may be tiled. */
  private boolean evenFlat;

  /** Whether holes grow on all sides, where growing at one place has led nowhere. */
  private boolean allRound;

  void fill(IntList open, IntList walls, double time, int round) {
    now = time;
    evenFlat = round == Mending.GROWTHS + Mending.ALL_ROUND;
    allRound = round >= Mending.GROWTHS;
    left.clear();
    growing.clear();
    closed = true;
    border.gather(open, walls, now);
    for (int i = 0; i < border.size() && closed; i++) {
      if (border.has(i)) {
        walk(i);
      }
    }
  }

  private void walk(int start) {
    int size = 0;
    int i = start;
    do {
      if (size == ring.length) {
        ring = Arrays.copyOf(ring, 2 * size);
        ref = Arrays.copyOf(ref, 2 * size);
        roundness = Arrays.copyOf(roundness, 2 * size);
      }
      ring[size] = border.from(i);
      ref[size++] = border.beyond(i);
      int after = border.following(i);
      if (i != start) {
        border.drop(i);
      }
      i = after;
    } while (i >= 0 && i != start);
    border.drop(start);
    if (i < 0) {
      closed = false;
    } else if (!ears(size)) {
      for (int k = 0; k < leftSize; k++) {
        left.add(ref[k] == Tiles.WALL ? ~ring[k] : ref[k]);
      }
    }
  }

  /** What is left of the ring when no ear is found. */
  private int leftSize;

  private boolean ears(int corners) {
    int size = corners;
    if (size == 2) {
      return close(ref[0], ref[1]);
    }
    int grown = growing.size;
    for (int i = 0; i < size; i++) {
      roundness[i] = roundness(i, size);
      if (!evenFlat && size > 3 && roundness[i] <= 0) {
        growAtSpike(i, size);
      }
    }
    if (growing.size > grown) {
      leftSize = size;
      if (allRound) {
        growEverywhere();
      }
      return false;
    }
    if (size > FEW) {
      size = clipMany(size);
    }
    while (size > 3) {
      int best = -1;
      for (int i = 0; i < size; i++) {
        if (roundness[i] > 0 && (best < 0 || roundness[i] > roundness[best]) && empty(i, size)) {
          best = i;
        }
      }
      if (best < 0) {
        leftSize = size;
        growEverywhere();
        return false;
      }
      clip(best, size);
      size--;
      int at = best == size ? 0 : best;
      int before = at == 0 ? size - 1 : at - 1;
      roundness[at] = roundness(at, size);
      roundness[before] = roundness(before, size);
    }
    if (!evenFlat && !(clock.turn(ring[0], ring[1], ring[2], now) > 0)) {
      leftSize = 3;
      growAcrossLongest();
      return false;
    }
    int t = tile(ring[0], ring[1], ring[2], ref[0], ref[1]);
    join(3 * t + 2, ref[2]);
    return true;
  }

  /** Up to here looking at every corner for the next ear beats queueing them. */
  private static final int FEW = 64;

  /** Cuts ears off a large hole until it is small or has none. Returns the corners left. */
  private int clipMany(int corners) {
    LargeHole hole = new LargeHole(front, clock, now, ring, corners);
    for (int i = 0; i < corners; i++) {
      hole.offer(i, roundness[i]);
    }
    int ear = hole.ear();
    while (ear >= 0 && hole.size() > FEW) {
      int p = hole.before(ear);
      int n = hole.after(ear);
      int t = tile(ring[p], ring[ear], ring[n], ref[p], ref[ear]);
      ref[p] = 3 * t + 2;
      hole.cut(ear);
      roundness[p] = roundness(ring[hole.before(p)], ring[p], ring[n]);
      roundness[n] = roundness(ring[p], ring[n], ring[hole.after(n)]);
      hole.offer(p, roundness[p]);
      hole.offer(n, roundness[n]);
      ear = hole.ear();
    }
    int size = 0;
    for (int i = 0; i < corners; i++) {
      if (!hole.isGone(i)) {
        ring[size] = ring[i];
        ref[size] = ref[i];
        roundness[size++] = roundness[i];
      }
    }
    return size;
  }

  private void clip(int ear, int size) {
    int p = ear == 0 ? size - 1 : ear - 1;
    int n = ear + 1 == size ? 0 : ear + 1;
    int t = tile(ring[p], ring[ear], ring[n], ref[p], ref[ear]);
    ref[p] = 3 * t + 2;
    System.arraycopy(ring, ear + 1, ring, ear, size - ear - 1);
    System.arraycopy(ref, ear + 1, ref, ear, size - ear - 1);
    System.arraycopy(roundness, ear + 1, roundness, ear, size - ear - 1);
  }

  private boolean close(int a, int b) {
    if (a < 0 && b < 0) {
      return false;
    }
    if (a >= 0 && b >= 0) {
      tiles.glue(a, b);
    } else {
      tiles.wall(Math.max(a, b));
    }
    return true;
  }

  private int tile(int a, int b, int c, int beyondAb, int beyondBc) {
    int t = tiles.add(a, b, c);
    changed.add(t);
    join(3 * t, beyondAb);
    join(3 * t + 1, beyondBc);
    return t;
  }

  private void join(int edge, int across) {
    if (across == Tiles.WALL) {
      tiles.wall(edge);
    } else {
      tiles.glue(edge, across);
    }
  }

  private double roundness(int i, int size) {
    return roundness(ring[i == 0 ? size - 1 : i - 1], ring[i], ring[i + 1 == size ? 0 : i + 1]);
  }

  private double roundness(int p, int v, int n) {
    double turn = clock.turn(p, v, n, now);
    double longest = Math.max(span(p, v), Math.max(span(v, n), span(n, p)));
    return turn / Math.max(longest, Double.MIN_NORMAL);
  }

  /** Where the border turns back on itself and will cross itself just after. */
  private void growAtSpike(int i, int size) {
    int before = i == 0 ? size - 1 : i - 1;
    int p = ring[before];
    int v = ring[i];
    int n = ring[i + 1 == size ? 0 : i + 1];
    double x = front.x(v, now);
    double y = front.y(v, now);
    double ax = front.x(p, now) - x;
    double ay = front.y(p, now) - y;
    double bx = front.x(n, now) - x;
    double by = front.y(n, now) - y;
    if (ax * bx + ay * by > 0 && clock.inLine(p, v, n, now)) {
      boolean longerBefore = span(p, v) > span(v, n);
      int longer = longerBefore ? ref[before] : ref[i];
      int shorter = longerBefore ? ref[i] : ref[before];
      growAcross(longer >= 0 ? longer : shorter);
    }
  }

  private void growAcrossLongest() {
    double ab = span(ring[0], ring[1]);
    double bc = span(ring[1], ring[2]);
    double ca = span(ring[2], ring[0]);
    int longest = ab >= bc && ab >= ca ? 0 : bc >= ca ? 1 : 2;
    if (ref[longest] >= 0 && !allRound) {
      growAcross(ref[longest]);
    } else {
      growEverywhere();
    }
  }

  private void growEverywhere() {
    for (int k = 0; k < leftSize; k++) {
      growAcross(ref[k]);
    }
  }

  private void growAcross(int edge) {
    if (edge >= 0) {
      growing.add(edge);
    }
  }

  private double span(int a, int b) {
    double dx = front.x(b, now) - front.x(a, now);
    double dy = front.y(b, now) - front.y(a, now);
    return dx * dx + dy * dy;
  }

  private boolean empty(int ear, int size) {
    int p = ring[ear == 0 ? size - 1 : ear - 1];
    int v = ring[ear];
    int n = ring[ear + 1 == size ? 0 : ear + 1];
    for (int i = 0; i < size; i++) {
      int q = ring[i];
      if (q != p
          && q != v
          && q != n
          && clock.turn(p, v, q, now) >= 0
          && clock.turn(v, n, q, now) >= 0
          && clock.turn(n, p, q, now) >= 0) {
        return false;
      }
    }
    return true;
  }
}
