package longpoint.deck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longpoint.geometry.Bounds;

/**
 * The pieces of one strip between joints. Each stretch is cut once and kept: a search for fewer
 * sheets comes back to the same few stretches thousands of times.
 */
final class Cuts {
  private record Stretch(double left, double right) {}

  private final Strip strip;
  private final Panel panel;
  private final Map<Stretch, List<Laying.Cell>> known = new HashMap<>();

  Cuts(Strip strip, Panel panel) {
    this.strip = strip;
    this.panel = panel;
  }

  /** All pieces, left to right, of a strip broken at these joints. */
  List<Laying.Cell> at(double[] joints) {
    List<Laying.Cell> cells = new ArrayList<>();
    Bounds bounds = strip.bounds();
    double left = bounds.minX() - 1;
    for (int i = 0; i <= joints.length; i++) {
      double right = i == joints.length ? bounds.maxX() + 1 : joints[i];
      cells.addAll(known.computeIfAbsent(new Stretch(left, right), this::cut));
      left = right;
    }
    return cells;
  }

  private List<Laying.Cell> cut(Stretch stretch) {
    return Clip.between(strip.region(), stretch.left, stretch.right, panel).stream()
        .sorted(Comparator.comparingDouble(r -> r.shell().bounds().minX()))
        .map(r -> new Laying.Cell(strip.course(), r))
        .toList();
  }
}
