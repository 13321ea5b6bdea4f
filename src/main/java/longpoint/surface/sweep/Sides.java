package longpoint.surface.sweep;

import java.util.Arrays;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/**
 * The sides of an outline as moving lines {@code nx·x + ny·y = c + speed·t}, made fit for exact
 * comparison: sides that are parallel within rounding have bit-identical (or exactly opposite)
 * normals, and sides on one line have the same {@code c}. So "parallel" and "in line" are plain
 * equality from here on, however the house is turned.
 *
 * <p>Where two neighbours in line have different speeds a <em>step</em> is put between them: a side
 * of no length, square to both, that stands still. It becomes the upright piece of wall between the
 * higher and the lower plane.
 *
 * <p>Coordinates are taken from the middle of the outline, so that a plan far from the origin keeps
 * its figures.
 */
final class Sides {
  /**
   * Sides whose directions differ by less (in radians) are parallel, besides what the grain of
   * their coordinates leaves open. Far above rounding; and among the directions of a hundred
   * thousand sides drawn at random hardly two come so close.
   */
  static final double PARALLEL = 1e-11;

  /** Lines nearer to each other than this share of the outline's diagonal are one line. */
  static final double IN_LINE = 1e-10;

  /** Sides the caller numbered; steps follow after them. */
  final int given;

  /** All sides, with the steps. */
  final int count;

  final double originX;
  final double originY;

  /** Longest distance across the outline's box. */
  final double diagonal;

  /** Where each side starts, measured from the origin. */
  final double[] x;

  final double[] y;
  final double[] nx;
  final double[] ny;
  final double[] c;
  final double[] speed;

  /** What the user said of each side where two become one: above 0 it goes on, below it ends. */
  private final int[] wish;

  /** Length of all sides in the same line with the same speed: who rules when two become one. */
  final double[] reach;

  final int[] next;

  /** The given corner at which each side starts; a step's is that of the side after it. */
  final int[] corner;

  private Sides(List<Ring> rings, double[] speeds, int[] wishes) {
    int n = 0;
    for (Ring ring : rings) {
      n += ring.size();
    }
    given = n;
    double[] box = box(rings);
    originX = (box[0] + box[2]) / 2;
    originY = (box[1] + box[3]) / 2;
    diagonal = Math.hypot(box[2] - box[0], box[3] - box[1]);
    int room = 2 * n;
    x = new double[room];
    y = new double[room];
    nx = new double[room];
    ny = new double[room];
    c = new double[room];
    speed = Arrays.copyOf(speeds, room);
    wish = Arrays.copyOf(wishes, room);
    reach = new double[room];
    next = new int[room];
    corner = new int[room];
    place(rings);
    double[] length = new double[n];
    lines(length);
    align(length, Math.ulp(Math.max(Math.max(-box[0], -box[1]), Math.max(box[2], box[3]))));
    count = n + steps();
  }

  /** Prepares the sides of rings that have been looked over by {@link Sweep}. */
  static Sides of(List<Ring> rings, double[] speeds) {
    return of(rings, speeds, new int[speeds.length]);
  }

  /**
   * @param wishes for each side, above 0 where it is to go on when two become one, below 0 where it
   *     is to end, 0 where the rule decides
   */
  static Sides of(List<Ring> rings, double[] speeds, int[] wishes) {
    return new Sides(rings, speeds, wishes);
  }

  /** True when the two lines are parallel and face the same way. */
  boolean sameWay(int a, int b) {
    return nx[a] == nx[b] && ny[a] == ny[b];
  }

  double fastest() {
    double most = 0;
    for (int i = 0; i < given; i++) {
      most = Math.max(most, speed[i]);
    }
    return most;
  }

  /**
   * Which of two sides goes on where both face the same way in one place: the one the user wants
   * to; of equal ones the one with the longer wall line, then the slower, then the one with the
   * lower number.
   */
  int ruler(int a, int b) {
    if (wish[a] != wish[b]) {
      return wish[a] > wish[b] ? a : b;
    }
    double margin = IN_LINE * diagonal;
    if (Math.abs(reach[a] - reach[b]) > margin) {
      return reach[a] > reach[b] ? a : b;
    }
    if (speed[a] != speed[b]) {
      return speed[a] < speed[b] ? a : b;
    }
    return Math.min(a, b);
  }

  private static double[] box(List<Ring> rings) {
    double[] box = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (Ring ring : rings) {
      List<Point> points = ring.points();
      for (int i = 0; i < points.size(); i++) {
        Point p = points.get(i);
        box[0] = Math.min(box[0], p.x());
        box[1] = Math.min(box[1], p.y());
        box[2] = Math.max(box[2], p.x());
        box[3] = Math.max(box[3], p.y());
      }
    }
    return box;
  }

  private void place(List<Ring> rings) {
    int side = 0;
    for (Ring ring : rings) {
      int first = side;
      List<Point> points = ring.points();
      for (int i = 0; i < points.size(); i++) {
        Point p = points.get(i);
        x[side] = p.x() - originX;
        y[side] = p.y() - originY;
        corner[side] = side;
        next[side] = side + 1;
        side++;
      }
      next[side - 1] = first;
    }
  }

