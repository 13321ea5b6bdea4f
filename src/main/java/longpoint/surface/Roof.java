package longpoint.surface;

import java.util.List;
import longpoint.plan.Plan;

/** Front door of this package: from a plan to the planes and lines of its roof. */
public final class Roof {
  private Roof() {}

  /**
   * The roof over a plan. What cannot be solved is left out and named in the problems; what can
   * still be solved is there. Never throws for what a user can draw.
   */
  public static RoofSurface solve(Plan plan) {
    return new RoofSurface(List.of(), List.of(), List.of());
  }
}
