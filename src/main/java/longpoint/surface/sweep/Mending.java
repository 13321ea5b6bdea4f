package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * Keeps the tiles in step with the front. Tiles that ran out are taken away; tiles around corners
 * that ended go over to the corners born in their place; the holes are filled.
 */
final class Mending {
  private final Front front;
  private final Tiles tiles;
  private final HoleFiller filler;
  private double now;
  private int stamp;
  private int wallRound;
  private int ranOut;
  private final TileClock clock;

  private final IntList taken = new IntList();
  private final IntList changed = new IntList();
  private final IntList open = new IntList();
  private final IntList walls = new IntList();
  private final IntList touched = new IntList();

  private int[] takenAt = new int[0];
  private int[] changedAt = new int[0];
  private int[] wallSeen = new int[0];
  private int[] heirAt = new int[0];
  private int[] heirHead = new int[0];
  private int[] heirNext = new int[0];

  Mending(Front front, Tiles tiles, TileClock clock) {
    this.front = front;
    this.tiles = tiles;
    this.clock = clock;
    this.filler = new HoleFiller(front, tiles, clock, changed);
  }

  void open(double time) {
    now = time;
    stamp++;
    taken.clear();
    changed.clear();
    open.clear();
    walls.clear();
    touched.clear();
  }

  int stamp() {
    return stamp;
  }

  int takenCount() {
    return taken.size;
  }

  int taken(int i) {
    return taken.at[i];
  }

  int changedCount() {
    return changed.size;
  }

  int changed(int i) {
    return changed.at[i];
  }

  /** Takes a tile away. */
  void take(int tile) {
    takenAt = room(takenAt, tile);
    if (takenAt[tile] != stamp) {
      takenAt[tile] = stamp;
      taken.add(tile);
    }
  }

  /**
   * Takes the flat tiles that hang together with those that ran out. Where corners come together
   * from three sides a tile's time is only known to half the digits.
   */
  void flood() {
    ranOut = taken.size;
    for (int i = 0; i < taken.size; i++) {
      int t = taken.at[i];
      for (int e = 3 * t; e < 3 * t + 3; e++) {
        int beyond = tiles.across[e];
        if (beyond >= 0 && !isTaken(beyond / 3)) {
          int f = beyond - beyond % 3;
          if (clock.inLine(tiles.corner[f], tiles.corner[f + 1], tiles.corner[f + 2], now)) {
            take(beyond / 3);
          }
        }
      }
    }
  }

  private boolean isTaken(int tile) {
    return tile < takenAt.length && takenAt[tile] == stamp;
  }

  private static int[] room(int[] array, int index) {
    return index < array.length ? array : Arrays.copyOf(array, Math.max(2 * index, 64));
  }

  /** Gives tiles around corners that ended over to corners born in this step. */
  boolean rename(int born) {
    listHeirs(born);
    for (int i = 0; i < front.ended; i++) {
      int v = front.endings[i];
      if (v < born && !renameStar(v)) {
        return false;
      }
    }
    for (int i = 0; i < ranOut; i++) {
      passedEdge(taken.at[i], born);
    }
    for (int i = 0; i < changed.size; i++) {
      unfit(changed.at[i]);
    }
    for (int v = born; v < front.count; v++) {
      if (front.alive[v]) {
        cutWall(front.prev[v]);
      }
    }
    return true;
  }

  private void listHeirs(int born) {
    heirNext = room(heirNext, front.count);
    for (int v = front.count - 1; v >= born; v--) {
      if (front.alive[v]) {
        int node = front.node[v];
        heirAt = room(heirAt, node);
        heirHead = room(heirHead, node);
        heirNext[v] = heirAt[node] == stamp ? heirHead[node] : -1;
        heirAt[node] = stamp;
        heirHead[node] = v;
      }
    }
  }

  private boolean renameStar(int v) {
    int e = tiles.wallAt(v);
    int limit = 3 * tiles.count;
    while (e >= 0) {
      if (limit-- == 0 || tiles.corner[e] != v) {
        return false;
      }
      int beyond = tiles.across[Tiles.before(e)];
      if (!isTaken(e / 3)) {
        int heir = heir(v, e);
        if (heir < 0) {
          take(e / 3);
        } else {
          tiles.corner[e] = heir;
          change(e / 3);
        }
      }
      e = beyond;
    }
    return true;
  }

  private void change(int tile) {
    changedAt = room(changedAt, tile);
    if (changedAt[tile] != stamp) {
      changedAt[tile] = stamp;
      changed.add(tile);
    }
  }

