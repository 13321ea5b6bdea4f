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
      for (Segment place : r.places()) {
        for (Region other : wood) {
          assertThat(area(r, place, other))
              .as("%s in %s", r.mark(), names.get(wood.indexOf(other)))
              .isLessThan(DUST);
        }
        wood.add(ground(r, place));
        names.add(r.mark());
      }
    }
  }

  private static double area(Rafter r, Segment place, Region other) {
    Region own = ground(r, place);
    return Overlay.common(List.of(own), List.of(other)).stream().mapToDouble(Region::area).sum();
  }

  /** Only mirrored places tell which hand they are; where hands differ the end is drawn blunt. */
  static Region ground(Rafter r, Segment place) {
    Point up = place.direction();
    Point left = up.left();
    double half = r.thickness() / 2;
    Point foot = place.from().plus(up.times(r.foot().off()));
    Point head = place.to().minus(up.times(r.head().off()));
    double lowest = Math.min(r.head().left().reach(), r.head().right().reach());
    boolean hands = r.mirrored() > 0;
    double l = hands ? lowest : r.head().left().reach();
    double q = hands ? lowest : r.head().right().reach();
    List<Point> ring = new ArrayList<>();
    ring.add(foot.minus(left.times(half)));
    ring.add(head.minus(left.times(half)).plus(up.times(q)));
    if (!hands || !r.head().isDouble()) {
      ring.add(pointOf(r, head, up, left));
    }
    ring.add(head.plus(left.times(half)).plus(up.times(l)));
    ring.add(foot.plus(left.times(half)));
    return new Region(new Ring(ring), List.of());
  }

  private static Point pointOf(Rafter r, Point head, Point up, Point left) {
    RafterEnd end = r.head();
    double p = end.point();
    double half = r.thickness() / 2;
    double reach =
        p == 0 || Math.abs(p) >= half
            ? 0
            : p > 0 ? -p * end.right().reach() / half : p * end.left().reach() / half;
    return head.plus(left.times(Math.abs(p) >= half ? 0 : p)).plus(up.times(reach));
  }
}
