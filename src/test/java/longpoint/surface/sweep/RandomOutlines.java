package longpoint.surface.sweep;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/**
 * Small outlines on a coarse grid, where parallel walls, walls in line and events at one time are
 * the rule. Corners are drawn at random and untangled; half of the outlines are square to the axes.
 */
final class RandomOutlines {
  private static final double[] SPEEDS = {0, 0.5, 1, 2};
  private static final int GRID = 8;

  private final Random random;

  RandomOutlines(long seed) {
    random = new Random(seed);
  }

  Outline next() {
    while (true) {
      Ring ring = random.nextBoolean() ? untangled() : square();
      if (ring == null) {
        continue;
      }
      List<Ring> rings = new ArrayList<>(List.of(ring));
      if (random.nextInt(6) == 0) {
        Ring hole = random.nextBoolean() ? untangled() : square();
        if (hole != null) {
          addHole(rings, hole);
        }
      }
      int sides = rings.stream().mapToInt(Ring::size).sum();
      double[] speeds = new double[sides];
      boolean even = random.nextInt(4) == 0;
      boolean moves = false;
      for (int i = 0; i < sides; i++) {
        speeds[i] = even ? 1 : SPEEDS[random.nextInt(SPEEDS.length)];
        moves |= speeds[i] > 0;
      }
      if (moves) {
        return new Outline("random", rings, speeds);
      }
    }
  }

  private void addHole(List<Ring> rings, Ring hole) {
    List<Point> points = new ArrayList<>();
    for (Point p : hole.points()) {
      points.add(new Point(p.x() / 4 + 1 + GRID / 3, p.y() / 4 + 1 + GRID / 3));
    }
    Ring small = new Ring(points).reversed();
    if (simple(List.of(rings.get(0), small)) && inside(rings.get(0), small.corner(0))) {
      rings.add(small);
    }
  }

  private Ring untangled() {
    int n = 3 + random.nextInt(10);
    List<Point> points = new ArrayList<>();
    while (points.size() < n) {
      Point p = new Point(random.nextInt(GRID + 1), random.nextInt(GRID + 1));
      if (!points.contains(p)) {
        points.add(p);
      }
    }
    for (int round = 0; round < 200; round++) {
      boolean crossed = false;
      for (int i = 0; i < n && !crossed; i++) {
        for (int j = i + 2; j < n && !crossed; j++) {
          if (i == 0 && j == n - 1) {
            continue;
          }
          if (meet(points.get(i), points.get(i + 1), points.get(j), points.get((j + 1) % n))) {
            Collections.reverse(points.subList(i + 1, j + 1));
            crossed = true;
          }
        }
      }
      if (!crossed) {
        break;
      }
    }
    return finished(points);
  }

  /** The border of a random heap of grid squares. */
  private Ring square() {
    boolean[][] full = new boolean[GRID + 2][GRID + 2];
    int x = 1 + random.nextInt(GRID);
    int y = 1 + random.nextInt(GRID);
    int steps = 3 + random.nextInt(14);
    full[x][y] = true;
    for (int i = 0; i < steps; i++) {
      boolean flat = random.nextBoolean();
      int by = random.nextBoolean() ? 1 : -1;
      x = Math.max(1, Math.min(GRID, flat ? x + by : x));
      y = Math.max(1, Math.min(GRID, flat ? y : y + by));
      full[x][y] = true;
    }
    for (int i = 1; i <= GRID; i++) {
      for (int j = 1; j <= GRID; j++) {
        if (full[i][j]) {
          return walk(full, i, j);
        }
      }
    }
    return null;
  }

  private Ring walk(boolean[][] full, int i, int j) {
    List<Point> points = new ArrayList<>();
    int x = i;
    int y = j;
    int dx = 0;
    int dy = -1;
    // Start at the top left corner of the first cell, walking down its left side.
    y = j + 1;
    int startX = x;
    int startY = y;
    do {
      points.add(new Point(x, y));
      x += dx;
      y += dy;
      for (int turn = -1; turn <= 2; turn++) {
        int tx = turn == -1 ? dy : turn == 0 ? dx : turn == 1 ? -dy : -dx;
        int ty = turn == -1 ? -dx : turn == 0 ? dy : turn == 1 ? dx : -dy;
        int cx = x + (tx - ty > 0 ? 0 : -1);
        int cy = y + (tx + ty > 0 ? 0 : -1);
        int ox = x + (tx + ty > 0 ? 0 : -1);
        int oy = y + (ty - tx > 0 ? 0 : -1);
        if (full[cx][cy] && !full[ox][oy]) {
          dx = tx;
          dy = ty;
          break;
        }
      }
      if (points.size() > 400) {
        return null;
      }
    } while (x != startX || y != startY);
    boolean keepStraight = random.nextInt(8) == 0;
    List<Point> corners = new ArrayList<>();
    int n = points.size();
    for (int k = 0; k < n; k++) {
      Point a = points.get((k + n - 1) % n);
      Point b = points.get(k);
      Point c = points.get((k + 1) % n);
      if (keepStraight || b.minus(a).cross(c.minus(b)) != 0) {
        corners.add(b);
      }
    }
    return finished(corners);
  }

  private static Ring finished(List<Point> points) {
    if (points.size() < 3) {
      return null;
    }
    Ring ring = new Ring(points);
    ring = ring.counterClockwise() ? ring : ring.reversed();
    return simple(List.of(ring)) ? ring : null;
  }

  private static boolean simple(List<Ring> rings) {
    List<Point[]> sides = new ArrayList<>();
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        sides.add(new Point[] {ring.corner(i), ring.corner(i + 1)});
      }
    }
    for (int i = 0; i < sides.size(); i++) {
      for (int j = i + 1; j < sides.size(); j++) {
        Point[] a = sides.get(i);
        Point[] b = sides.get(j);
        boolean follows = a[1] == b[0];
        boolean leads = b[1] == a[0];
        if (follows || leads) {
          Point[] first = follows ? a : b;
          Point[] second = follows ? b : a;
          Point d = first[1].minus(first[0]);
          Point e = second[1].minus(second[0]);
          if (d.cross(e) == 0 && d.dot(e) < 0) {
            return false;
          }
        } else if (meet(a[0], a[1], b[0], b[1])) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean meet(Point a, Point b, Point c, Point d) {
    int o1 = turn(a, b, c);
    int o2 = turn(a, b, d);
    int o3 = turn(c, d, a);
    int o4 = turn(c, d, b);
    if (o1 != o2 && o3 != o4) {
      return true;
    }
    return on(a, b, c, o1) || on(a, b, d, o2) || on(c, d, a, o3) || on(c, d, b, o4);
  }

  private static boolean on(Point a, Point b, Point p, int turn) {
    return turn == 0 && p.minus(a).dot(p.minus(b)) <= 0;
  }

  private static int turn(Point a, Point b, Point c) {
    return (int) Math.signum(b.minus(a).cross(c.minus(a)));
  }

  private static boolean inside(Ring ring, Point p) {
    boolean in = false;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.corner(i);
      Point b = ring.corner(i + 1);
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        in = !in;
      }
    }
    return in;
  }
}
