package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * Lays the first tiles: cuts the ground into triangles, joins them edge to edge, swaps edges until
 * the tiles are as round as the outline lets them be (the fewer long thin ones, the fewer swaps
 * while the front moves), and slips a tile under every step.
 */
final class Paving {
  private final Shape shape;
  private final Tiles tiles;
  private final double[] x;
  private final double[] y;

  private Paving(Shape shape, Tiles tiles) {
    this.shape = shape;
    this.tiles = tiles;
    x = shape.x();
    y = shape.y();
  }

  /** The tiles, or null when the outline makes no sense. */
  static Tiles of(Sides sides) {
    Tiles tiles = new Tiles(2 * sides.count + 8);
    Paving paving = new Paving(Shape.of(sides), tiles);
    if (!paving.lay()) {
      return null;
    }
    paving.slipSteps(sides);
    return tiles;
  }

  /**
   * Lays all tiles anew before a front as it stands at a time.
   *
   * @return false if the front's loops cross each other at that time; the tiles are of no use then
   */
  static boolean again(Tiles tiles, Front front, double time) {
    int[] corners = Shape.living(front);
    tiles.clear();
    if (!new Paving(Shape.of(front, corners, time), tiles).lay()) {
      return false;
    }
    tiles.rename(corners);
    return true;
  }

  private boolean lay() {
    if (!Cutting.into(tiles, shape) || !join()) {
      return false;
    }
    round();
    return true;
  }

  private int following(int side) {
    return shape.next()[side];
  }

  /** Joins the tiles edge to edge. False if they overlap, miss a piece or do not fit together. */
  private boolean join() {
    for (int t = 0; t < tiles.count; t++) {
      if (!(cross(tiles.corner[3 * t], tiles.corner[3 * t + 1], tiles.corner[3 * t + 2]) > 0)) {
        return false;
      }
    }
    int edges = 3 * tiles.count;
    int room = Integer.highestOneBit(Math.max(8, edges)) << 1;
    int[] drawer = new int[room];
    Arrays.fill(drawer, -1);
    int open = 0;
    for (int e = 0; e < edges; e++) {
      int a = tiles.from(e);
      int b = tiles.to(e);
      if (following(a) == b) {
        tiles.wall(e);
        continue;
      }
      int slot = slot(Math.min(a, b), Math.max(a, b), room);
      while (true) {
        int f = drawer[slot];
        if (f == -1) {
          drawer[slot] = e;
          open++;
          break;
        }
        if (tiles.from(f) == b && tiles.to(f) == a) {
          if (tiles.across[f] != Tiles.OPEN) {
            return false;
          }
          tiles.glue(e, f);
          open--;
          break;
        }
        slot = (slot + 1) & (room - 1);
      }
    }
    return open == 0;
  }

  private static int slot(int a, int b, int room) {
    long mixed = (a * 0x9E3779B97F4A7C15L) ^ (b * 0xC2B2AE3D27D4EB4FL);
    return (int) (mixed >>> 32) & (room - 1);
  }

  /**
   * Lawson's swaps towards the Delaunay triangulation; rounding may leave an edge unswapped. Edges
   * are taken up in turn, the longest waiting first: going on at once where an edge was swapped
   * takes hundreds of times as many swaps along a long row of steps.
   */
  private void round() {
    int edges = 3 * tiles.count;
    int[] queue = new int[edges + 1];
    boolean[] waiting = new boolean[edges];
    int head = 0;
    int tail = 0;
    for (int e = 0; e < edges; e++) {
      if (tiles.across[e] > e) {
        queue[tail++] = e;
        waiting[e] = true;
      }
    }
    long budget = 40L * edges;
    while (head != tail && budget-- > 0) {
      int e = queue[head];
      head = head + 1 == queue.length ? 0 : head + 1;
      waiting[e] = false;
      int f = tiles.across[e];
      if (f < 0 || !better(e, f)) {
        continue;
      }
      swap(e, f);
      // The four edges around the pair; the new one lies at after(e) and after(f).
      int[] around = {e, Tiles.before(e), f, Tiles.before(f)};
      for (int g : around) {
        int h = tiles.across[g];
        if (h >= 0 && !waiting[g] && !waiting[h]) {
          waiting[g] = true;
          queue[tail] = g;
          tail = tail + 1 == queue.length ? 0 : tail + 1;
        }
      }
    }
  }

