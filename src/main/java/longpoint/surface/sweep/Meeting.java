package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * What becomes of corners that meet in a point. Around the point, stretches leave and arrive; each
 * wedge of ground that is still unswept lies between one that leaves and the next that arrives,
 * counter-clockwise. Every such wedge gets a corner of its own. A wedge only ever shrinks into
 * itself, so corners made this way never run into each other at once, whatever their speeds.
 */
final class Meeting {
  private final Front front;
  private final Traces traces;
  private final double reach;
  private final double fastest;
  private int[] stamp;
  private int stamps;

  private int[] born = new int[16];
  private int births;

  private int[] ends = new int[8];
  private boolean[] leaves = new boolean[8];
  private double[] angle = new double[8];
  private int count;

  Meeting(Front front, double reach) {
    this.front = front;
    this.traces = front.traces;
    this.reach = reach;
    this.fastest = front.sides.fastest();
    this.stamp = new int[front.in.length];
  }

  /** Ends the corners that meet and makes those that go on. */
  void at(int[] members, int size, double now) {
    int node = nodeFor(members, size, now);
    collect(members, size);
    for (int i = 0; i < size; i++) {
      front.end(members[i], node);
    }
    sort();
    for (int i = 0; i < count; i++) {
      int after = i + 1 == count ? 0 : i + 1;
      if (leaves[i] == leaves[after]) {
        front.trouble = front.out[ends[i]];
        return;
      }
      if (leaves[i]) {
        int v = front.birth(front.in[ends[after]], front.out[ends[i]], node);
        front.link(front.prev[ends[after]], v);
        front.link(v, front.next[ends[i]]);
        note(v);
      }
    }
  }

  /** A node made here at this very time, or a new one where the best known corner stands. */
  private int nodeFor(int[] members, int size, double now) {
    int best = -1;
    for (int i = 0; i < size; i++) {
      int v = members[i];
      if (front.node[v] == Front.NOWHERE) {
        continue;
      }
      if (bornNow(v, now)) {
        return front.node[v];
      }
      if (best < 0 || Math.abs(front.bend[v]) > Math.abs(front.bend[best])) {
        best = v;
      }
    }
    return traces.node(front.x(best, now), front.y(best, now), now);
  }

  private boolean bornNow(int v, double now) {
    return front.since[v] == now
        || ((now - front.since[v]) * fastest <= reach
            && Math.abs(front.x(v, now) - front.px[v]) <= reach
            && Math.abs(front.y(v, now) - front.py[v]) <= reach);
  }

  /** The stretches around the point that have length. */
  private void collect(int[] members, int size) {
    if (stamp.length < front.in.length) {
      stamp = Arrays.copyOf(stamp, front.in.length);
    }
    stamps++;
    for (int i = 0; i < size; i++) {
      stamp[members[i]] = stamps;
    }
    count = 0;
    for (int i = 0; i < size; i++) {
      int v = members[i];
      if (stamp[front.prev[v]] != stamps) {
        spoke(v, front.in[v], false);
      }
      if (stamp[front.next[v]] != stamps) {
        spoke(v, front.out[v], true);
      }
    }
  }

  private void spoke(int v, int side, boolean leaving) {
    if (count == ends.length) {
      ends = Arrays.copyOf(ends, 2 * count);
      leaves = Arrays.copyOf(leaves, 2 * count);
      angle = Arrays.copyOf(angle, 2 * count);
    }
    double dx = leaving ? front.sides.ny[side] : -front.sides.ny[side];
    double dy = leaving ? -front.sides.nx[side] : front.sides.nx[side];
    ends[count] = v;
    leaves[count] = leaving;
    angle[count] = Front.turn(dx, dy);
    count++;
  }

