package longpoint.plan;

import java.util.List;

/** Says in words what is wrong with a plan, naming the side and the cure. */
public final class PlanCheck {
  private PlanCheck() {}

  /** Problems in the order of parts and sides; empty when all is well. */
  public static List<Problem> check(Plan plan) {
    return List.of();
  }
}