  private void lines(double[] length) {
    for (int i = 0; i < given; i++) {
      double dx = x[next[i]] - x[i];
      double dy = y[next[i]] - y[i];
      length[i] = Math.sqrt(dx * dx + dy * dy);
      nx[i] = -dy / length[i];
      ny[i] = dx / length[i];
    }
  }

  /** Gives parallel sides one normal and sides in line one {@code c}. */
  private void align(double[] length, double grain) {
    double[] angle = new double[given];
    for (int i = 0; i < given; i++) {
      angle[i] = halfTurnAngle(nx[i], ny[i]);
    }
    int[] order = Order.of(angle, given);
    int from = 0;
    while (from < given) {
      int to = from + 1;
      int longest = order[from];
      while (to < given
          && angle[order[to]] - angle[order[from]]
              <= slack(length, order[from], order[to], grain)) {
        longest = length[order[to]] > length[longest] ? order[to] : longest;
        to++;
      }
      for (int i = from; i < to; i++) {
        turn(order[i], nx[longest], ny[longest]);
      }
      inLine(order, from, to, length);
      from = to;
    }
    // The half turn ends where it starts: the last group may be parallel to the first.
    int last = order[given - 1];
    if (angle[order[0]] + HALF_TURN - angle[last] <= slack(length, order[0], last, grain)) {
      joinEnds(order, angle, length, grain);
    }
  }

  private void joinEnds(int[] order, double[] angle, double[] length, double grain) {
    int first = order[0];
    int last = order[given - 1];
    double ax = nx[first];
    double ay = ny[first];
    int[] joined = new int[given];
    int count = 0;
    for (int i = 0; i < given; i++) {
      int side = order[i];
      boolean low = angle[side] - angle[first] <= slack(length, first, side, grain);
      boolean high = angle[last] - angle[side] <= slack(length, last, side, grain);
      if (low || high) {
        turn(side, ax, ay);
        joined[count++] = side;
      }
    }
    inLine(joined, 0, count, length);
  }

  private static final double HALF_TURN = 4;

  /**
   * A number that grows with the direction of a line, from 0 to {@link #HALF_TURN}, between 1 and 2
   * per radian; the two ways along the line give the same.
   */
  private static double halfTurnAngle(double ax, double ay) {
    double bx = ay < 0 || (ay == 0 && ax < 0) ? -ax : ax;
    double by = Math.abs(ay);
    // Diamond angle of the doubled direction would lose digits; two quarters do not.
    return bx > 0 ? 2 * by / (bx + by) : 2 + 2 * -bx / (by - bx);
  }

  /** Directions of short sides are known no better than the grain of their coordinates. */
  private static double slack(double[] length, int a, int b, double grain) {
    return 2 * (PARALLEL + 4 * grain / Math.min(length[a], length[b]));
  }

  private void turn(int side, double ax, double ay) {
    boolean same = nx[side] * ax + ny[side] * ay > 0;
    nx[side] = same ? ax : -ax;
    ny[side] = same ? ay : -ay;
  }

  private void inLine(int[] order, int from, int to, double[] length) {
    int size = to - from;
    double ax = nx[order[from]];
    double ay = ny[order[from]];
    double[] away = new double[size];
    for (int i = 0; i < size; i++) {
      int side = order[from + i];
      int end = next[side];
      away[i] = (ax * (x[side] + x[end]) + ay * (y[side] + y[end])) / 2;
    }
    int[] rank = Order.of(away, size);
    int a = 0;
    while (a < size) {
      int b = a + 1;
      while (b < size && away[rank[b]] - away[rank[a]] <= IN_LINE * diagonal) {
        b++;
      }
      for (int i = a; i < b; i++) {
        int side = order[from + rank[i]];
        boolean same = nx[side] == ax && ny[side] == ay;
        c[side] = same ? away[rank[a]] : -away[rank[a]];
      }
      for (int i = a; i < b; i++) {
        reach[order[from + rank[i]]] = reachOf(order, from, rank, a, b, i, length);
      }
      a = b;
    }
  }

  private double reachOf(int[] order, int from, int[] rank, int a, int b, int i, double[] length) {
    if (b - a == 1) {
      return length[order[from + rank[i]]];
    }
    int mine = order[from + rank[i]];
    double sum = 0;
    for (int j = a; j < b; j++) {
      int side = order[from + rank[j]];
      sum += sameWay(mine, side) && speed[mine] == speed[side] ? length[side] : 0;
    }
    return sum;
  }

  private int steps() {
    int added = 0;
    for (int i = 0; i < given; i++) {
      int after = next[i];
      if (speed[i] == speed[after] || !sameWay(i, after)) {
        continue;
      }
      int step = given + added++;
      // The step faces away from the faster side, which rises behind it.
      int turn = speed[i] > speed[after] ? 1 : -1;
      nx[step] = turn * ny[i];
      ny[step] = -turn * nx[i];
      x[step] = x[after];
      y[step] = y[after];
      c[step] = nx[step] * x[step] + ny[step] * y[step];
      corner[step] = after;
      next[step] = after;
      next[i] = step;
    }
    return added;
  }
}
