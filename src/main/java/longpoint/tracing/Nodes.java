package longpoint.tracing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longpoint.geometry.Point;

/** Points that are near each other under one number. */
final class Nodes {
  private record Cell(long x, long y) {}

  private final double tolerance;
  private final Map<Cell, List<Integer>> cells = new HashMap<>();
  private final List<Point> places = new ArrayList<>();
  private final List<Integer> counts = new ArrayList<>();

  Nodes(double tolerance) {
    this.tolerance = tolerance;
  }

  /** The number of a point, that of the first one near it. */
  int number(Point p) {
    long x = (long) Math.floor(p.x() / tolerance);
    long y = (long) Math.floor(p.y() / tolerance);
    for (long i = x - 1; i <= x + 1; i++) {
      for (long j = y - 1; j <= y + 1; j++) {
        for (int node : cells.getOrDefault(new Cell(i, j), List.of())) {
          if (places.get(node).distance(p) <= tolerance) {
            return node;
          }
        }
      }
    }
    int node = places.size();
    places.add(p);
    counts.add(0);
    cells.computeIfAbsent(new Cell(x, y), c -> new ArrayList<>()).add(node);
    return node;
  }

  void count(Point p) {
    int node = number(p);
    counts.set(node, counts.get(node) + 1);
  }

  /** Places that were counted once only. */
  List<Point> once() {
    List<Point> out = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      if (counts.get(i) == 1) {
        out.add(places.get(i));
      }
    }
    return out;
  }

  Point place(int node) {
    return places.get(node);
  }

  int size() {
    return places.size();
  }
}
