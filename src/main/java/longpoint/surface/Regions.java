package longpoint.surface;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.operation.overlayng.CoverageUnion;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Makes one region of cells that touch, with no corner that is not one. */
final class Regions {
  private Regions() {}

  /**
   * The regions of some cells.
   *
   * @param cells of one ground, so that touching ones share their corners
   * @param ends where roof lines end: corners there stay even if they lie straight
   */
  static List<Region> dissolve(List<Polygon> cells, Set<Point> ends, Grain grain) {
    if (cells.isEmpty()) {
      return List.of();
    }
    Geometry together = together(cells);
    List<Region> regions = new ArrayList<>();
    for (Region region : Jts.regions(together)) {
      List<Ring> holes =
          region.holes().stream()
              .map(h -> tidy(h, ends, grain.near()))
              .sorted(Comparator.comparing(h -> h.corner(0), Regions::order))
              .toList();
      regions.add(new Region(tidy(region.shell(), ends, grain.near()), holes));
    }
    regions.sort(Comparator.comparing(r -> r.shell().corner(0), Regions::order));
    return List.copyOf(regions);
  }

  /** Cells of one ground need no overlay; only cells that rounding has made overlap do. */
  private static Geometry together(List<Polygon> cells) {
    try {
      return CoverageUnion.union(Jts.FACTORY.createMultiPolygon(cells.toArray(Polygon[]::new)));
    } catch (TopologyException overlapping) {
      return OverlayNGRobust.union(List.<Geometry>copyOf(cells));
    }
  }

  /** Without straight corners, starting at the leftmost, lowest one. */
  private static Ring tidy(Ring ring, Set<Point> ends, double near) {
    List<Point> points = new ArrayList<>(ring.points());
    int first = points.indexOf(points.stream().min(Regions::order).orElseThrow());
    Collections.rotate(points, -first);
    for (int i = 1; i < points.size() && points.size() > 3; ) {
      Point before = points.get(i - 1);
      Point here = points.get(i);
      Point after = points.get((i + 1) % points.size());
      if (!ends.contains(here) && new Segment(before, after).distance(here) <= near) {
        points.remove(i);
      } else {
        i++;
      }
    }
    return new Ring(points);
  }

  private static int order(Point a, Point b) {
    int byX = Double.compare(a.x(), b.x());
    return byX != 0 ? byX : Double.compare(a.y(), b.y());
  }
}
