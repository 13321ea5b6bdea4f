package longpoint.surface.sweep;

import longpoint.stop.CalledOff;

/**
 * Looks a result over before anybody sees it. Together with the way {@link Traces} are kept (every
 * arc borders exactly two faces) simple counter-clockwise faces tile the ground: going round all
 * faces goes round the outline, so every point inside is covered exactly once.
 *
 * <ol>
 *   <li>{@link #heights}: each node is reached at its time by every side whose face it bounds
 *   <li>{@link #plain}: each face is a ring that does not touch or cross itself, its own side first
 *   <li>{@link #liesIn}: rings within a face lie well inside it and apart from each other
 *   <li>{@link #tiles}: the areas add up to the ground
 * </ol>
 */
final class Proof {
  /** Nodes lie on the moving lines of their faces within this share of the diagonal. */
  static final double ON_LINE = 1e-8;

  /** Areas add up within this share of the ground. */
  static final double AREA = 1e-9;

  private static final int[][] NONE = {};

  private final Sides sides;
  private final Traces traces;
  private final double slack;

  private Proof(Sides sides, Traces traces) {
    this.sides = sides;
    this.traces = traces;
    this.slack = ON_LINE * sides.diagonal;
  }

  /** The first side whose face is not right, or -1 if all are. */
  static int firstWrong(Sides sides, Traces traces, Faces faces) {
    if (faces.broken >= 0) {
      return faces.broken;
    }
    Proof proof = new Proof(sides, traces);
    double sum = 0;
    for (int side = 0; side < sides.given; side++) {
      CalledOff.check();
      int[] ring = faces.ring[side];
      if (ring == null) {
        continue;
      }
      double area = proof.area(ring);
      if (!(area > 0) || !proof.heights(side, ring) || !proof.plain(side, ring)) {
        return side;
      }
      sum += area;
      for (int[] hole : faces.holes[side] == null ? NONE : faces.holes[side]) {
        double open = proof.area(hole);
        if (!(open < 0) || !proof.heights(side, hole) || !proof.liesIn(hole, faces, side)) {
          return side;
        }
        sum += open;
      }
    }
    return proof.tiles(sum) ? -1 : 0;
  }

  private boolean heights(int side, int[] ring) {
    for (int node : ring) {
      double off =
          sides.nx[side] * traces.x[node]
              + sides.ny[side] * traces.y[node]
              - sides.c[side]
              - sides.speed[side] * traces.time[node];
      if (!(Math.abs(off) <= slack)) {
        return false;
      }
    }
    return true;
  }

  private boolean tiles(double sum) {
    double ground = 0;
    for (int i = 0; i < sides.given; i++) {
      int j = sides.next[i] < sides.given ? sides.next[i] : sides.corner[sides.next[i]];
      ground += sides.x[i] * sides.y[j] - sides.x[j] * sides.y[i];
    }
    ground /= 2;
    return Math.abs(sum - ground) <= AREA * ground;
  }

  private double area(int[] ring) {
    double ox = traces.x[ring[0]];
    double oy = traces.y[ring[0]];
    double twice = 0;
    for (int i = 1; i + 1 < ring.length; i++) {
      int p = ring[i];
      int q = ring[i + 1];
      twice += (traces.x[p] - ox) * (traces.y[q] - oy) - (traces.x[q] - ox) * (traces.y[p] - oy);
    }
    return twice / 2;
  }

  private boolean plain(int side, int[] ring) {
    return ring.length == 3 || monotone(side, ring) || crossesNowhere(ring);
  }

  /** Along the side every face of an even roof has one lower and one upper border: quick to see. */
  private boolean monotone(int side, int[] ring) {
    int n = ring.length;
    int least = 0;
    int most = 1;
    for (int i = 2; i < n; i++) {
      least = u(side, ring[i]) < u(side, ring[least]) ? i : least;
      most = u(side, ring[i]) > u(side, ring[most]) ? i : most;
    }
    for (int i = least; i != most; i = (i + 1) % n) {
      if (u(side, ring[(i + 1) % n]) < u(side, ring[i])) {
        return false;
      }
    }
    for (int i = most; i != least; i = (i + 1) % n) {
      if (u(side, ring[(i + 1) % n]) > u(side, ring[i])) {
        return false;
      }
    }
    return apart(side, ring, least, most);
  }

