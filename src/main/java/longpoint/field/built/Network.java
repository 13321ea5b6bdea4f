package longpoint.field.built;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import longpoint.geometry.Point;

/**
 * Points held together by lengths. Of all places that fit the lengths best, by the least sum of
 * squares weighted by accuracy, the ones nearest to where the points were meant to be: a free
 * network by inner constraints, so that neither a corner nor a wall is taken for true, and what the
 * lengths leave open stays as it was meant.
 *
 * <p>Steps: Gauss-Newton; every step by singular values, with the modes the lengths do not hold
 * left out and led back to the plan. B. Harvey, "Datums of networks and free networks" (UNSW 2013);
 * A. Pope 1976 and W. Baarda 1968 for what is made of the residuals (from memory).
 */
final class Network {
  /** What ties points together. */
  sealed interface Tie {
    /** The same as measured, less what it is at these places, in its own unit. */
    double lack(List<Point> at);

    /** One standard deviation, &gt; 0. */
    double sigma();

    /** How it changes with each coordinate: added into a row x0, y0, x1, y1 … */
    void slope(List<Point> at, double[] row);
  }

  /** A length from point to point. */
  record Length(int from, int to, double reads, double sigma) implements Tie {
    @Override
    public double lack(List<Point> at) {
      return reads - at.get(from).distance(at.get(to));
    }

    @Override
    public void slope(List<Point> at, double[] row) {
      Point step = at.get(to).minus(at.get(from));
      double length = step.length();
      if (length > 0) {
        row[2 * to] += step.x() / length;
        row[2 * to + 1] += step.y() / length;
        row[2 * from] -= step.x() / length;
        row[2 * from + 1] -= step.y() / length;
      }
    }
  }

  /** A point that stands on the line through two others. */
  record OnLine(int point, int from, int to, double sigma) implements Tie {
    @Override
    public double lack(List<Point> at) {
      Point along = at.get(to).minus(at.get(from)).unit();
      return -along.cross(at.get(point).minus(at.get(from)));
    }

    @Override
    public void slope(List<Point> at, double[] row) {
      Point whole = at.get(to).minus(at.get(from));
      Point n = whole.unit().left();
      double share = at.get(point).minus(at.get(from)).dot(whole) / whole.dot(whole);
      add(row, point, n, 1);
      add(row, from, n, share - 1);
      add(row, to, n, -share);
    }

    private static void add(double[] row, int point, Point n, double by) {
      row[2 * point] += n.x() * by;
      row[2 * point + 1] += n.y() * by;
    }
  }

  /**
   * A mode that would be off by more than this many times the accuracy of a tape is not held by the
   * tapes: three points almost in line say nothing of how far the middle one stands off. At a
   * sixteenth of an inch that is just under four inches.
   */
  private static final double LOOSE = 60;

  private static final int MOST_STEPS = 60;

  /** Of the extent of the network: far below anything that can be measured. */
  private static final double STILL = 1e-12;

  /**
   * @param at where the points are
   * @param settled whether the steps came to rest
   * @param decomposed the last step's singular values, of lengths over their accuracy
   * @param held which of them the lengths hold
   */
  record Settled(List<Point> at, List<Tie> ties, boolean settled, Svd decomposed, boolean[] held) {
    /** Share of a lack that shows in the residuals, 0 to 1: the redundancy number. */
    double redundancy(int tie) {
      return 1 - together(tie, tie);
    }

    /** How the residuals of two ties go together, −1 to 1. */
    double correlation(int one, int other) {
      double both = Math.sqrt(redundancy(one) * redundancy(other));
      return both > 0 ? -together(one, other) / both : 0;
    }

    private double together(int one, int other) {
      double sum = 0;
      for (int k = 0; k < held.length; k++) {
        if (held[k]) {
          sum += decomposed.u[k][one] * decomposed.u[k][other];
        }
      }
      return sum;
    }

    /** Adjusted less measured. */
    double residual(int tie) {
      return -ties.get(tie).lack(at);
    }

