package longpoint.framing.run;

import java.util.ArrayList;
import java.util.List;
import longpoint.plan.Frame;
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
      if (m.manner() == Meeting.Manner.SHED
          && frame.method() == Frame.Method.TRUSS
          && !m.seatsTrusses()) {
        seated = seated.withPart(m.upper().part().withFrame(frame.withMethod(Frame.Method.RAFTER)));
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
}
