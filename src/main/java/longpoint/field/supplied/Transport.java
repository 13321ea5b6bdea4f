package longpoint.field.supplied;

import java.util.Arrays;
import longpoint.stop.CalledOff;

/**
 * The transportation problem: how much of what each source has goes to each sink, so that the whole
 * costs the least. What is not worth its cost stays behind at a fixed cost for each unit at either
 * end.
 *
 * <p>Successive shortest paths on reduced costs (Edmonds and Karp 1972), with the sources' and
 * sinks' prices kept as the proof: no reduced cost is below 0 and every flow runs at 0, so no other
 * plan costs less (linear programming duality).
 */
final class Transport {
  /**
   * @param flow units from source to sink
   * @param cost of all units, those left behind included
   * @param gap most by which a price breaks the proof: rounding only
   */
  record Plan(int[][] flow, double cost, double gap) {}

  private final double[][] cost;
  private final int[] left;
  private final int[] open;
  private final int[][] flow;
  private final double[] sourcePrice;
  private final double[] sinkPrice;

  private Transport(int[] supply, int[] demand, double[][] cost) {
    this.cost = cost;
    left = supply.clone();
    open = demand.clone();
    flow = new int[supply.length][demand.length];
    sourcePrice = new double[supply.length];
    sinkPrice = new double[demand.length];
  }

  /**
   * @param supply of each source, 0 or more
   * @param demand of each sink, 0 or more
   * @param cost of a unit from a source to a sink, 0 or more; infinite where it may not go
   * @param alone what a unit costs that stays at its source, and again one that a sink goes without
   */
  static Plan solve(int[] supply, int[] demand, double[][] cost, double alone) {
    int m = supply.length;
    int n = demand.length;
    // One source more for what sinks go without, one sink more for what stays behind; between the
    // two nothing costs anything. Then all that is there is moved, and supply equals demand.
    int[] s = Arrays.copyOf(supply, m + 1);
    int[] d = Arrays.copyOf(demand, n + 1);
    s[m] = Arrays.stream(demand).sum();
    d[n] = Arrays.stream(supply).sum();
    double[][] c = new double[m + 1][n + 1];
    for (int i = 0; i < m; i++) {
      System.arraycopy(cost[i], 0, c[i], 0, n);
      c[i][n] = alone;
    }
    Arrays.fill(c[m], 0, n, alone);
    Transport t = new Transport(s, d, c);
    for (int i = 0; i <= m; i++) {
      while (t.left[i] > 0) {
        CalledOff.check();
        t.send(i);
      }
    }
    int[][] flow = new int[m][];
    for (int i = 0; i < m; i++) {
      flow[i] = Arrays.copyOf(t.flow[i], n);
    }
    return new Plan(flow, t.total(), t.gap());
  }

  /** Sends what it can from a source along the cheapest way to a sink that still wants some. */
  private void send(int from) {
    int m = cost.length;
    int n = cost[0].length;
    double[] toSource = filled(m);
    double[] toSink = filled(n);
    int[] sinkBy = new int[n];
    int[] sourceBy = new int[m];
    boolean[] sourceDone = new boolean[m];
    boolean[] sinkDone = new boolean[n];
    toSource[from] = 0;
    int end = -1;
    while (end < 0) {
      int source = least(toSource, sourceDone);
      int sink = least(toSink, sinkDone);
      if (source >= 0 && (sink < 0 || toSource[source] <= toSink[sink])) {
        sourceDone[source] = true;
        for (int j = 0; j < n; j++) {
          double to = toSource[source] + Math.max(0, reduced(source, j));
          if (to < toSink[j]) {
            toSink[j] = to;
            sinkBy[j] = source;
          }
        }
      } else {
        sinkDone[sink] = true;
        if (open[sink] > 0) {
          end = sink;
        }
        for (int i = 0; i < m && end < 0; i++) {
          double to = toSink[sink] + Math.max(0, -reduced(i, sink));
          if (flow[i][sink] > 0 && to < toSource[i]) {
            toSource[i] = to;
            sourceBy[i] = sink;
          }
        }
      }
    }
    double length = toSink[end];
    for (int i = 0; i < m; i++) {
      sourcePrice[i] += Math.min(length, toSource[i]);
    }
    for (int j = 0; j < n; j++) {
      sinkPrice[j] += Math.min(length, toSink[j]);
    }
    carry(from, end, sinkBy, sourceBy);
  }

  private void carry(int from, int end, int[] sinkBy, int[] sourceBy) {
    int most = Math.min(left[from], open[end]);
    for (int j = end; sinkBy[j] != from; j = sourceBy[sinkBy[j]]) {
      most = Math.min(most, flow[sinkBy[j]][sourceBy[sinkBy[j]]]);
    }
    for (int j = end; ; j = sourceBy[sinkBy[j]]) {
      flow[sinkBy[j]][j] += most;
      if (sinkBy[j] == from) {
        break;
      }
      flow[sinkBy[j]][sourceBy[sinkBy[j]]] -= most;
    }
    left[from] -= most;
    open[end] -= most;
  }

  private double reduced(int source, int sink) {
    return cost[source][sink] + sourcePrice[source] - sinkPrice[sink];
  }

  private static double[] filled(int size) {
    double[] far = new double[size];
    Arrays.fill(far, Double.POSITIVE_INFINITY);
    return far;
  }

  private static int least(double[] of, boolean[] done) {
    int best = -1;
    for (int i = 0; i < of.length; i++) {
      if (!done[i] && of[i] < Double.POSITIVE_INFINITY && (best < 0 || of[i] < of[best])) {
        best = i;
      }
    }
    return best;
  }

  private double total() {
    double sum = 0;
    for (int i = 0; i < flow.length; i++) {
      for (int j = 0; j < flow[i].length; j++) {
        sum += flow[i][j] == 0 ? 0 : flow[i][j] * cost[i][j];
      }
    }
    return sum;
  }

  private double gap() {
    double gap = 0;
    for (int i = 0; i < flow.length; i++) {
      for (int j = 0; j < flow[i].length; j++) {
        double r = reduced(i, j);
        gap = Math.max(gap, flow[i][j] > 0 ? Math.abs(r) : Double.isInfinite(r) ? 0 : -r);
      }
    }
    return gap;
  }
}