    /** One standard deviation of a point within the network. */
    double deviation(int point) {
      double sum = 0;
      for (int k = 0; k < held.length; k++) {
        if (held[k]) {
          double x = decomposed.v[k][2 * point] / decomposed.s[k];
          double y = decomposed.v[k][2 * point + 1] / decomposed.s[k];
          sum += x * x + y * y;
        }
      }
      return Math.sqrt(sum);
    }

    /** The directions nothing holds, each a step of every coordinate, square to each other. */
    List<double[]> loose() {
      List<double[]> loose = new ArrayList<>();
      for (int k = 0; k < held.length; k++) {
        if (!held[k]) {
          loose.add(decomposed.v[k].clone());
        }
      }
      return loose;
    }
  }

  private Network() {}

  static Settled settle(List<Point> meant, List<Tie> ties) {
    List<Point> at = meant;
    double extent = extent(meant);
    Svd svd = null;
    boolean[] held = new boolean[2 * meant.size()];
    for (int step = 0; step < MOST_STEPS; step++) {
      svd = decompose(at, ties, svd);
      held = held(svd, ties);
      double[] move = move(meant, at, ties, svd, held);
      if (!DoubleStream.of(move).allMatch(Double::isFinite)) {
        return new Settled(meant, ties, false, svd, new boolean[held.length]);
      }
      double most = 0;
      List<Point> moved = new ArrayList<>(at.size());
      for (int i = 0; i < at.size(); i++) {
        moved.add(at.get(i).plus(new Point(move[2 * i], move[2 * i + 1])));
        most = Math.max(most, Math.max(Math.abs(move[2 * i]), Math.abs(move[2 * i + 1])));
      }
      at = moved;
      if (most <= STILL * extent) {
        return new Settled(List.copyOf(at), ties, true, svd, held);
      }
    }
    return new Settled(List.copyOf(at), ties, false, svd, held);
  }

  private static Svd decompose(List<Point> at, List<Tie> ties, Svd before) {
    double[][] rows = new double[ties.size()][2 * at.size()];
    for (int i = 0; i < rows.length; i++) {
      ties.get(i).slope(at, rows[i]);
      for (int j = 0; j < rows[i].length; j++) {
        rows[i][j] /= ties.get(i).sigma();
      }
    }
    return before == null ? new Svd(rows, 2 * at.size()) : new Svd(rows, 2 * at.size(), before.v);
  }

  private static boolean[] held(Svd svd, List<Tie> ties) {
    double coarse =
        ties.stream().filter(Length.class::isInstance).mapToDouble(Tie::sigma).max().orElse(1);
    boolean[] held = new boolean[svd.s.length];
    for (int k = 0; k < held.length; k++) {
      held[k] = svd.s[k] * coarse > 1 / LOOSE;
    }
    return held;
  }

  private static double[] move(
      List<Point> meant, List<Point> at, List<Tie> ties, Svd svd, boolean[] held) {
    double[] home = new double[2 * at.size()];
    for (int i = 0; i < at.size(); i++) {
      home[2 * i] = meant.get(i).x() - at.get(i).x();
      home[2 * i + 1] = meant.get(i).y() - at.get(i).y();
    }
    double[] move = new double[home.length];
    for (int k = 0; k < held.length; k++) {
      double by = 0;
      if (held[k]) {
        for (int i = 0; i < ties.size(); i++) {
          by += svd.u[k][i] * ties.get(i).lack(at) / ties.get(i).sigma();
        }
        by /= svd.s[k];
      } else {
        for (int j = 0; j < home.length; j++) {
          by += svd.v[k][j] * home[j];
        }
      }
      for (int j = 0; j < move.length; j++) {
        move[j] += by * svd.v[k][j];
      }
    }
    return move;
  }

  private static double extent(List<Point> at) {
    double most = 1;
    for (Point p : at) {
      most = Math.max(most, p.distance(at.get(0)));
    }
    return most;
  }
}
