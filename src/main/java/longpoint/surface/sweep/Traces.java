package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * What the front leaves behind: nodes, and arcs between them, each with the side whose face lies on
 * its left and on its right. Every arc bounds both faces by construction, so faces that use up all
 * of their arcs leave no gap and no overlap.
 */
final class Traces {
  int nodes;
  double[] x;
  double[] y;
  double[] time;

  int arcs;
  int[] from;
  int[] to;
  int[] left;
  int[] right;

  Traces(Sides sides) {
    int room = 3 * sides.given + 8;
    x = Arrays.copyOf(sides.x, room);
    y = Arrays.copyOf(sides.y, room);
    time = new double[room];
    nodes = sides.given;
    from = new int[room];
    to = new int[room];
    left = new int[room];
    right = new int[room];
  }

  int node(double px, double py, double t) {
    if (nodes == x.length) {
      x = Arrays.copyOf(x, 2 * nodes);
      y = Arrays.copyOf(y, 2 * nodes);
      time = Arrays.copyOf(time, 2 * nodes);
    }
    x[nodes] = px;
    y[nodes] = py;
    time[nodes] = t;
    return nodes++;
  }

  /** Records a piece of border with a face on either hand, seen from its start. */
  void arc(int start, int end, int onLeft, int onRight) {
    if (start == end || onLeft == onRight) {
      return;
    }
    if (arcs == from.length) {
      from = Arrays.copyOf(from, 2 * arcs);
      to = Arrays.copyOf(to, 2 * arcs);
      left = Arrays.copyOf(left, 2 * arcs);
      right = Arrays.copyOf(right, 2 * arcs);
    }
    from[arcs] = start;
    to[arcs] = end;
    left[arcs] = onLeft;
    right[arcs] = onRight;
    arcs++;
  }
}
