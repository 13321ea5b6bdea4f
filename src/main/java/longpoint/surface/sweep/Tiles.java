package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * Triangles that cover the unswept ground edge to edge. Corner {@code i} of tile {@code t} stands
 * at {@code 3t + i}, and so does what lies across the edge from corner i to the one after it: the
 * number 3s + j of the same edge in tile s, or {@link #WALL} where the edge is a stretch of the
 * front.
 */
final class Tiles {
  static final int WALL = -1;

  /** Across an edge whose neighbour has been taken away and not yet replaced. */
  static final int OPEN = -2;

  int count;
  int[] corner;
  int[] across;
  boolean[] alive;

  /** The edge (3t + i) that is the stretch starting at a corner. */
  int[] wallOf;

  private int[] free = new int[16];
  private int freed;

  Tiles(int room) {
    corner = new int[3 * room];
    across = new int[3 * room];
    alive = new boolean[room];
    wallOf = new int[room];
    Arrays.fill(wallOf, -1);
  }

  static int after(int edge) {
    return edge % 3 == 2 ? edge - 2 : edge + 1;
  }

  static int before(int edge) {
    return edge % 3 == 0 ? edge + 2 : edge - 1;
  }

  int from(int edge) {
    return corner[edge];
  }

  int to(int edge) {
    return corner[after(edge)];
  }

  int add(int a, int b, int c) {
    int t = freed > 0 ? free[--freed] : count++;
    if (3 * t == corner.length) {
      corner = Arrays.copyOf(corner, 6 * t);
      across = Arrays.copyOf(across, 6 * t);
      alive = Arrays.copyOf(alive, 2 * t);
    }
    corner[3 * t] = a;
    corner[3 * t + 1] = b;
    corner[3 * t + 2] = c;
    across[3 * t] = OPEN;
    across[3 * t + 1] = OPEN;
    across[3 * t + 2] = OPEN;
    alive[t] = true;
    return t;
  }

  /** Takes all tiles away. */
  void clear() {
    count = 0;
    freed = 0;
    Arrays.fill(wallOf, -1);
  }

  /** Gives every corner another number. */
  void rename(int[] numbers) {
    Arrays.fill(wallOf, -1);
    for (int e = 0; e < 3 * count; e++) {
      corner[e] = numbers[corner[e]];
    }
    for (int e = 0; e < 3 * count; e++) {
      if (across[e] == WALL) {
        wall(e);
      }
    }
  }

  void remove(int t) {
    alive[t] = false;
    if (freed == free.length) {
      free = Arrays.copyOf(free, 2 * freed);
    }
    free[freed++] = t;
  }

  void glue(int e, int f) {
    across[e] = f;
    across[f] = e;
  }

  void wall(int edge) {
    across[edge] = WALL;
    int u = corner[edge];
    if (u >= wallOf.length) {
      int old = wallOf.length;
      wallOf = Arrays.copyOf(wallOf, Math.max(u + 1, 2 * old));
      Arrays.fill(wallOf, old, wallOf.length, -1);
    }
    wallOf[u] = edge;
  }

  int wallAt(int u) {
    return u < wallOf.length ? wallOf[u] : -1;
  }
}
