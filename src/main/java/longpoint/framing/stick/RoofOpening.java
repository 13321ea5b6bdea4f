package longpoint.framing.stick;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longpoint.framing.run.Meeting;

/**
 * An opening in a roof of rafters as it is set out. Lengths in plan units.
 *
 * @param part id of the part whose roof it is in
 * @param side id of the wall below it
 * @param dormer id of the part built in it
 * @param from clear side of its doubled rafter, from the wall's left end seen from outside
 * @param clear between the doubled rafters
 * @param lower along the top of a rafter from over the wall's face to the lower face of the lower
 *     header; empty where the dormer's front stands on the wall
 * @param upper the same to the upper header; empty where it is open to the ridge
 */
public record RoofOpening(
    String part,
    String side,
    String dormer,
    double from,
    double clear,
    Optional<Double> lower,
    Optional<Double> upper) {
  public RoofOpening {
    Objects.requireNonNull(lower);
    Objects.requireNonNull(upper);
  }

  /** Every opening of a plan. */
  public static List<RoofOpening> of(List<Meeting> meetings) {
    return meetings.stream().flatMap(m -> Opening.of(m).stream().map(o -> of(m, o))).toList();
  }

  private static RoofOpening of(Meeting m, Opening o) {
    double thickness = m.lower().part().frame().thickness();
    double steep = Math.hypot(1, o.wall().slope().ratio());
    return new RoofOpening(
        o.wall().part(),
        o.wall().id(),
        m.upper().part().id(),
        o.from() + thickness / 2,
        o.to() - o.from() - thickness,
        Optional.of((o.front() - thickness / 2) * steep).filter(up -> o.front() > 0),
        Optional.of((o.top() - thickness / 2) * steep).filter(up -> o.hasUpperHeader()));
  }
}