  /** Tiles (a, b, c) and (b, a, d) become (a, d, c) and (b, c, d). */
  private void swap(int e, int f) {
    int c = tiles.corner[Tiles.before(e)];
    int d = tiles.corner[Tiles.before(f)];
    int beyondE = tiles.across[Tiles.after(e)];
    int beyondF = tiles.across[Tiles.after(f)];
    tiles.corner[Tiles.after(e)] = d;
    tiles.corner[Tiles.after(f)] = c;
    put(e, beyondF);
    put(f, beyondE);
    tiles.glue(Tiles.after(e), Tiles.after(f));
  }

  private void put(int edge, int beyond) {
    if (beyond >= 0) {
      tiles.glue(edge, beyond);
    } else {
      tiles.wall(edge);
    }
  }

  private boolean better(int e, int f) {
    int a = tiles.from(e);
    int b = tiles.to(e);
    int c = tiles.corner[Tiles.before(e)];
    int d = tiles.corner[Tiles.before(f)];
    if (!(cross(a, d, c) > 0 && cross(d, b, c) > 0)) {
      return false;
    }
    // Swap where the angles at c and d add up to more than a half turn.
    double sinC = cross(c, a, b);
    double cosC = dot(c, a, b);
    double sinD = cross(d, b, a);
    double cosD = dot(d, b, a);
    return sinC * cosD + cosC * sinD < -1e-12 * (Math.abs(sinC * cosD) + Math.abs(cosC * sinD));
  }

  private double cross(int o, int p, int q) {
    return (x[p] - x[o]) * (y[q] - y[o]) - (y[p] - y[o]) * (x[q] - x[o]);
  }

  private double dot(int o, int p, int q) {
    return (x[p] - x[o]) * (x[q] - x[o]) + (y[p] - y[o]) * (y[q] - y[o]);
  }

  /**
   * Until here a corner with a step was one. The corner after the step keeps the given corner's
   * number, the one before it has the step's number.
   */
  private void slipSteps(Sides sides) {
    for (int step = sides.given; step < sides.count; step++) {
      int w = sides.corner[step];
      // All tiles around the corner go to the first of the two...
      int[] star = star(w);
      int first = star[0];
      int last = Tiles.before(star[star.length - 1]);
      int end = tiles.to(first);
      int start = tiles.from(last);
      boolean facesOn = facesAlong(sides, step, w, end);
      if (facesOn) {
        for (int e : star) {
          tiles.corner[e] = step;
        }
        int t = tiles.add(step, w, end);
        tiles.wall(3 * t);
        tiles.wall(3 * t + 1);
        tiles.glue(3 * t + 2, first);
        tiles.wall(last);
      } else {
        // ... or to the second, whichever side the step opens to.
        int t = tiles.add(start, step, w);
        tiles.wall(3 * t);
        tiles.wall(3 * t + 1);
        tiles.glue(3 * t + 2, last);
      }
    }
  }

  private boolean facesAlong(Sides sides, int step, int w, int end) {
    return sides.nx[step] * (x[end] - x[w]) + sides.ny[step] * (y[end] - y[w]) > 0;
  }

  /** The edges that leave a corner, counter-clockwise from its wall. */
  private int[] star(int v) {
    int[] star = new int[8];
    int size = 0;
    int e = tiles.wallAt(v);
    while (true) {
      if (size == star.length) {
        star = Arrays.copyOf(star, 2 * size);
      }
      star[size++] = e;
      int beyond = tiles.across[Tiles.before(e)];
      if (beyond < 0) {
        return Arrays.copyOf(star, size);
      }
      e = beyond;
    }
  }
}
