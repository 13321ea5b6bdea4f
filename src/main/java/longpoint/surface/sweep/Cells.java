package longpoint.surface.sweep;

import java.util.Arrays;

/**
 * Finds what may lie near a point: segments are filed under the squares of a grid they pass
 * through. Squares share drawers, so an answer may hold strangers (and one item twice), but never
 * lacks a neighbour.
 */
final class Cells {
  private final double size;
  private final int[] head;
  private int count;
  private int[] next;
  private int[] item;

  Cells(double size, int expected) {
    this.size = size;
    head = new int[Integer.highestOneBit(Math.max(16, expected)) << 1];
    Arrays.fill(head, -1);
    next = new int[Math.max(16, expected)];
    item = new int[next.length];
  }

  /** Files a segment, widened by a margin on every side. */
  void put(int what, double ax, double ay, double bx, double by, double margin) {
    double lowY = Math.min(ay, by);
    double highY = Math.max(ay, by);
    long lastRow = cell(highY + margin);
    for (long row = cell(lowY - margin); row <= lastRow; row++) {
      // The part of the segment in this row of squares, by shares of its height.
      double from = Math.max(lowY, row * size - margin);
      double to = Math.min(highY, (row + 1) * size + margin);
      double xFrom = at(ax, ay, bx, by, from);
      double xTo = at(ax, ay, bx, by, to);
      if (lowY == highY) {
        xFrom = ax;
        xTo = bx;
      }
      long lastColumn = cell(Math.max(xFrom, xTo) + 2 * margin);
      for (long column = cell(Math.min(xFrom, xTo) - 2 * margin); column <= lastColumn; column++) {
        add(drawer(column, row), what);
      }
    }
  }

  private static double at(double ax, double ay, double bx, double by, double y) {
    return by == ay ? ax : ax + (bx - ax) * Math.max(0, Math.min(1, (y - ay) / (by - ay)));
  }

  private long cell(double at) {
    return (long) Math.floor(at / size);
  }

  private int drawer(long column, long row) {
    long mixed = column * 0x9E3779B97F4A7C15L ^ row * 0xC2B2AE3D27D4EB4FL;
    return (int) ((mixed ^ mixed >>> 29) * 0x9E3779B97F4A7C15L >>> 33) & head.length - 1;
  }

  private void add(int drawer, int what) {
    if (count == next.length) {
      next = Arrays.copyOf(next, 2 * count);
      item = Arrays.copyOf(item, 2 * count);
    }
    next[count] = head[drawer];
    item[count] = what;
    head[drawer] = count++;
  }

  /** The first entry of the square a point lies in, or -1. */
  int first(double x, double y) {
    return head[drawer(cell(x), cell(y))];
  }

  int after(int entry) {
    return next[entry];
  }

  int item(int entry) {
    return item[entry];
  }
}
