package longpoint.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import longpoint.packet.FiguresJson;
import longpoint.packet.FiguresText;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.wording.Language;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "figures",
    description = "Prints every figure of a plan.",
    mixinStandardHelpOptions = true)
final class FiguresCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PLAN", description = "The plan file.")
  private Path file;

  @Option(names = "--json", description = "For programs: unrounded, in the plan's unit.")
  private boolean json;

  @Mixin private SpokenLanguage language;

  @Mixin private WallChoice walls;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Optional<Plan> plan =
        PlanReading.read(file, language.beforePlan(), spec.commandLine().getErr());
    if (plan.isEmpty()) {
      return ExitCode.UNUSABLE;
    }
    Language said = language.of(plan.get());
    Design design = Pipeline.solve(walls.of(plan.get(), said)).spoken(said);
    out.print(json ? FiguresJson.of(design, said) : FiguresText.of(design));
    out.flush();
    return design.hasErrors() ? ExitCode.PLAN_HAS_ERRORS : ExitCode.WELL;
  }
}
