package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * What touches on a front at one time: stretches shrunk to nothing and corners that have run into
 * stretches, grouped by point. Works on the corners and stretches it is given, so that one engine
 * can ask about the whole front and another about a small part of it.
 */
final class Contacts {
  /** Up to here comparing every corner with every stretch beats laying out a grid. */
  private static final int FEW = 1024;

  private final Front front;
  private final Meeting meeting;
  private final Sides sides;
  private final double reach;
  private final double still;
  private double now;
  private double[] x = new double[0];
  private double[] y = new double[0];
  private int[] leader = new int[0];
  private int[] link = new int[0];

  private int[] corners = new int[64];
  private int cornerCount;
  private int[] stretches = new int[64];
  private int stretchCount;

  Contacts(Front front, double reach) {
    this.front = front;
    this.meeting = new Meeting(front, reach);
    this.sides = front.sides;
    this.reach = reach;
    this.still = Front.STILL * sides.fastest();
  }

  /** Starts anew at a time. */
  void open(double time) {
    now = time;
    cornerCount = 0;
    stretchCount = 0;
    room();
  }

  /** A corner to be looked at; each only once. */
  void corner(int v) {
    if (cornerCount == corners.length) {
      corners = Arrays.copyOf(corners, 2 * cornerCount);
    }
    corners[cornerCount++] = v;
    place(v, front.x(v, now), front.y(v, now));
  }

  /** A stretch to be looked at, by its first corner; both its ends are among the corners. */
  void stretch(int u) {
    if (stretchCount == stretches.length) {
      stretches = Arrays.copyOf(stretches, 2 * stretchCount);
    }
    stretches[stretchCount++] = u;
  }

  private void place(int v, double px, double py) {
    room();
    x[v] = px;
    y[v] = py;
    leader[v] = v;
    link[v] = -1;
  }

  private void room() {
    int room = front.in.length;
    if (x.length < room) {
      x = Arrays.copyOf(x, room);
      y = Arrays.copyOf(y, room);
      leader = Arrays.copyOf(leader, room);
      link = Arrays.copyOf(link, room);
    }
  }

  /** Sorts out everything that touches: meetings, loops without ground, sides become one. */
  void resolve() {
    shrunk();
    touching();
    meetings();
    meeting.sweepUp(now);
  }

  private void shrunk() {
    for (int i = 0; i < stretchCount; i++) {
      int u = stretches[i];
      int w = front.next[u];
      if (u == w || Math.abs(x[u] - x[w]) > reach || Math.abs(y[u] - y[w]) > reach) {
        continue;
      }
      int side = front.out[u];
      double rate = front.along(side, front.vx[w] - front.vx[u], front.vy[w] - front.vy[u]);
      double length = front.along(side, x[w] - x[u], y[w] - y[u]);
      if (rate <= 0 && isNow(length, rate, Math.max(front.pace(u), front.pace(w)))) {
        join(u, w);
      }
    }
  }

  /**
   * Whether a gap that closes at a rate closes here: before what bounds it has moved on by more
   * than a point's width. Near the tip of a sharp wedge gaps are small long before they close.
   */
  private boolean isNow(double gap, double rate, double pace) {
    return rate < -still ? Math.abs(gap) * pace <= reach * -rate : Math.abs(gap) <= GRAIN * reach;
  }

  /** Share of a point's width that is rounding alone. */
  static final double GRAIN = 0.01;

  private void touching() {
    int before = cornerCount;
    Cells cells = (long) before * stretchCount > FEW ? cells() : null;
    for (int i = 0; i < before; i++) {
      int v = corners[i];
      if (front.bend[v] > 0) {
        continue;
      }
      if (cells == null) {
        for (int j = 0; j < stretchCount; j++) {
          touch(v, stretches[j], null);
        }
      } else {
        for (int e = cells.first(x[v], y[v]); e >= 0; e = cells.after(e)) {
          touch(v, cells.item(e), cells);
        }
      }
    }
  }

  private Cells cells() {
    double total = 0;
    for (int i = 0; i < stretchCount; i++) {
      int u = stretches[i];
      int w = front.next[u];
      total += Math.abs(x[w] - x[u]) + Math.abs(y[w] - y[u]);
    }
    Cells cells = new Cells(2 * total / stretchCount + 4 * reach, 4 * stretchCount);
    for (int i = 0; i < stretchCount; i++) {
      file(cells, stretches[i]);
    }
    return cells;
  }

  private void file(Cells cells, int u) {
    int w = front.next[u];
    cells.put(u, x[u], y[u], x[w], y[w], reach);
  }

  private void touch(int v, int u, Cells cells) {
    int side = front.out[u];
    if (side == front.in[v] || side == front.out[v]) {
      return;
    }
    double gap = front.ahead(side, x[v], y[v], now);
    if (Math.abs(gap) > reach) {
      return;
    }
    double rate = sides.nx[side] * front.vx[v] + sides.ny[side] * front.vy[v] - sides.speed[side];
    if (!isNow(gap, rate, Math.max(front.pace(v), sides.speed[side]))) {
      return;
    }
    int w = front.next[u];
    double fromStart = front.along(side, x[v] - x[u], y[v] - y[u]);
    double toEnd = front.along(side, x[w] - x[v], y[w] - y[v]);
    if (fromStart < -reach || toEnd < -reach) {
      return;
    }
    if (fromStart <= reach) {
      meet(v, u);
    } else if (toEnd <= reach) {
      meet(v, w);
    } else {
      cutAt(u, v, cells);
    }
  }

  /** Corners born together at one node have been sorted out already. */
  private void meet(int v, int w) {
    if (front.node[v] != front.node[w] || front.node[v] < 0) {
      join(v, w);
    }
  }

  private void cutAt(int u, int v, Cells cells) {
    int w = front.cut(u);
    place(w, x[v], y[v]);
    if (cornerCount == corners.length) {
      corners = Arrays.copyOf(corners, 2 * cornerCount);
    }
    corners[cornerCount++] = w;
    stretch(w);
    if (cells != null) {
      file(cells, w);
    }
    join(v, w);
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

  private void meetings() {
    // Chains the members of a group behind its leader, then sorts out group by group.
    for (int i = cornerCount - 1; i >= 0; i--) {
      int v = corners[i];
      int root = find(v);
      if (root != v) {
        link[v] = link[root];
        link[root] = v;
      }
    }
    int[] members = new int[8];
    for (int i = 0; i < cornerCount; i++) {
      int root = corners[i];
      if (leader[root] != root || link[root] < 0) {
        continue;
      }
      int size = 0;
      for (int v = root; v >= 0; v = link[v]) {
        if (size == members.length) {
          members = Arrays.copyOf(members, 2 * size);
        }
        members[size++] = v;
      }
      meeting.at(members, size, now);
    }
  }
}
