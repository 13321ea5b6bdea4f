package longpoint.framing.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/**
 * A square-cornered outline cut into cells by lines through its corners.
 *
 * @param axes directions of the grid
 * @param us lines of equal u, rising
 * @param vs lines of equal v, rising
 * @param inside cell i, j between lines i, i + 1 and j, j + 1
 */
record FloorGrid(Axes axes, double[] us, double[] vs, boolean[][] inside) {

  /**
   * A block of cells.
   *
   * @param u0 first line of u
   * @param u1 last line of u, &gt; u0
   */
  record Block(int u0, int u1, int v0, int v1) {
    boolean holds(int i, int j) {
      return i >= u0 && i < u1 && j >= v0 && j < v1;
    }

    boolean covers(Block other) {
      return u0 <= other.u0 && u1 >= other.u1 && v0 <= other.v0 && v1 >= other.v1;
    }
  }

  /**
   * The grid of an outline.
   *
   * @param same how far two corners may be apart and still stand on one line
   * @return empty if some side is neither along nor square to the first
   */
  static Optional<FloorGrid> of(Ring outline, double same) {
    if (crooked(outline, same) >= 0) {
      return Optional.empty();
    }
    Axes axes = new Axes(outline.corner(0), outline.side(0).direction());
    double[] us = lines(outline.points().stream().mapToDouble(axes::u).sorted().toArray(), same);
    double[] vs = lines(outline.points().stream().mapToDouble(axes::v).sorted().toArray(), same);
    boolean[][] inside = new boolean[us.length - 1][vs.length - 1];
    for (int i = 0; i + 1 < us.length; i++) {
      for (int j = 0; j + 1 < vs.length; j++) {
        inside[i][j] = holds(outline, axes, (us[i] + us[i + 1]) / 2, (vs[j] + vs[j + 1]) / 2);
      }
    }
    return Optional.of(new FloorGrid(axes, us, vs, inside));
  }

  /** The first side neither along nor square to side 0; −1 if there is none. */
  static int crooked(Ring outline, double same) {
    Point along = outline.side(0).direction();
    for (int i = 0; i < outline.size(); i++) {
      Point step = outline.side(i).to().minus(outline.side(i).from());
      if (Math.min(Math.abs(along.dot(step)), Math.abs(along.cross(step))) > same) {
        return i;
      }
    }
    return -1;
  }

  private static double[] lines(double[] sorted, double same) {
    List<Double> lines = new ArrayList<>();
    for (double x : sorted) {
      if (lines.isEmpty() || x - lines.get(lines.size() - 1) > same) {
        lines.add(x);
      }
    }
    return lines.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Even-odd rule along u; cell middles never stand on a line. */
  private static boolean holds(Ring outline, Axes axes, double u, double v) {
    boolean in = false;
    for (int i = 0; i < outline.size(); i++) {
      double v0 = axes.v(outline.corner(i));
      double v1 = axes.v(outline.corner(i + 1));
      if (v0 > v != v1 > v && axes.u(outline.corner(i)) > u) {
        in = !in;
      }
    }
    return in;
  }

  boolean contains(Block b, Point p) {
    return away(b, p) == 0;
  }

  /** How far outside a block a place lies; 0 inside. */
  double away(Block b, Point p) {
    double u = axes.u(p);
    double v = axes.v(p);
    return Math.hypot(
        Math.max(0, Math.max(us[b.u0()] - u, u - us[b.u1()])),
        Math.max(0, Math.max(vs[b.v0()] - v, v - vs[b.v1()])));
  }

  /** A place in a block and, where there is one, in none of the others. */
  Point own(Block b, List<Block> others) {
    for (int i = b.u0(); i < b.u1(); i++) {
      for (int j = b.v0(); j < b.v1(); j++) {
        Block cell = new Block(i, i + 1, j, j + 1);
        if (others.stream().noneMatch(o -> !o.equals(b) && o.covers(cell))) {
          return middle(cell);
        }
      }
    }
    return middle(b);
  }

  private Point middle(Block b) {
    return axes.at((us[b.u0()] + us[b.u1()]) / 2, (vs[b.v0()] + vs[b.v1()]) / 2);
  }

  /** Blocks wholly inside that no larger such block covers. */
  List<Block> largest() {
    List<Block> all = new ArrayList<>();
    for (int u0 = 0; u0 < inside.length; u0++) {
      for (int v0 = 0; v0 < inside[0].length; v0++) {
        int vMost = inside[0].length;
        for (int u1 = u0 + 1; u1 <= inside.length && vMost > v0; u1++) {
          int v1 = v0;
          while (v1 < vMost && inside[u1 - 1][v1]) {
            v1++;
          }
          vMost = v1;
          if (v1 > v0) {
            all.add(new Block(u0, u1, v0, v1));
          }
        }
      }
    }
    return all.stream()
        .filter(b -> all.stream().noneMatch(c -> !c.equals(b) && c.covers(b)))
        .toList();
  }

  /**
   * What is left beside a block, as blocks that hang together.
   *
   * @return empty if some piece is not a rectangle
   */
  Optional<List<Block>> beside(Block taken) {
    boolean[][] left = new boolean[inside.length][inside[0].length];
    for (int i = 0; i < left.length; i++) {
      for (int j = 0; j < left[0].length; j++) {
        left[i][j] = inside[i][j] && !taken.holds(i, j);
      }
    }
    List<Block> pieces = new ArrayList<>();
    for (int i = 0; i < left.length; i++) {
      for (int j = 0; j < left[0].length; j++) {
        if (left[i][j]) {
          Block piece = grow(left, i, j);
          if (!clear(left, piece)) {
            return Optional.empty();
          }
          pieces.add(piece);
        }
      }
    }
    return Optional.of(pieces);
  }

  private static Block grow(boolean[][] cells, int i, int j) {
    int u1 = i;
    while (u1 < cells.length && cells[u1][j]) {
      u1++;
    }
    int v1 = j;
    while (v1 < cells[0].length && cells[i][v1]) {
      v1++;
    }
    return new Block(i, u1, j, v1);
  }

  /** Takes a piece out; false if a cell of it is missing or a further cell touches it. */
  private static boolean clear(boolean[][] cells, Block b) {
    boolean whole = true;
    for (int i = b.u0(); i < b.u1(); i++) {
      for (int j = b.v0(); j < b.v1(); j++) {
        whole &= cells[i][j];
        cells[i][j] = false;
      }
    }
    for (int i = b.u0(); i < b.u1(); i++) {
      whole &= !at(cells, i, b.v0() - 1) && !at(cells, i, b.v1());
    }
    for (int j = b.v0(); j < b.v1(); j++) {
      whole &= !at(cells, b.u0() - 1, j) && !at(cells, b.u1(), j);
    }
    return whole;
  }

  private static boolean at(boolean[][] cells, int i, int j) {
    return i >= 0 && j >= 0 && i < cells.length && j < cells[0].length && cells[i][j];
  }
}