  /** The upper border lies above the lower one at each corner of either. */
  private boolean apart(int side, int[] ring, int least, int most) {
    int n = ring.length;
    int low = least;
    int high = least;
    while (true) {
      int lowNext = (low + 1) % n;
      int highNext = (high + n - 1) % n;
      if (lowNext == most && highNext == most) {
        return true;
      }
      boolean stepLow =
          highNext == most
              || (lowNext != most && u(side, ring[lowNext]) <= u(side, ring[highNext]));
      int at = stepLow ? lowNext : highNext;
      int a = stepLow ? high : low;
      int b = stepLow ? highNext : lowNext;
      double over = cross(ring[a], ring[b], ring[at]);
      // Seen from the other border's stretch, run with rising u, a lower corner lies to the right.
      if (stepLow ? !(over < 0) : !(over > 0)) {
        return false;
      }
      low = stepLow ? lowNext : low;
      high = stepLow ? high : highNext;
    }
  }

  private double u(int side, int node) {
    return sides.ny[side] * traces.x[node] - sides.nx[side] * traces.y[node];
  }

  private double cross(int a, int b, int p) {
    return (traces.x[b] - traces.x[a]) * (traces.y[p] - traces.y[a])
        - (traces.y[b] - traces.y[a]) * (traces.x[p] - traces.x[a]);
  }

  private boolean crossesNowhere(int[] ring) {
    int n = ring.length;
    for (int i = 0; i < n; i++) {
      for (int j = i + 2; j < n; j++) {
        if (i == 0 && j == n - 1) {
          continue;
        }
        if (crosses(ring[i], ring[(i + 1) % n], ring[j], ring[(j + 1) % n])) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean liesIn(int[] hole, Faces faces, int side) {
    int[] ring = faces.ring[side];
    if (!crossesNowhere(hole) || crosses(hole, ring) || !surrounds(ring, hole[0])) {
      return false;
    }
    for (int[] other : faces.holes[side]) {
      if (other != hole && (crosses(hole, other) || surrounds(other, hole[0]))) {
        return false;
      }
    }
    return true;
  }

  private boolean crosses(int[] ring, int[] other) {
    for (int i = 0; i < ring.length; i++) {
      for (int j = 0; j < other.length; j++) {
        if (crosses(
            ring[i], ring[(i + 1) % ring.length], other[j], other[(j + 1) % other.length])) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean surrounds(int[] ring, int node) {
    boolean in = false;
    for (int i = 0; i < ring.length; i++) {
      int a = ring[i];
      int b = ring[(i + 1) % ring.length];
      if ((traces.y[a] > traces.y[node]) != (traces.y[b] > traces.y[node])
          && (cross(a, b, node) > 0) == (traces.y[b] > traces.y[a])) {
        in = !in;
      }
    }
    return in;
  }

  /** Signs say nothing of stretches in one line, so those must also share some of their boxes. */
  private boolean crosses(int a, int b, int p, int q) {
    if (apart(traces.x, a, b, p, q) || apart(traces.y, a, b, p, q)) {
      return false;
    }
    double p1 = cross(a, b, p);
    double q1 = cross(a, b, q);
    double a1 = cross(p, q, a);
    double b1 = cross(p, q, b);
    return (p1 > 0) != (q1 > 0) && (a1 > 0) != (b1 > 0);
  }

  private static boolean apart(double[] at, int a, int b, int p, int q) {
    return Math.max(at[a], at[b]) < Math.min(at[p], at[q])
        || Math.max(at[p], at[q]) < Math.min(at[a], at[b]);
  }
}
