package longpoint.planfile;

import java.util.List;
import java.util.Objects;
import longpoint.plan.Plan;
import longpoint.plan.Problem;

/**
 * A plan as opened from a file.
 *
 * @param notes what was odd about the file and what was done about it
 * @param source what kind of file it was
 */
public record Opened(Plan plan, List<Problem> notes, Source source) {
  /** What a plan was opened from. */
  public enum Source {
    /** A plan file: saving writes it over. */
    PLAN,
    /** A sheet somebody was sent: saving must ask for a file of its own. */
    SHEET
  }

  public Opened {
    Objects.requireNonNull(plan);
    notes = List.copyOf(notes);
    Objects.requireNonNull(source);
  }
}
