package longpoint.deck.nest;

import java.util.ArrayList;
import java.util.List;

/** One sheet while it is being filled. */
final class Bin {
  /** A shape at its place. */
  record Put(int item, boolean turned, Shape shape, double u, double v) {}

  private final double length;
  private final double width;
  private final double touch;
  private final List<Put> puts = new ArrayList<>();
  private double free;

  /**
   * @param touch overlaps thinner than this are rounding
   */
  Bin(double length, double width, double touch) {
    this.length = length;
    this.width = width;
    this.touch = touch;
    free = length * width;
  }

  double free() {
    return free;
  }

  List<Put> puts() {
    return puts;
  }

  void add(Put put) {
    puts.add(put);
    free -= put.shape.area;
  }

  /** The place that leaves the shape's right end farthest left, or null where it does not fit. */
  Put place(Item item) {
    Put best = null;
    for (int way = 0; way < (item.symmetric() ? 1 : 2); way++) {
      Shape shape = way == 0 ? item.shape() : item.turned();
      for (double v : heights(shape)) {
        double u = leftmost(shape, v);
        if (!Double.isNaN(u) && (best == null || u < best.u - touch)) {
          best = new Put(item.index(), way == 1, shape, u, v);
        }
      }
    }
    return best;
  }

  /** Along the bottom, along the top, and level with what is already there. */
  private double[] heights(Shape shape) {
    double room = width - shape.height;
    if (room <= touch) {
      return new double[] {0};
    }
    double[] all = new double[2 + 2 * puts.size()];
    int n = 0;
    all[n++] = 0;
    all[n++] = room;
    for (Put put : puts) {
      double above = put.v + put.shape.height;
      if (above <= room) {
        all[n++] = above;
      }
      double below = put.v - shape.height;
      if (below >= 0) {
        all[n++] = below;
      }
    }
    return java.util.Arrays.copyOf(all, n);
  }

  private double leftmost(Shape shape, double v) {
    double last = length - shape.length + touch;
    double best = Double.NaN;
    if (last >= 0 && clear(shape, 0, v)) {
      return 0;
    }
    for (Put put : puts) {
      double u = put.u + put.shape.clearRight(shape, v - put.v, touch);
      if (u >= 0 && u <= last && !(u >= best) && clear(shape, u, v)) {
        best = u;
      }
    }
    return best;
  }

  private boolean clear(Shape shape, double u, double v) {
    for (Put put : puts) {
      double step = u - put.u;
      if (step < put.shape.clearRight(shape, v - put.v, touch) - touch
          && step > put.shape.clearLeft(shape, v - put.v, touch) + touch) {
        return false;
      }
    }
    return true;
  }
}
