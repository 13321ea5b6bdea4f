package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * The border of holes between tiles and front: open edges of the tiles around them and bare
 * stretches of the front, each with the hole on its left, filed under the corner it leaves. The
 * edges are numbered in the order in which they were gathered.
 */
final class HoleBorder {
  private static final int DROPPED = -1;

  private final Front front;
  private final Tiles tiles;
  private double now;
  private int stamp;

  private final IntList from = new IntList();
  private final IntList to = new IntList();

  /** The tile edge on the other side, or {@link Tiles#WALL}. */
  private final IntList beyond = new IntList();

  private final IntList next = new IntList();
  private int[] headAt = new int[0];
  private int[] head = new int[0];

  HoleBorder(Front front, Tiles tiles) {
    this.front = front;
    this.tiles = tiles;
  }

  /**
   * Gathers a border anew.
   *
   * @param open edges of tiles with nothing across
   * @param walls corners at which bare stretches start
   */
  void gather(IntList open, IntList walls, double time) {
    now = time;
    stamp++;
    from.clear();
    to.clear();
    beyond.clear();
    next.clear();
    for (int i = 0; i < walls.size; i++) {
      int u = walls.at[i];
      add(u, front.next[u], Tiles.WALL);
    }
    for (int i = 0; i < open.size; i++) {
      int e = open.at[i];
      if (!tiles.alive[e / 3] || tiles.across[e] != Tiles.OPEN) {
        continue;
      }
      int a = tiles.from(e);
      int b = tiles.to(e);
      // An open edge on a bare stretch, or back to back with another, needs no tile.
      int twin = find(a, b, true);
      if (twin >= 0) {
        tiles.wall(e);
        drop(twin);
        continue;
      }
      twin = find(a, b, false);
      if (twin >= 0) {
        tiles.glue(e, beyond.at[twin]);
        drop(twin);
        continue;
      }
      add(b, a, e);
    }
  }

  int size() {
    return from.size;
  }

  /** Whether an edge is still there. */
  boolean has(int edge) {
    return to.at[edge] != DROPPED;
  }

  int from(int edge) {
    return from.at[edge];
  }

  int beyond(int edge) {
    return beyond.at[edge];
  }

  void drop(int edge) {
    to.at[edge] = DROPPED;
  }

  private void add(int a, int b, int across) {
    if (a >= head.length) {
      head = Arrays.copyOf(head, 2 * a + 64);
      headAt = Arrays.copyOf(headAt, head.length);
    }
    next.add(headAt[a] == stamp ? head[a] : -1);
    headAt[a] = stamp;
    head[a] = from.size;
    from.add(a);
    to.add(b);
    beyond.add(across);
  }

  /** An edge from a to b that is still there, of the wall kind or of the tile kind. */
  private int find(int a, int b, boolean wall) {
    for (int i = first(a); i >= 0; i = after(i)) {
      if (to.at[i] == b && (beyond.at[i] == Tiles.WALL) == wall) {
        return i;
      }
    }
    return -1;
  }

  /** The newest edge that leaves a corner, or -1. Dropped ones are taken off the list. */
  private int first(int a) {
    if (a >= head.length || headAt[a] != stamp) {
      return -1;
    }
    while (head[a] >= 0 && !has(head[a])) {
      head[a] = next.at[head[a]];
    }
    return head[a];
  }

  private int after(int edge) {
    int i = next.at[edge];
    while (i >= 0 && !has(i)) {
      i = next.at[i];
    }
    next.at[edge] = i;
    return i;
  }

  /** Of the edges that go on where one ends, the first clockwise from the way back; -1 if none. */
  int following(int edge) {
    int b = to.at[edge];
    int best = first(b);
    if (best < 0 || after(best) < 0) {
      return best;
    }
    double bx = front.x(b, now);
    double by = front.y(b, now);
    int a = from.at[edge];
    double back = Front.turn(front.x(a, now) - bx, front.y(a, now) - by);
    double least = Double.POSITIVE_INFINITY;
    for (int i = best; i >= 0; i = after(i)) {
      double angle = back - Front.turn(front.x(to.at[i], now) - bx, front.y(to.at[i], now) - by);
      angle = angle <= 0 ? angle + 4 : angle;
      if (angle < least) {
        least = angle;
        best = i;
      }
    }
    return best;
  }
}
