package longpoint.surface.sweep;

import java.util.Arrays;
import longpoint.stop.CalledOff;

/**
 * Sweeps a front by looking at all of it before every event: the next time at which a stretch
 * shrinks to nothing or a corner runs into a stretch, then everything that meets at that time. No
 * queue and nothing kept from one event to the next, so nothing can go stale and any number of
 * meetings at once is an ordinary case. Time grows with the third power of the number of sides:
 * made for houses, and the measure for faster ways.
 *
 * <ol>
 *   <li>{@link #nextEvent}: the earliest event on the front as it stands
 *   <li>{@link Contacts}: what meets at that time, stretches cut where a corner touches
 *   <li>{@link Meeting}: every point of meeting sorted out into new corners, loops without ground
 *       removed, sides that came to lie in one line merged
 * </ol>
 */
final class WholeFront {
  private final Front front;
  private final Sides sides;
  private final Contacts contacts;
  private final double reach;
  private final double still;
  private double[] x = new double[0];
  private double[] y = new double[0];

  /**
   * @param reach corners nearer to each other than this are one point
   */
  WholeFront(Front front, double reach) {
    this.front = front;
    this.sides = front.sides;
    this.contacts = new Contacts(front, reach);
    this.reach = reach;
    this.still = Front.STILL * sides.fastest();
  }

  /** Sweeps until nothing is left. Returns the number of a side near the trouble, or -1. */
  int run() {
    double now = 0;
    int rounds = 20 * sides.count + 100;
    while (front.living > 0) {
      CalledOff.check();
      double t = nextEvent(now);
      front.stranded = t == Double.POSITIVE_INFINITY;
      if (front.stranded || rounds-- == 0 || front.trouble >= 0) {
        return front.trouble >= 0 ? front.trouble : anySide();
      }
      now = t;
      gather(now);
      contacts.resolve();
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

  private void gather(double now) {
    contacts.open(now);
    for (int v = 0; v < front.count; v++) {
      if (front.alive[v]) {
        contacts.corner(v);
        contacts.stretch(v);
      }
    }
  }
}
