package longpoint.framing.stick;

import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;

/**
 * Where two valleys meet at the end of a ridge that comes to nothing else, nothing would hold them:
 * one runs on up the plane to the next ridge or hip, and carries the other and the ridge (US Navy
 * NAVEDTRA 14044 vol. 2, p. 2-28).
 */
final class SupportingValleys {
  private final double thickness;
  private final double near;

  private SupportingValleys(double thickness, double near) {
    this.thickness = thickness;
    this.near = near;
  }

  /**
   * @param sticks of one part
   * @param near ends closer than this meet
   */
  static List<Stick> runOn(List<Stick> sticks, double thickness, double near) {
    SupportingValleys valleys = new SupportingValleys(thickness, near);
    List<Stick> all = List.copyOf(sticks);
    for (Stick ridge : sticks) {
      if (ridge.kind() == RafterKind.RIDGE) {
        all = valleys.carried(all, ridge, ridge.head());
        all = valleys.carried(all, ridge, ridge.foot());
      }
    }
    return all;
  }

  private List<Stick> carried(List<Stick> sticks, Stick ridge, Point end) {
    List<Stick> valleys =
        sticks.stream()
            .filter(s -> s.kind() == RafterKind.VALLEY && s.head().distance(end) < near)
            .toList();
    boolean alone =
        sticks.stream()
            .filter(s -> s.kind() == RafterKind.RIDGE || s.kind() == RafterKind.HIP)
            .filter(s -> s != ridge && !s.inPlan().equals(ridge.inPlan()))
            .noneMatch(s -> s.inPlan().distance(end) < thickness);
    if (valleys.size() != 2 || !alone) {
      return sticks;
    }
    Stick valley = valleys.get(0);
    Optional<Stick> on = next(sticks, valley, end);
    if (on.isEmpty()) {
      return sticks;
    }
    Point up = valley.up();
    Point head = meeting(valley, on.get());
    Bearing bearing = on.get().kind() == RafterKind.RIDGE ? Bearing.RIDGE : Bearing.HIP;
    Stick longer =
        valley
            .between(valley.foot(), head)
            .withHead(Joint.against(bearing, thickness, up, up, on.get().up()));
    List<Stick> changed =
        sticks.stream()
            .map(
                s ->
                    s == valley
                        ? longer
                        : s == valleys.get(1)
                            ? against(s, longer)
                            : s.inPlan().equals(ridge.inPlan()) && s.kind() == RafterKind.RIDGE
                                ? ridgeAgainst(s, longer, end)
                                : s)
            .toList();
    Stick runsOn = longer.between(end, head);
    return Crossing.cut(changed, runsOn, thickness, s -> true);
  }

  private Stick against(Stick s, Stick valley) {
    return s.withHead(Joint.against(Bearing.VALLEY, thickness, s.up(), s.up(), valley.up()));
  }

  private Stick ridgeAgainst(Stick ridge, Stick valley, Point end) {
    boolean head = ridge.head().distance(end) < ridge.foot().distance(end);
    Point out = head ? ridge.up() : ridge.up().times(-1);
    Joint joint = Joint.against(Bearing.VALLEY, thickness, out, ridge.up(), valley.up());
    return head ? ridge.withHead(joint) : ridge.withFoot(joint);
  }

  /** The first ridge or hip that a valley comes to beyond its end. */
  private Optional<Stick> next(List<Stick> sticks, Stick valley, Point end) {
    Optional<Stick> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Stick s : sticks) {
      if (s.kind() == RafterKind.RIDGE || s.kind() == RafterKind.HIP) {
        double sine = valley.up().unit().cross(s.up());
        double away = s.foot().minus(end).cross(s.up()) / sine;
        if (Math.abs(sine) > 1e-6 * s.up().length() && away > 2 * thickness && away < least) {
          Point at = meeting(valley, s);
          if (s.inPlan().distance(at) < near) {
            least = away;
            best = Optional.of(s);
          }
        }
      }
    }
    return best;
  }

  private static Point meeting(Stick valley, Stick other) {
    double share =
        other.foot().minus(valley.foot()).cross(other.up()) / valley.up().cross(other.up());
    return valley.foot().plus(valley.up().times(share));
  }
}
