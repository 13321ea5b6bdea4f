package longpoint.pipeline;

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
import longpoint.wording.Language;

/**
 * A plan with everything worked out from it.
 *
 * @param onSite what was measured and delivered, held against it
 * @param aids figures for lifting, restraint and loads to pass on
 * @param problems of every stage, worst first, then in the order found
 */
public record Design(
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
  public Design {
    chalk = List.copyOf(chalk);
    problems = List.copyOf(problems);
  }

  /** A plan before anything is worked out. */
  public static Design blank(Plan plan) {
    RoofSurface none = new RoofSurface(List.of(), List.of(), List.of());
    return new Design(
        plan,
        none,
        FramingSet.NONE,
        DeckPlan.NONE,
        List.of(),
        TakeOff.NONE,
        Lumber.NONE,
        OnSiteCheck.NONE,
        SiteAids.NONE,
        List.of());
  }

  /** The design with everything made of it written in a language; no figure changes. */
  public Design spoken(Language language) {
    return of(plan.spoken(language));
  }

  /** The design in the plan's own language, or in this one where the plan names none. */
  public Design spokenElse(Language language) {
    return of(plan.spokenElse(language));
  }

  private Design of(Plan worded) {
    return new Design(
        worded, surface, framing, deck, chalk, takeOff, lumber, onSite, aids, problems);
  }

  /** Whether any part of the plan could not be worked out. */
  public boolean hasErrors() {
    return problems.stream().anyMatch(p -> p.level() == Problem.Level.ERROR);
  }
}