  /** By angle; at the same angle what leaves comes first: the wedge between has no ground. */
  private void sort() {
    for (int i = 1; i < count; i++) {
      int v = ends[i];
      boolean leaving = leaves[i];
      double a = angle[i];
      int j = i;
      while (j > 0 && (angle[j - 1] > a || (angle[j - 1] == a && leaving && !leaves[j - 1]))) {
        ends[j] = ends[j - 1];
        leaves[j] = leaves[j - 1];
        angle[j] = angle[j - 1];
        j--;
      }
      ends[j] = v;
      leaves[j] = leaving;
      angle[j] = a;
    }
  }

  private void note(int v) {
    if (births == born.length) {
      born = Arrays.copyOf(born, 2 * births);
    }
    born[births++] = v;
  }

  /** Removes loops that hold no ground and merges sides that came to face the same way. */
  void sweepUp(double now) {
    for (int i = 0; i < births; i++) {
      int v = born[i];
      if (!front.alive[v]) {
        continue;
      }
      int u = front.next[v];
      if (u == v) {
        front.end(v, front.node[v]);
      } else if (front.next[u] == v) {
        close(v, u, now);
      }
    }
    for (int i = 0; i < births; i++) {
      int v = born[i];
      if (!front.alive[v]) {
        continue;
      }
      if (front.torn(v)) {
        merge(v, now);
      } else if (Double.isNaN(front.vx[v])) {
        front.trouble = front.out[v];
      }
    }
    births = 0;
  }

  /** Two stretches lie on each other along their whole length: a level line between two nodes. */
  private void close(int v, int u, double now) {
    int p = nodeOf(v, now);
    int q = nodeOf(u, now);
    traces.arc(p, q, front.out[u], front.out[v]);
    front.end(v, p);
    front.end(u, q);
  }

  private int nodeOf(int v, double now) {
    return bornNow(v, now) ? front.node[v] : traces.node(front.x(v, now), front.y(v, now), now);
  }

  /**
   * Of the sides that came to face the same way in one line, one goes on. It takes over a neighbour
   * at a time, outward from where it is, so that nobody wins ground only to lose it at once.
   */
  private void merge(int v, double now) {
    int ahead = v;
    int best = front.out[v];
    for (int u = front.next[v]; u != v && inLine(u); u = front.next[u]) {
      if (rules(front.out[u], best)) {
        best = front.out[u];
        ahead = u;
      }
    }
    int behind = -1;
    int u = v;
    do {
      if (rules(front.in[u], best)) {
        best = front.in[u];
        behind = u;
      }
      u = front.prev[u];
    } while (u != v && inLine(u));
    if (behind >= 0) {
      while (!front.torn(behind)) {
        behind = front.next[behind];
      }
      takeAhead(behind, now);
    } else {
      while (!front.torn(ahead)) {
        ahead = front.prev[ahead];
      }
      takeBehind(ahead, now);
    }
    note(v);
  }

  private boolean inLine(int v) {
    return front.sides.sameWay(front.in[v], front.out[v]);
  }

  private boolean rules(int side, int over) {
    return side != over && front.sides.ruler(side, over) == side;
  }

  /** The side that arrives at v takes over the stretch that leaves it. */
  private void takeAhead(int v, double now) {
    int far = front.next[v];
    int there = nodeOf(far, now);
    traces.arc(front.node[v], there, front.in[v], front.out[v]);
    int w = front.birth(front.in[v], front.out[far], there);
    front.link(front.prev[v], w);
    front.link(w, front.next[far]);
    replace(v, far, w, now);
  }

  /** The side that leaves v takes over the stretch that arrives at it. */
  private void takeBehind(int v, double now) {
    int far = front.prev[v];
    int there = nodeOf(far, now);
    traces.arc(there, front.node[v], front.out[v], front.in[v]);
    int w = front.birth(front.in[far], front.out[v], there);
    front.link(front.prev[far], w);
    front.link(w, front.next[v]);
    replace(v, far, w, now);
  }

  private void replace(int v, int far, int w, double now) {
    front.end(v, front.node[v]);
    front.end(far, front.node[w]);
    note(w);
    if (front.next[w] == w) {
      front.end(w, front.node[w]);
    } else if (front.next[front.next[w]] == w) {
      close(w, front.next[w], now);
    }
  }
}
