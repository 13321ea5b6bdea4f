package longpoint.surface.sweep;

/** When a tile runs out of area, and which way round three corners lie now and just after. */
final class TileClock {
  private final Front front;
  private final Tiles tiles;
  private final Sides sides;

  /** Corners nearer to a line than this are in line with it. */
  final double grain;

  private final double still;
  private final double rounding;

  TileClock(Front front, Tiles tiles, double reach) {
    this.front = front;
    this.tiles = tiles;
    this.sides = front.sides;
    this.grain = Contacts.GRAIN * reach;
    this.rounding = 16 * Math.ulp(sides.diagonal);
    this.still = Front.STILL * sides.fastest();
  }

  double runsOut(int tile, double now) {
    int e = 3 * tile;
    double best = Double.POSITIVE_INFINITY;
    boolean walled = false;
    for (int i = e; i < e + 3; i++) {
      if (tiles.across[i] == Tiles.WALL) {
        walled = true;
        best = Math.min(best, wallTime(i, now));
      }
    }
    return walled
        ? best
        : now + areaTime(tiles.corner[e], tiles.corner[e + 1], tiles.corner[e + 2], now);
  }

  /** A tile on a wall: its area is the wall's length times the height of the corner before it. */
  private double wallTime(int edge, double now) {
    int u = tiles.from(edge);
    int w = tiles.to(edge);
    int v = tiles.corner[Tiles.before(edge)];
    int side = front.out[u];
    double lengthRate = front.along(side, front.vx[w] - front.vx[u], front.vy[w] - front.vy[u]);
    double gapRate =
        sides.nx[side] * front.vx[v] + sides.ny[side] * front.vy[v] - sides.speed[side];
    double best = Double.POSITIVE_INFINITY;
    if (lengthRate < -still) {
      double length =
          front.along(side, front.x(w, now) - front.x(u, now), front.y(w, now) - front.y(u, now));
      best = now + Math.max(0, length) / -lengthRate;
    }
    if (gapRate < -still) {
      double gap = front.ahead(side, front.x(v, now), front.y(v, now), now);
      best = Math.min(best, now + Math.max(0, gap) / -gapRate);
    }
    return best;
  }

  /** How long until the area of three free corners is nothing and shrinking: a quadratic. */
  private double areaTime(int a, int b, int c, double now) {
    double ax = front.x(a, now);
    double ay = front.y(a, now);
    double bx = front.x(b, now) - ax;
    double by = front.y(b, now) - ay;
    double cx = front.x(c, now) - ax;
    double cy = front.y(c, now) - ay;
    double ux = front.vx[b] - front.vx[a];
    double uy = front.vy[b] - front.vy[a];
    double wx = front.vx[c] - front.vx[a];
    double wy = front.vy[c] - front.vy[a];
    double a0 = bx * cy - by * cx;
    double a1 = bx * wy - by * wx + ux * cy - uy * cx;
    double a2 = ux * wy - uy * wx;
    double length = Math.max(Math.abs(bx) + Math.abs(by), Math.abs(cx) + Math.abs(cy));
    double speed = Math.max(Math.abs(ux) + Math.abs(uy), Math.abs(wx) + Math.abs(wy));
    if (Math.abs(a1) <= Front.STILL * length * speed) {
      a1 = 0;
    }
    if (Math.abs(a2) <= Front.STILL * speed * speed) {
      a2 = 0;
    }
    if (a0 <= Front.STILL * length * length) {
      // Flat: it matters only what happens next.
      if (a1 > 0) {
        return a2 < 0 ? -a1 / a2 : Double.POSITIVE_INFINITY;
      }
      return a1 < 0 || a2 < 0 ? 0 : Double.POSITIVE_INFINITY;
    }
    double inside = a1 * a1 - 4 * a0 * a2;
    double blur = (DOUBLE + rounding / length) * a1 * a1;
    if (inside < -blur) {
      return Double.POSITIVE_INFINITY;
    }
    // Three corners that come to one point: rounding under the root would cost half the digits.
    double root = inside < blur ? 0 : Math.sqrt(inside);
    if (a1 < 0) {
      return 2 * a0 / (root - a1);
    }
    return a2 < 0 ? (a1 + root) / (-2 * a2) : Double.POSITIVE_INFINITY;
  }

  /**
   * Share of a1² below which the two roots of a quadratic are taken for one; to it comes what the
   * rounding of coordinates makes of a short length.
   */
  private static final double DOUBLE = 1e-13;

  /** Positive when three corners lie counter-clockwise now or, if they lie in line, just after. */
  double turn(int a, int b, int c, double now) {
    double ax = front.x(a, now);
    double ay = front.y(a, now);
    double bx = front.x(b, now) - ax;
    double by = front.y(b, now) - ay;
    double cx = front.x(c, now) - ax;
    double cy = front.y(c, now) - ay;
    double area = bx * cy - by * cx;
    double length =
        Math.max(
            Math.max(Math.abs(bx) + Math.abs(by), Math.abs(cx) + Math.abs(cy)),
            Math.abs(cx - bx) + Math.abs(cy - by));
    if (Math.abs(area) > grain * length) {
      return area;
    }
    double ux = front.vx[b] - front.vx[a];
    double uy = front.vy[b] - front.vy[a];
    double wx = front.vx[c] - front.vx[a];
    double wy = front.vy[c] - front.vy[a];
    double speed = Math.max(Math.abs(ux) + Math.abs(uy), Math.abs(wx) + Math.abs(wy));
    double rate = bx * wy - by * wx + ux * cy - uy * cx;
    if (Math.abs(rate) > Front.STILL * length * speed) {
      return TINY * rate;
    }
    double bend = ux * wy - uy * wx;
    return Math.abs(bend) > Front.STILL * speed * speed ? TINY * TINY * bend : 0;
  }

  /** Whether three corners lie in line now. */
  boolean inLine(int a, int b, int c, double now) {
    double bx = front.x(b, now) - front.x(a, now);
    double by = front.y(b, now) - front.y(a, now);
    double cx = front.x(c, now) - front.x(a, now);
    double cy = front.y(c, now) - front.y(a, now);
    double length =
        Math.max(
            Math.max(Math.abs(bx) + Math.abs(by), Math.abs(cx) + Math.abs(cy)),
            Math.abs(cx - bx) + Math.abs(cy - by));
    return Math.abs(bx * cy - by * cx) <= grain * length;
  }

  /** Makes a corner's turn just after count for less than any turn now. */
  private static final double TINY = 1e-30;
}
