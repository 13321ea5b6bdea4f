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
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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

  @Option(
      names = "--language",
      paramLabel = "LANGUAGE",
      defaultValue = "en",
      description = "Language of what is wrong and of its cure: en or fr. Left out, en.")
  private String language;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Language said =
        Language.of(language)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(), "--language is en or fr, not " + language + "."));
    Optional<Plan> plan = PlanReading.read(file, said, spec.commandLine().getErr());
    if (plan.isEmpty()) {
      return ExitCode.UNUSABLE;
    }
    Design design = Pipeline.solve(plan.get());
    out.print(json ? FiguresJson.of(design, said) : FiguresText.of(design, said));
    out.flush();
    return design.hasErrors() ? ExitCode.PLAN_HAS_ERRORS : ExitCode.WELL;
  }
}
