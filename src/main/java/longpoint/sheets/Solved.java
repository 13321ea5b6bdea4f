package longpoint.sheets;

import java.util.List;
import longpoint.deck.DeckPlan;
import longpoint.field.OnSiteCheck;
import longpoint.field.SiteAids;
import longpoint.field.chalk.ChalkSheet;
import longpoint.field.lumber.Lumber;
import longpoint.field.takeoff.TakeOff;
import longpoint.framing.FramingSet;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.RoofSurface;

/**
 * A plan with what was worked out from it, as the sheets need it.
 *
 * @param chalk a sheet of lines for each plane that has some
 * @param onSite what was measured and delivered, held against it
 * @param aids figures for lifting, restraint and loads to pass on
 * @param problems of every stage
 */
public record Solved(
    Plan plan,
    RoofSurface surface,
    FramingSet framing,
    DeckPlan deck,
    List<ChalkSheet> chalk,
    TakeOff takeOff,
    Lumber lumber,
    OnSiteCheck onSite,
    SiteAids aids,
    List<Problem> problems) {
  public Solved {
    chalk = List.copyOf(chalk);
    problems = List.copyOf(problems);
  }

  /** A roof of which nothing more has been worked out. */
  public static Solved roof(Plan plan, RoofSurface surface) {
    return new Solved(
        plan,
        surface,
        FramingSet.NONE,
        DeckPlan.NONE,
        List.of(),
        TakeOff.NONE,
        Lumber.NONE,
        OnSiteCheck.NONE,
        SiteAids.NONE,
        surface.problems());
  }

  RoofNames names() {
    return new RoofNames(plan, surface);
  }
}
