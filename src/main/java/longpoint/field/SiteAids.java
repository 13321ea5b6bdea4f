package longpoint.field;

import java.util.List;
import java.util.Objects;
import longpoint.field.lift.Lifts;
import longpoint.field.loads.Loads;
import longpoint.field.restraint.Restraint;
import longpoint.framing.FramingSet;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.RoofSurface;

/**
 * Figures for work that can hurt people. Aids, never engineering: the truss supplier's documents,
 * the local code and licensed practice rule, and a qualified rigger decides how anything is lifted.
 *
 * @param lifts sections to be hoisted
 * @param restraint of the trusses until they are sheathed
 * @param loads to pass on to whoever designs what carries the roof
 */
public record SiteAids(Lifts lifts, Restraint restraint, Loads loads) {
  public static final SiteAids NONE = new SiteAids(Lifts.NONE, Restraint.NONE, Loads.NONE);

  public SiteAids {
    Objects.requireNonNull(lifts);
    Objects.requireNonNull(restraint);
    Objects.requireNonNull(loads);
  }

  public static SiteAids of(Plan plan, RoofSurface surface, FramingSet framing) {
    return new SiteAids(
        Lifts.of(plan, surface, framing),
        Restraint.of(plan, framing),
        Loads.of(plan, surface, framing));
  }

  public List<Problem> problems() {
    return lifts.problems();
  }
}
