package longpoint.cli;

import longpoint.field.built.BuiltPlan;
import longpoint.field.built.BuiltWalls;
import longpoint.plan.Plan;
import longpoint.wording.Language;
import picocli.CommandLine.Option;

/** Which walls a command works to. */
final class WallChoice {
  @Option(
      names = "--walls",
      paramLabel = "WALLS",
      description =
          "Walls to work to: ${COMPLETION-CANDIDATES}. planned: as drawn; taped: every corner where"
              + " the readings have it; trued: straight, at their drawn angles, where they stand on"
              + " the average. Left out, planned.")
  private BuiltPlan.Walls walls = BuiltPlan.Walls.PLANNED;

  /** The plan with those walls, and a title that says so. */
  Plan of(Plan plan, Language language) {
    if (walls == BuiltPlan.Walls.PLANNED || plan.onSite().walls().isEmpty()) {
      return plan;
    }
    Plan built = BuiltPlan.of(plan, BuiltWalls.of(plan), walls);
    String as = SpokenLanguage.text(language, "walls." + walls.key());
    return built.withTitle(SpokenLanguage.text(language, "walls.title", plan.title(), as).strip());
  }
}
