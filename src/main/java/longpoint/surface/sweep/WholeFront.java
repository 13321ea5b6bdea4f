package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * Sweeps a front by looking at all of it before every event: the next time at which a stretch
 * shrinks to nothing or a corner runs into a stretch, then everything that meets at that time. No
 * queue and nothing kept from one event to the next, so nothing can go stale and any number of
 * meetings at once is an ordinary case. Time grows with the third power of the number of sides:
 * made for houses, and the measure for faster ways.
 *
 * <ol>
 *   <li>{@link #nextEvent}: the earliest event on the front as it stands
 *   <li>{@link #gather}: corners that meet at that time, stretches cut where a corner touches
 *   <li>{@link Meeting}: every point of meeting sorted out into new corners
 *   <li>{@link Meeting#sweepUp}: loops without ground removed, lines that became one merged
 * </ol>
 */
final class WholeFront {
  private final Front front;
  private final Sides sides;
  private final Meeting meeting;
  private final double reach;
  private final double still;
  private int[] leader;
  private double[] x = new double[0];
  private double[] y = new double[0];

  /**
   * @param reach corners nearer to each other than this are one point
   */
  WholeFront(Front front, double reach) {
    this.front = front;
    this.sides = front.sides;
    this.meeting = new Meeting(front, reach);
    this.reach = reach;
    this.still = STILL * sides.fastest();
    this.leader = new int[0];
  }

  /** Sweeps until nothing is left. Returns the number of a side near the trouble, or -1. */
  int run() {
    double now = 0;
    int rounds = 20 * sides.count + 100;
    while (front.living > 0) {
      double t = nextEvent(now);
      if (t == Double.POSITIVE_INFINITY || rounds-- == 0 || front.trouble >= 0) {
        return front.trouble >= 0 ? front.trouble : anySide();
      }
      now = t;
      carry(now);
      gather(now);
      resolve(now);
      meeting.sweepUp(now);
    }
    return front.trouble;
  }

  private int anySide() {
    for (int v = 0; v < front.count; v++) {
      if (front.alive[v]) {
        return front.out[v];
      }
    }
    return 0;
  }

  private double nextEvent(double now) {
    carry(now);
    double best = Double.POSITIVE_INFINITY;
    for (int v = 0; v < front.count; v++) {
      if (front.alive[v]) {
        best = Math.min(best, shrinking(v, now));
      }
    }
    for (int v = 0; v < front.count; v++) {
      if (front.alive[v] && front.bend[v] <= 0) {
        best = running(v, now, best);
      }
    }
    return best;
  }

  /** When the stretch that starts at u has shrunk to nothing. */
  private double shrinking(int u, double now) {
    int w = front.next[u];
    int side = front.out[u];
    double rate = front.along(side, front.vx[w] - front.vx[u], front.vy[w] - front.vy[u]);
    double length = front.along(side, x[w] - x[u], y[w] - y[u]);
    return rate < -still ? now + Math.max(0, length) / -rate : Double.POSITIVE_INFINITY;
  }

  /** When a corner runs into another stretch, if that is before {@code best}. */
  private double running(int v, double now, double best) {
    for (int u = 0; u < front.count; u++) {
      if (!front.alive[u] || front.out[u] == front.in[v] || front.out[u] == front.out[v]) {
        continue;
      }
      int side = front.out[u];
      double rate = sides.nx[side] * front.vx[v] + sides.ny[side] * front.vy[v] - sides.speed[side];
      double gap = front.ahead(side, x[v], y[v], now);
      // What touches now was sorted out at this time already.
      if (!(rate < -still) || !(gap > reach)) {
        continue;
      }
      double t = now + gap / -rate;
      if (t < best && within(u, front.x(v, t), front.y(v, t), t)) {
        best = t;
      }
    }
    return best;
  }

  private boolean within(int u, double atX, double atY, double t) {
    int w = front.next[u];
    int side = front.out[u];
    return front.along(side, atX - front.x(u, t), atY - front.y(u, t)) >= -reach
        && front.along(side, front.x(w, t) - atX, front.y(w, t) - atY) >= -reach;
  }

  private void carry(double now) {
    if (x.length < front.in.length) {
      x = Arrays.copyOf(x, front.in.length);
      y = Arrays.copyOf(y, front.in.length);
    }
    for (int v = 0; v < front.count; v++) {
      if (front.alive[v]) {
        x[v] = front.x(v, now);
        y[v] = front.y(v, now);
      }
    }
  }

  /** Finds what meets at this time and groups it by point. */
  private void gather(double now) {
    leader = Arrays.copyOf(leader, Math.max(leader.length, front.in.length));
    for (int v = 0; v < front.count; v++) {
      leader[v] = v;
    }
    for (int u = 0; u < front.count; u++) {
      if (front.alive[u] && near(u, front.next[u]) && u != front.next[u]) {
        join(u, front.next[u]);
      }
    }
    int before = front.count;
    for (int v = 0; v < before; v++) {
      if (front.alive[v] && front.bend[v] <= 0) {
        touch(v, now);
      }
    }
  }

  private void touch(int v, double now) {
    for (int u = 0; u < front.count; u++) {
      if (!front.alive[u] || front.out[u] == front.in[v] || front.out[u] == front.out[v]) {
        continue;
      }
      int side = front.out[u];
      double gap = front.ahead(side, x[v], y[v], now);
      if (Math.abs(gap) > reach) {
        continue;
      }
      int w = front.next[u];
      double fromStart = front.along(side, x[v] - x[u], y[v] - y[u]);
      double toEnd = front.along(side, x[w] - x[v], y[w] - y[v]);
      if (fromStart < -reach || toEnd < -reach) {
        continue;
      }
      if (fromStart <= reach) {
        meet(v, u);
      } else if (toEnd <= reach) {
        meet(v, w);
      } else {
        cutAt(u, v, now);
      }
    }
  }

  /** Corners born together at one node have been sorted out already. */
  private void meet(int v, int w) {
    if (front.node[v] != front.node[w] || front.node[v] < 0) {
      join(v, w);
    }
  }

  private void cutAt(int u, int v, double now) {
    int w = front.cut(u);
    if (x.length < front.in.length) {
      x = Arrays.copyOf(x, front.in.length);
      y = Arrays.copyOf(y, front.in.length);
      leader = Arrays.copyOf(leader, front.in.length);
    }
    x[w] = x[v];
    y[w] = y[v];
    leader[w] = w;
    join(v, w);
  }

  private boolean near(int u, int w) {
    return Math.abs(x[u] - x[w]) <= reach
        && Math.abs(y[u] - y[w]) <= reach
        && front.along(front.out[u], front.vx[w] - front.vx[u], front.vy[w] - front.vy[u]) <= 0;
  }

  private void join(int a, int b) {
    int ra = find(a);
    int rb = find(b);
    leader[Math.max(ra, rb)] = Math.min(ra, rb);
  }

  private int find(int v) {
    int root = v;
    while (leader[root] != root) {
      leader[root] = leader[leader[root]];
      root = leader[root];
    }
    return root;
  }

  private void resolve(double now) {
    int before = front.count;
    int[] members = new int[before];
    for (int v = 0; v < before; v++) {
      if (!front.alive[v] || leader[v] != v) {
        continue;
      }
      int size = 0;
      for (int u = v; u < before; u++) {
        if (front.alive[u] && find(u) == v) {
          members[size++] = u;
        }
      }
      if (size > 1) {
        meeting.at(members, size, now);
      }
    }
  }

  /**
   * A stretch that shrinks slower than this share of the fastest side's speed does not shrink: the
   * corners at its ends run parallel but for rounding.
   */
  private static final double STILL = 1e-13;
}
