package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * The sweeping front: closed loops of corners, each where one moving line gives way to the next,
 * with the swept ground's remainder on the left. The stretch of a side between two corners is named
 * by the corner at its start.
 *
 * <p>The front knows how to carry its corners along and what becomes of corners that meet in a
 * point; it does not know when they meet. That is found by {@link WholeFront}.
 *
 * <p>Conventions at meetings, where more than one roof could be drawn, are laid down in
 * docs/decisions/0003-what-the-sweep-decides.md.
 */
final class Front {
  /**
   * A length that changes slower than this share of the fastest side's speed does not change: what
   * bounds it runs parallel but for rounding.
   */
  static final double STILL = 1e-13;

  /** Node of a corner that only marks where a stretch parts. */
  static final int NOWHERE = -1;

  final Sides sides;
  final Traces traces;

  /** Corners ever made; those that ended stay, with {@link #alive} false. */
  int count;

  /** Corners still moving. */
  int living;

  int[] in;
  int[] out;
  int[] prev;
  int[] next;
  int[] node;
  boolean[] alive;

  /**
   * Negative at a re-entrant corner, 0 where two sides in line meet, positive at an outward one.
   */
  double[] bend;

  double[] px;
  double[] py;
  double[] vx;
  double[] vy;
  double[] since;

  /** Ground is left that no side moves over. */
  boolean stranded;

  /** The first side at which something could not be worked out, or -1. */
  int trouble = -1;

  Front(Sides sides, Traces traces) {
    this.sides = sides;
    this.traces = traces;
    grow(3 * sides.count + 8);
    for (int side = 0; side < sides.count; side++) {
      next[side] = sides.next[side];
      prev[sides.next[side]] = side;
    }
    for (int side = 0; side < sides.count; side++) {
      in[side] = prev[side];
      out[side] = side;
      node[side] = sides.corner[side];
      px[side] = sides.x[side];
      py[side] = sides.y[side];
      alive[side] = true;
      set(side);
    }
    count = sides.count;
    living = count;
  }

  private void grow(int room) {
    in = grown(in, room);
    out = grown(out, room);
    prev = grown(prev, room);
    next = grown(next, room);
    node = grown(node, room);
    alive = alive == null ? new boolean[room] : Arrays.copyOf(alive, room);
    bend = grown(bend, room);
    px = grown(px, room);
    py = grown(py, room);
    vx = grown(vx, room);
    vy = grown(vy, room);
    since = grown(since, room);
  }

  private static int[] grown(int[] old, int room) {
    return old == null ? new int[room] : Arrays.copyOf(old, room);
  }

  private static double[] grown(double[] old, int room) {
    return old == null ? new double[room] : Arrays.copyOf(old, room);
  }

  double x(int v, double t) {
    return px[v] + vx[v] * (t - since[v]);
  }

  double y(int v, double t) {
    return py[v] + vy[v] * (t - since[v]);
  }

  /** How fast a corner moves, within a factor of √2. */
  double pace(int v) {
    return Math.abs(vx[v]) + Math.abs(vy[v]);
  }

  /** How far a point lies ahead of a side at a time; negative behind it. */
  double ahead(int side, double x, double y, double t) {
    return sides.nx[side] * x + sides.ny[side] * y - sides.c[side] - sides.speed[side] * t;
  }

  /** How far along a side's direction a step leads. */
  double along(int side, double dx, double dy) {
    return sides.ny[side] * dx - sides.nx[side] * dy;
  }

  /** A corner born at a node between two stretches; it is not linked yet. */
  int birth(int sideIn, int sideOut, int atNode) {
    int v = room();
    in[v] = sideIn;
    out[v] = sideOut;
    node[v] = atNode;
    px[v] = traces.x[atNode];
    py[v] = traces.y[atNode];
    since[v] = traces.time[atNode];
    set(v);
    return v;
  }

  /** Corners that have ended since this was last set to nothing. */
  int ended;

  int[] endings = new int[16];

  /** Ends a corner's run at a node, which it keeps, and leaves its trace between the two faces. */
  void end(int v, int atNode) {
    alive[v] = false;
    living--;
    if (ended == endings.length) {
      endings = Arrays.copyOf(endings, 2 * ended);
    }
    endings[ended++] = v;
    traces.arc(node[v], atNode, in[v], out[v]);
    node[v] = atNode;
  }

