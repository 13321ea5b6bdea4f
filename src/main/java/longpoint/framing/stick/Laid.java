package longpoint.framing.stick;

import java.util.List;
import longpoint.plan.Problem;

/** Rafters, and what is to be said of those that were left out. */
public record Laid(List<Rafter> rafters, List<Problem> problems) {
  public Laid {
    rafters = List.copyOf(rafters);
    problems = List.copyOf(problems);
  }
}
