package longpoint.framing.gable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.framing.Shop;
import longpoint.framing.run.Bound;
import longpoint.framing.run.Run;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.Plan;

/**
 * What is built on the plate of a shed's high wall, so that its rafters sit there as they do on the
 * low one: studs under a doubled plate. The rafters rise over the run between the outside of the
 * low plate and the inside of the high one (US Navy NAVEDTRA 14044 vol. 2, shed roofs). Mono
 * trusses bring their own high end.
 *
 * @param part id of the part
 * @param run id of the run
 * @param side id of the high wall
 * @param length of the wall and of each of its two plates
 * @param rise from the part's plate to the top of the wall's own
 * @param stud length to cut, square at both ends; 0 where the plates alone fill the rise
 * @param places centre of each stud from the wall's end that its rafters are laid out from
 */
public record HighWall(
    String part,
    String run,
    String side,
    double length,
    double rise,
    double stud,
    List<Double> places) {
  public HighWall {
    places = List.copyOf(places);
  }

  /** The high wall of a run of rafters that slopes one way; empty for any other. */
  public static Optional<HighWall> of(Run run, Plan plan) {
    if (run.part().frame().method() != Frame.Method.RAFTER) {
      return Optional.empty();
    }
    return Stream.of(of(run, run.low(), run.high(), plan), of(run, run.high(), run.low(), plan))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<HighWall> of(Run run, Bound eave, Bound high, Plan plan) {
    if (!eave.isEave() || high.kind() != EdgeKind.GABLE || high.side().isEmpty()) {
      return Optional.empty();
    }
    double plate = run.part().frame().choices().sticks().plateWidth(plan.unit());
    double thickness = run.part().frame().thickness();
    double rise = eave.side().orElseThrow().slope().ratio() * (run.width() - plate);
    double stud = rise - 2 * thickness;
    boolean none = stud < Shop.of(plan.unit()).edge();
    return rise < 2 * thickness
        ? Optional.empty()
        : Optional.of(
            new HighWall(
                run.part().id(),
                run.id(),
                high.side().orElseThrow().id(),
                run.length(),
                rise,
                none ? 0 : stud,
                none ? List.of() : places(run, thickness)));
  }

  /** On the rafters' spacing, and flush at both ends. */
  private static List<Double> places(Run run, double thickness) {
    List<Double> places = new ArrayList<>(List.of(thickness / 2));
    double spacing = run.part().frame().spacing();
    for (int k = 1; k * spacing < run.length() - thickness * 3 / 2; k++) {
      places.add(k * spacing);
    }
    places.add(run.length() - thickness / 2);
    return places;
  }
}
