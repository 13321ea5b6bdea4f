package longpoint.pipeline;

import longpoint.field.OnSiteCheck;
import longpoint.field.built.AsBuiltCheck;
import longpoint.field.built.BuiltPlan;
import longpoint.field.built.BuiltWalls;
import longpoint.field.supplied.SupplierCheck;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.surface.RoofMemory;
import longpoint.surface.RoofSurface;

/** The last stage: what was measured and delivered, held against what was worked out. */
final class SiteChecks {
  private SiteChecks() {}

  /** What can be told at once; nothing is solved again. */
  static OnSiteCheck quick(Plan plan, FramingSet framing) {
    return new OnSiteCheck(
        AsBuiltCheck.seated(plan, BuiltWalls.of(plan), framing), SupplierCheck.of(plan, framing));
  }

  /** With roof and frame worked out once more, for the walls as built, where they were taped. */
  static OnSiteCheck whole(Plan plan, RoofSurface surface, FramingSet framing) {
    OnSiteCheck check = quick(plan, framing);
    if (check.walls().walls().isEmpty()) {
      return check;
    }
    Plan built = BuiltPlan.of(plan, check.walls().walls(), BuiltPlan.Walls.TRUED);
    RoofSurface builtSurface = Roof.solve(built, new RoofMemory());
    FramingSet builtFraming = Framing.solve(built, builtSurface);
    return new OnSiteCheck(
        check.walls().against(plan, surface, framing, built, builtSurface, builtFraming),
        check.trusses());
  }
}
