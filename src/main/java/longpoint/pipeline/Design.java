package longpoint.pipeline;

import java.util.List;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.RoofSurface;

/**
 * A plan with everything worked out from it.
 *
 * @param problems of every stage, worst first, then in the order found
 */
public record Design(Plan plan, RoofSurface surface, List<Problem> problems) {
  public Design {
    problems = List.copyOf(problems);
  }

  /** Whether any part of the plan could not be worked out. */
  public boolean hasErrors() {
    return problems.stream().anyMatch(p -> p.level() == Problem.Level.ERROR);
  }
}
