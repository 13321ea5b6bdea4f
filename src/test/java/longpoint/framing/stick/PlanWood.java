package longpoint.framing.stick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Overlay;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/** The ground that rafters cover, cut as the list says, and whether any two share it. */
final class PlanWood {
  private static final double DUST = 1e-3;

  private PlanWood() {}

  static void check(List<Rafter> rafters) {
    List<Region> wood = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (Rafter r : rafters) {
      for (int i = 0; i < r.places().size(); i++) {
        Region own = ground(r, i);
        for (int k = 0; k < wood.size(); k++) {
          assertThat(shared(own, wood.get(k)))
              .as(r.mark() + " in " + names.get(k))
              .isLessThan(DUST);
        }
        wood.add(own);
        names.add(r.mark());
      }
    }
  }

  static double shared(Region a, Region b) {
    return Overlay.common(List.of(a), List.of(b)).stream().mapToDouble(Region::area).sum();
  }

  /** Without its tail. */
  static Region ground(Rafter r, int i) {
    Segment place = r.places().get(i);
    RafterEnd end = r.headAt(i);
    Point up = place.direction();
    Point left = up.left();
    double half = r.thickness() / 2;
    Point foot = place.from().plus(up.times(Math.max(0, r.foot().off())));
    Point head = place.to().minus(up.times(end.off()));
    List<Point> ring = new ArrayList<>();
    ring.add(
        foot.minus(left.times(half)).plus(up.times(Math.max(0, -r.footAt(i).right().reach()))));
    ring.add(head.minus(left.times(half)).plus(up.times(end.right().reach())));
    if (end.isDouble() && Math.abs(end.point()) < half) {
      ring.add(head.plus(left.times(end.point())).plus(up.times(end.pointReach(half))));
    }
    ring.add(head.plus(left.times(half)).plus(up.times(end.left().reach())));
    ring.add(foot.plus(left.times(half)).plus(up.times(Math.max(0, -r.footAt(i).left().reach()))));
    return new Region(new Ring(ring), List.of());
  }
}