  void link(int before, int after) {
    next[before] = after;
    prev[after] = before;
  }

  /**
   * Puts a corner into the stretch that starts at {@code u}, so that the stretch can part there.
   */
  int cut(int u) {
    int w = room();
    in[w] = out[u];
    out[w] = out[u];
    node[w] = NOWHERE;
    int after = next[u];
    link(u, w);
    link(w, after);
    return w;
  }

  private int room() {
    if (count == in.length) {
      grow(2 * count);
    }
    alive[count] = true;
    living++;
    return count++;
  }

  /** Two sides face the same way but run at different speeds, so that no corner can follow both. */
  boolean torn(int v) {
    return in[v] != out[v]
        && sides.sameWay(in[v], out[v])
        && sides.speed[in[v]] != sides.speed[out[v]];
  }

  /** A direction as a number from 0 to 4 once round; equal directions give bit-equal numbers. */
  static double turn(double dx, double dy) {
    if (dy >= 0) {
      return dx >= 0 ? dy / (dx + dy) : 1 - dx / (dy - dx);
    }
    return dx < 0 ? 2 + dy / (dx + dy) : 3 + dx / (dx - dy);
  }

  /** How far a direction lies outside the wedge of ground at a corner; 0 within. */
  double outsideWedge(int v, double dx, double dy) {
    double start = turn(sides.ny[out[v]], -sides.nx[out[v]]);
    double size = turn(-sides.ny[in[v]], sides.nx[in[v]]) - start;
    double at = turn(dx, dy) - start;
    size = size < 0 ? size + 4 : size;
    at = at < 0 ? at + 4 : at;
    return at <= size ? 0 : Math.min(at - size, 4 - at);
  }

  private void set(int v) {
    int a = in[v];
    int b = out[v];
    double ax = sides.nx[a];
    double ay = sides.ny[a];
    double bx = sides.nx[b];
    double by = sides.ny[b];
    double sa = sides.speed[a];
    double sb = sides.speed[b];
    bend[v] = ax * by - ay * bx;
    if (sides.sameWay(a, b)) {
      // In line: the border between the two faces runs square to both.
      bend[v] = 0;
      vx[v] = ax * sa;
      vy[v] = ay * sa;
      return;
    }
    if (ax == -bx && ay == -by) {
      // Folded: no corner can follow lines that run against each other.
      vx[v] = Double.NaN;
      vy[v] = Double.NaN;
      return;
    }
    // Along the sum and the difference of the normals: keeps its digits for nearly parallel sides,
    // where the usual quotient of determinants loses them.
    double sx = ax + bx;
    double sy = ay + by;
    double dx = ax - bx;
    double dy = ay - by;
    double sum = sx * sx + sy * sy;
    double difference = dx * dx + dy * dy;
    double alongSum = (sa + sb) / sum;
    double alongDifference = (sa - sb) / difference;
    double x = alongSum * sx + alongDifference * dx;
    double y = alongSum * sy + alongDifference * dy;
    // Once more for what is left: a fast corner must not drift off its lines.
    double ra = sa - (ax * x + ay * y);
    double rb = sb - (bx * x + by * y);
    vx[v] = x + (ra + rb) / sum * sx + (ra - rb) / difference * dx;
    vy[v] = y + (ra + rb) / sum * sy + (ra - rb) / difference * dy;
    settle(v, sx, sy, sum, 1);
    settle(v, dx, dy, difference, -1);
  }

  /**
   * Pulls a corner that stands a rounding error off its lines back onto them, in one of the two
   * directions in which it can be off.
   */
  private void settle(int v, double x, double y, double square, int sign) {
    if (square > SQUARE_ENOUGH) {
      double ra = -ahead(in[v], px[v], py[v], since[v]);
      double rb = -ahead(out[v], px[v], py[v], since[v]);
      double off = (ra + sign * rb) / square;
      px[v] += off * x;
      py[v] += off * y;
    }
  }

  /** Square of a sum of normals below which pulling could move a corner along its lines. */
  private static final double SQUARE_ENOUGH = 1e-4;
}