  /** The corner born where v ended whose wedge of ground holds the tile at an edge leaving v. */
  private int heir(int v, int e) {
    int node = front.node[v];
    if (node >= heirAt.length || heirAt[node] != stamp) {
      return -1;
    }
    int only = heirHead[node];
    if (heirNext[only] < 0) {
      return only;
    }
    int p = tiles.to(e);
    int q = tiles.corner[Tiles.before(e)];
    double x = (front.x(p, now) + front.x(q, now)) / 2 - front.traces.x[node];
    double y = (front.y(p, now) + front.y(q, now)) / 2 - front.traces.y[node];
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int w = only; w >= 0; w = heirNext[w]) {
      double outside = front.outsideWedge(w, x, y);
      if (outside < least) {
        least = outside;
        best = w;
      }
    }
    return best;
  }

  /** A tile none of whose corners ended has run out on an inner edge: its neighbour goes too. */
  private void passedEdge(int tile, int born) {
    int longest = 3 * tile;
    double most = -1;
    for (int e = 3 * tile; e < 3 * tile + 3; e++) {
      int a = tiles.from(e);
      int b = tiles.to(e);
      if (!front.alive[a] || a >= born) {
        return;
      }
      double dx = front.x(b, now) - front.x(a, now);
      double dy = front.y(b, now) - front.y(a, now);
      if (dx * dx + dy * dy > most) {
        most = dx * dx + dy * dy;
        longest = e;
      }
    }
    if (tiles.across[longest] >= 0) {
      take(tiles.across[longest] / 3);
    }
  }

  /** A tile with one corner twice or with a wall that is none any more goes too. */
  private void unfit(int tile) {
    for (int e = 3 * tile; e < 3 * tile + 3; e++) {
      int a = tiles.from(e);
      int b = tiles.to(e);
      if (a == b || !front.alive[a] || (tiles.across[e] == Tiles.WALL && front.next[a] != b)) {
        take(tile);
      } else if (tiles.across[e] == Tiles.WALL) {
        tiles.wall(e);
      }
    }
  }

  /** A tile at a stretch that ends elsewhere now goes too. */
  private void cutWall(int u) {
    int e = tiles.wallAt(u);
    if (e >= 0
        && tiles.alive[e / 3]
        && tiles.corner[e] == u
        && tiles.across[e] == Tiles.WALL
        && tiles.to(e) != front.next[u]) {
      take(e / 3);
    }
  }

  /** Tiles the holes. A hole that cannot be tiled is made larger by the tiles around it. */
  boolean fill(int born) {
    int from = 0;
    wallRound++;
    for (int v = born; v < front.count; v++) {
      if (front.alive[v]) {
        bareWallLater(v);
        bareWallLater(front.prev[v]);
      }
    }
    for (int round = 0; round <= GROWTHS + ALL_ROUND; round++) {
      lift(from);
      from = taken.size;
      filler.fill(open, walls, now, round);
      if (filler.left.size == 0) {
        return filler.closed;
      }
      open.clear();
      walls.clear();
      wallRound++;
      for (int i = 0; i < filler.growing.size; i++) {
        int t = filler.growing.at[i] / 3;
        // The slot may be that of a tile taken before and laid anew.
        if (tiles.alive[t]) {
          tiles.alive[t] = false;
          taken.add(t);
        }
      }
      for (int i = 0; i < filler.left.size; i++) {
        int e = filler.left.at[i];
        if (e < 0) {
          addWall(~e);
        } else if (tiles.alive[e / 3]) {
          open.add(e);
        }
      }
    }
    return false;
  }

  /** How often a hole may grow at one place: a row of corners in line is taken in one by one. */
  static final int GROWTHS = 256;

  /** How often it may then grow on all sides before the step is given up. */
  static final int ALL_ROUND = 8;

  /** Takes tiles away from the given place in the list on, and notes what they leave open. */
  private void lift(int first) {
    for (int i = first; i < taken.size; i++) {
      tiles.alive[taken.at[i]] = false;
    }
    for (int i = first; i < taken.size; i++) {
      int t = taken.at[i];
      for (int e = 3 * t; e < 3 * t + 3; e++) {
        int beyond = tiles.across[e];
        if (beyond >= 0 && tiles.alive[beyond / 3]) {
          tiles.across[beyond] = Tiles.OPEN;
          open.add(beyond);
        }
        int v = tiles.corner[e];
        if (front.alive[v]) {
          bareWallLater(v);
          bareWallLater(front.prev[v]);
        }
      }
    }
    for (int i = 0; i < touched.size; i++) {
      bareWall(touched.at[i]);
    }
    touched.clear();
    for (int i = first; i < taken.size; i++) {
      tiles.remove(taken.at[i]);
    }
  }

  private void bareWallLater(int u) {
    touched.add(u);
  }

  /** Notes the stretch that starts at a corner if no tile lies at it. */
  private void bareWall(int u) {
    wallSeen = room(wallSeen, u);
    if (wallSeen[u] == wallRound) {
      return;
    }
    int e = tiles.wallAt(u);
    boolean tiled =
        e >= 0
            && tiles.alive[e / 3]
            && tiles.corner[e] == u
            && tiles.across[e] == Tiles.WALL
            && tiles.to(e) == front.next[u];
    if (!tiled) {
      addWall(u);
    }
  }

  private void addWall(int u) {
    wallSeen = room(wallSeen, u);
    wallSeen[u] = wallRound;
    walls.add(u);
  }
}
