package longpoint.deck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import longpoint.geometry.Overlay;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * Roof planes that lie flush beside each other and are sheathed as one, as the two sides of a
 * recess in a wall: a sheet runs on across the seam.
 *
 * @param whole all of them as one plane, under the id of the first
 * @param ids of all of them, in the order of the roof
 */
record FlushPlanes(RoofPlane whole, List<String> ids) {

  /**
   * How far apart two planes may be, as a share of their size, and still be flush: rounding only.
   */
  private static final double FLUSH = 1e-7;

  FlushPlanes {
    ids = List.copyOf(ids);
  }

  /** Every plane of the roof in exactly one group, in the order of the roof. */
  static List<FlushPlanes> of(RoofSurface surface) {
    List<FlushPlanes> groups = new ArrayList<>();
    for (RoofPlane plane : surface.planes()) {
      FlushPlanes group = new FlushPlanes(plane, List.of(plane.id()));
      for (int i = 0; i < groups.size(); ) {
        if (groups.get(i).takes(group.whole)) {
          group = groups.remove(i).with(group);
        } else {
          i++;
        }
      }
      groups.add(group);
    }
    List<String> order = surface.planes().stream().map(RoofPlane::id).toList();
    groups.sort(Comparator.comparingInt(g -> order.indexOf(g.ids.get(0))));
    return groups;
  }

  private boolean takes(RoofPlane other) {
    return whole.part().equals(other.part()) && flush(other) && touches(other);
  }

  private boolean flush(RoofPlane other) {
    double size = 0;
    double off = 0;
    for (Region region : ground(other)) {
      size = Math.max(size, region.shell().perimeter());
      for (Point p : region.shell().points()) {
        off = Math.max(off, Math.abs(whole.plane().heightAt(p) - other.plane().heightAt(p)));
      }
    }
    return off <= FLUSH * size && slant(other) <= FLUSH;
  }

  private double slant(RoofPlane other) {
    return Math.hypot(whole.plane().a() - other.plane().a(), whole.plane().b() - other.plane().b());
  }

  private boolean touches(RoofPlane other) {
    List<Region> both = Stream.concat(ground(whole).stream(), ground(other).stream()).toList();
    int apart = Overlay.union(ground(whole)).size() + Overlay.union(ground(other)).size();
    return Overlay.union(both).size() < apart;
  }

  private FlushPlanes with(FlushPlanes other) {
    RoofPlane joined =
        new RoofPlane(
            whole.id(),
            whole.part(),
            whole.edge(),
            whole.plane(),
            together(whole.visible(), other.whole.visible()),
            together(whole.covered(), other.whole.covered()),
            together(whole.sheltered(), other.whole.sheltered()));
    return new FlushPlanes(joined, Stream.concat(ids.stream(), other.ids.stream()).toList());
  }

  private static List<Region> together(List<Region> a, List<Region> b) {
    return Overlay.union(Stream.concat(a.stream(), b.stream()).toList());
  }

  private static List<Region> ground(RoofPlane plane) {
    return Stream.concat(plane.visible().stream(), plane.covered().stream()).toList();
  }
}
