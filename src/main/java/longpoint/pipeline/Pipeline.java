package longpoint.pipeline;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import longpoint.plan.Plan;
import longpoint.plan.PlanCheck;
import longpoint.plan.Problem;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;

/** The one way from what the user drew to what the crew needs. */
public final class Pipeline {
  private Pipeline() {}

  /**
   * Works out the whole design. A plan with mistakes gives a design with problems and whatever
   * could still be solved; it never throws for what a user can draw.
   */
  public static Design solve(Plan plan) {
    List<Problem> plain = PlanCheck.check(plan);
    RoofSurface surface = Roof.solve(plan);
    return new Design(plan, surface, worstFirst(plain, surface.problems()));
  }

  private static List<Problem> worstFirst(List<Problem> checked, List<Problem> solved) {
    return Stream.concat(checked.stream(), solved.stream())
        .distinct()
        .sorted(Comparator.comparing(Problem::level))
        .toList();
  }
}
