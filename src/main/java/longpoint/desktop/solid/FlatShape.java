package longpoint.desktop.solid;

import java.util.Optional;

/**
 * A flat face on the screen: its rings, and its depth as an even slope over x and y.
 *
 * @param rings corners as x, y and nearness
 * @param x0 a corner's x
 * @param y0 its y
 * @param near0 its nearness
 * @param byX change of nearness to the right
 * @param byY change of nearness downward
 * @param facing which side of it is seen
 */
record FlatShape(
    double[][][] rings, double x0, double y0, double near0, double byX, double byY, Facing facing) {
  /** Which side of a face is seen. */
  enum Facing {
    OUTSIDE,
    INSIDE
  }

  /** A face that shows less than this share of itself is seen from its edge and paints nothing. */
  private static final double EDGE_ON = 1e-6;

  /** The face, or nothing if it is seen from its edge. */
  static Optional<FlatShape> of(double[][][] rings) {
    double[] n = normal(rings[0]);
    if (Math.abs(n[2]) <= EDGE_ON * Math.hypot(Math.hypot(n[0], n[1]), n[2])) {
      return Optional.empty();
    }
    double[] p = rings[0][0];
    // Screen y runs downward, so that a ring counter-clockwise to the eye has its sum below zero.
    Facing facing = n[2] < 0 ? Facing.OUTSIDE : Facing.INSIDE;
    return Optional.of(new FlatShape(rings, p[0], p[1], p[2], -n[0] / n[2], -n[1] / n[2], facing));
  }

  /** Newell's sum over the corners, which no three corners in a line can spoil. */
  private static double[] normal(double[][] ring) {
    double[] n = new double[3];
    double[] o = ring[0];
    for (int i = 0; i < ring.length; i++) {
      double[] a = ring[i];
      double[] b = ring[(i + 1) % ring.length];
      n[0] += (a[1] - b[1]) * (a[2] + b[2] - 2 * o[2]);
      n[1] += (a[2] - b[2]) * (a[0] + b[0] - 2 * o[0]);
      n[2] += (a[0] - b[0]) * (a[1] + b[1] - 2 * o[1]);
    }
    return n;
  }

  double near(double x, double y) {
    return near0 + byX * (x - x0) + byY * (y - y0);
  }

  /** Whether it covers a place, by counting crossings to the left of it. */
  boolean covers(double x, double y) {
    double[] out = new double[corners()];
    int count = crossings(y, out);
    int left = 0;
    for (int i = 0; i < count; i++) {
      if (out[i] < x) {
        left++;
      }
    }
    return left % 2 == 1;
  }

  int corners() {
    int sum = 0;
    for (double[][] ring : rings) {
      sum += ring.length;
    }
    return sum;
  }

  /**
   * Where its edges cross a level line, in no order.
   *
   * @param out takes the x of each, room for as many as there are corners
   * @return how many, an even number
   */
  int crossings(double y, double[] out) {
    int count = 0;
    for (double[][] ring : rings) {
      double[] a = ring[ring.length - 1];
      for (double[] b : ring) {
        if (a[1] > y != b[1] > y) {
          out[count++] = a[0] + (b[0] - a[0]) * ((y - a[1]) / (b[1] - a[1]));
        }
        a = b;
      }
    }
    return count;
  }
}
