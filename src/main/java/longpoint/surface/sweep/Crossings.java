package longpoint.surface.sweep;

import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/**
 * Finds sides that cross, touch or lie on each other, pair by pair. For outlines small enough for
 * that; a larger one is noticed while it is cut into tiles.
 */
final class Crossings {
  private final double[] x;
  private final double[] y;
  private final int[] end;

  private Crossings(List<Ring> rings, int sides) {
    x = new double[sides];
    y = new double[sides];
    end = new int[sides];
    int at = 0;
    for (Ring ring : rings) {
      int first = at;
      List<Point> points = ring.points();
      for (int i = 0; i < points.size(); i++) {
        x[at] = points.get(i).x();
        y[at] = points.get(i).y();
        end[at] = at + 1;
        at++;
      }
      end[at - 1] = first;
    }
  }

  /** The first side that meets another one other than at their common corner, or -1. */
  static int first(List<Ring> rings, int sides) {
    Crossings c = new Crossings(rings, sides);
    for (int i = 0; i < sides; i++) {
      for (int j = i + 1; j < sides; j++) {
        if (c.meet(i, j)) {
          return i;
        }
      }
    }
    return -1;
  }

  private boolean meet(int i, int j) {
    int p = end[i];
    int q = end[j];
    if (Math.max(x[i], x[p]) < Math.min(x[j], x[q])
        || Math.max(x[j], x[q]) < Math.min(x[i], x[p])
        || Math.max(y[i], y[p]) < Math.min(y[j], y[q])
        || Math.max(y[j], y[q]) < Math.min(y[i], y[p])) {
      return false;
    }
    if (p == j) {
      return foldsBack(i, j, q);
    }
    if (q == i) {
      return foldsBack(j, i, p);
    }
    double a = turn(i, p, j);
    double b = turn(i, p, q);
    double c = turn(j, q, i);
    double d = turn(j, q, p);
    // The boxes overlap, so ends in line with the other side lie on it.
    return !(a > 0 && b > 0) && !(a < 0 && b < 0) && !(c > 0 && d > 0) && !(c < 0 && d < 0);
  }

  private boolean foldsBack(int a, int b, int c) {
    return turn(a, b, c) == 0 && (x[b] - x[a]) * (x[c] - x[b]) + (y[b] - y[a]) * (y[c] - y[b]) < 0;
  }

  private double turn(int a, int b, int c) {
    return (x[b] - x[a]) * (y[c] - y[b]) - (y[b] - y[a]) * (x[c] - x[b]);
  }
}
