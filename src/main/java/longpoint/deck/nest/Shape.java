package longpoint.deck.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/**
 * The room a piece takes in a sheet: its convex outline with the lower left of its box at 0, 0,
 * kept as left and right ends at each height where they turn.
 */
final class Shape {
  final double length;
  final double height;
  final double area;

  private final double[] levels;
  private final double[] left;
  private final double[] right;

  private Shape(double length, double height, double area, double[][] rows) {
    this.length = length;
    this.height = height;
    this.area = area;
    levels = rows[0];
    left = rows[1];
    right = rows[2];
  }

  /**
   * @param touch corners nearer one height than this stand level
   */
  static Shape of(Ring outline, double touch) {
    List<Point> hull = levelled(hull(outline.points()), touch);
    Bounds box = Bounds.of(hull);
    double[] levels = hull.stream().mapToDouble(Point::y).sorted().distinct().toArray();
    double[] left = new double[levels.length];
    double[] right = new double[levels.length];
    for (int i = 0; i < levels.length; i++) {
      left[i] = Double.POSITIVE_INFINITY;
      right[i] = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < hull.size(); k++) {
        Point a = hull.get(k);
        Point b = hull.get((k + 1) % hull.size());
        if (Math.min(a.y(), b.y()) <= levels[i] && levels[i] <= Math.max(a.y(), b.y())) {
          double first = crossing(a, b, levels[i]) - box.minX();
          double second = a.y() == b.y() ? b.x() - box.minX() : first;
          left[i] = Math.min(left[i], Math.min(first, second));
          right[i] = Math.max(right[i], Math.max(first, second));
        }
      }
      levels[i] -= box.minY();
    }
    double[][] rows = {levels, left, right};
    return new Shape(box.width(), box.height(), new Ring(hull).area(), rows);
  }

  private static double crossing(Point a, Point b, double v) {
    if (a.y() == v) {
      return a.x();
    }
    return b.y() == v ? b.x() : a.x() + (b.x() - a.x()) * ((v - a.y()) / (b.y() - a.y()));
  }

  /** The same corners, those of one height but for rounding brought to exactly one height. */
  private static List<Point> levelled(List<Point> corners, double touch) {
    double[] heights = corners.stream().mapToDouble(Point::y).sorted().toArray();
    return corners.stream()
        .map(
            p -> {
              for (double height : heights) {
                if (p.y() - height <= touch) {
                  return new Point(p.x(), height);
                }
              }
              return p;
            })
        .toList();
  }

  /** The shape turned end for end. */
  Shape turned() {
    int n = levels.length;
    double[][] rows = new double[3][n];
    for (int i = 0; i < n; i++) {
      rows[0][i] = height - levels[n - 1 - i];
      rows[1][i] = length - right[n - 1 - i];
      rows[2][i] = length - left[n - 1 - i];
    }
    return new Shape(length, height, area, rows);
  }

  /**
   * How far right of this shape another has to stand to clear it.
   *
   * @param up how much higher the other stands
   * @return least step to the right; {@link Double#NEGATIVE_INFINITY} if they never meet
   */
  double clearRight(Shape other, double up, double touch) {
    return farthest(other, up, touch, right, other.left, 1);
  }

  /**
   * How far left of this shape another has to stand to clear it, as a step to the right.
   *
   * @return greatest step; {@link Double#POSITIVE_INFINITY} if they never meet
   */
  double clearLeft(Shape other, double up, double touch) {
    return -farthest(other, up, touch, left, other.right, -1);
  }

  private double farthest(
      Shape other, double up, double touch, double[] mine, double[] its, int way) {
    double lo = Math.max(0, up);
    double hi = Math.min(height, up + other.height);
    if (hi - lo <= touch) {
      return Double.NEGATIVE_INFINITY;
    }
    double most = Double.NEGATIVE_INFINITY;
    most = Math.max(most, way * (at(mine, lo) - other.at(its, lo - up)));
    most = Math.max(most, way * (at(mine, hi) - other.at(its, hi - up)));
    for (int i = 0; i < levels.length; i++) {
      if (levels[i] > lo && levels[i] < hi) {
        most = Math.max(most, way * (mine[i] - other.at(its, levels[i] - up)));
      }
    }
    for (int i = 0; i < other.levels.length; i++) {
      double level = other.levels[i] + up;
      if (level > lo && level < hi) {
        most = Math.max(most, way * (at(mine, level) - its[i]));
      }
    }
    return most;
  }

  private double at(double[] ends, double level) {
    int n = levels.length;
    if (level <= levels[0]) {
      return ends[0];
    }
    for (int i = 1; i < n; i++) {
      if (level <= levels[i]) {
        double share = (level - levels[i - 1]) / (levels[i] - levels[i - 1]);
        return ends[i - 1] + (ends[i] - ends[i - 1]) * share;
      }
    }
    return ends[n - 1];
  }

  /** Convex hull by Andrew's monotone chain (1979), counter-clockwise. */
  private static List<Point> hull(List<Point> points) {
    List<Point> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y));
    List<Point> hull = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      int start = hull.size();
      for (int i = 0; i < sorted.size(); i++) {
        Point p = sorted.get(pass == 0 ? i : sorted.size() - 1 - i);
        while (hull.size() >= start + 2 && turn(hull, p) <= 0) {
          hull.remove(hull.size() - 1);
        }
        hull.add(p);
      }
      hull.remove(hull.size() - 1);
    }
    return hull;
  }

  private static double turn(List<Point> hull, Point p) {
    Point a = hull.get(hull.size() - 2);
    Point b = hull.get(hull.size() - 1);
    return b.minus(a).cross(p.minus(a));
  }
}
