package longpoint.framing.run;

import java.util.ArrayList;
import java.util.List;
import longpoint.plan.Edge;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.wording.Phrase;

/**
 * Shed roofs that are to have trusses but whose open side lies over another roof, as that of a shed
 * dormer does: a mono truss has nothing to stand on there, a rafter runs on down to the deck.
 *
 * @param plan with those parts framed with rafters
 * @param problems one for each such part
 */
public record ShedSeats(Plan plan, List<Problem> problems) {
  public ShedSeats {
    problems = List.copyOf(problems);
  }

  /**
   * @param meetings of the plan as it was drawn
   */
  public static ShedSeats of(Plan plan, List<Meeting> meetings) {
    Plan seated = plan;
    List<Problem> problems = new ArrayList<>();
    for (Meeting m : meetings) {
      Frame frame = m.upper().part().frame();
      if (m.manner().isShed() && frame.method() == Frame.Method.TRUSS && !m.seatsTrusses()) {
        seated = seated.withPart(rafters(plan, m.upper().part()));
        problems.add(
            Problem.warning(
                m.upper().part().id(),
                Phrase.of(
                    "framing.shed.seat",
                    PlaceName.of(m.upper().part()),
                    PlaceName.of(m.lower().part()))));
      }
    }
    return new ShedSeats(seated, problems);
  }

  /** With rafters beneath the roof that was solved for trusses: its heels stay. */
  private static Part rafters(Plan plan, Part part) {
    List<Edge> edges =
        plan.sides(part).stream().map(s -> part.edges().get(s.index()).withHeel(s.heel())).toList();
    return part.withShape(part.outline(), part.holes(), edges)
        .withFrame(part.frame().withMethod(Frame.Method.RAFTER));
  }
}
