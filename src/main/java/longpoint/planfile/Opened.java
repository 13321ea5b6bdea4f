package longpoint.planfile;

import java.util.List;
import java.util.Objects;
import longpoint.plan.Plan;
import longpoint.plan.Problem;

/**
 * A plan as opened from a file.
 *
 * @param notes what was odd about the file and what was done about it
 */
public record Opened(Plan plan, List<Problem> notes) {
  public Opened {
    Objects.requireNonNull(plan);
    notes = List.copyOf(notes);
  }
}
