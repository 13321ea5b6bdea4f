package longpoint.deck;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Overlay;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/**
 * Joins what is too narrow to cut to the neighbour in its course that it shares most of its outline
 * with. Such scraps are what is left where a hip or valley crosses the corner of a sheet a hair
 * beside it.
 */
final class Scraps {
  private Scraps() {}

  static List<Laying.Cell> joined(List<Laying.Cell> cells, Panel panel) {
    List<Laying.Cell> kept = new ArrayList<>(cells);
    for (int i = 0; i < kept.size(); ) {
      Laying.Cell scrap = kept.get(i);
      int to = scrap(scrap.outline(), panel) ? neighbour(kept, i, panel) : -1;
      if (to < 0) {
        i++;
        continue;
      }
      Laying.Cell into = kept.get(to);
      List<Region> one = Overlay.union(List.of(into.outline(), scrap.outline()));
      if (one.size() != 1) {
        i++;
        continue;
      }
      kept.set(to, new Laying.Cell(into.course(), one.get(0)));
      kept.remove(i);
    }
    return List.copyOf(kept);
  }

  private static boolean scrap(Region region, Panel panel) {
    Bounds bounds = region.shell().bounds();
    return Math.min(bounds.width(), bounds.height()) < panel.sliver();
  }

  private static int neighbour(List<Laying.Cell> cells, int of, Panel panel) {
    int best = -1;
    double most = panel.rounding();
    for (int i = 0; i < cells.size(); i++) {
      if (i != of
          && cells.get(i).course() == cells.get(of).course()
          && near(cells.get(i).outline(), cells.get(of).outline(), panel)) {
        double shared =
            shared(cells.get(i).outline().shell(), cells.get(of).outline().shell(), panel);
        if (shared > most && fits(cells.get(i), cells.get(of), panel)) {
          most = shared;
          best = i;
        }
      }
    }
    return best;
  }

  private static boolean near(Region a, Region b, Panel panel) {
    Bounds box = a.shell().bounds().grown(panel.rounding());
    Bounds other = b.shell().bounds();
    return other.minX() <= box.maxX()
        && other.maxX() >= box.minX()
        && other.minY() <= box.maxY()
        && other.maxY() >= box.minY();
  }

  /** A scrap must not make a piece longer than a sheet. */
  private static boolean fits(Laying.Cell into, Laying.Cell scrap, Panel panel) {
    Bounds both = into.outline().shell().bounds().with(scrap.outline().shell().bounds());
    return both.width() <= panel.length() + panel.rounding();
  }

  private static double shared(Ring a, Ring b, Panel panel) {
    double sum = 0;
    for (int i = 0; i < a.size(); i++) {
      for (int j = 0; j < b.size(); j++) {
        sum += overlap(a.side(i), b.side(j), panel);
      }
    }
    return sum;
  }

  private static double overlap(Segment s, Segment t, Panel panel) {
    if (s.length() <= panel.rounding()
        || Math.abs(s.offset(t.from())) > panel.rounding()
        || Math.abs(s.offset(t.to())) > panel.rounding()) {
      return 0;
    }
    Point ends = new Point(s.along(t.from()), s.along(t.to()));
    double from = Math.max(0, Math.min(ends.x(), ends.y()));
    double to = Math.min(s.length(), Math.max(ends.x(), ends.y()));
    return Math.max(0, to - from);
  }
}
