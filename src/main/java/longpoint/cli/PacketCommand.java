package longpoint.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import longpoint.packet.FiguresText;
import longpoint.packet.Packet;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.planfile.FileTrouble;
import longpoint.sheets.Paper;
import longpoint.wording.Language;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "packet",
    description = "Prints the figures of a plan and writes every drawing and list to a folder.",
    mixinStandardHelpOptions = true)
final class PacketCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PLAN", description = "The plan file.")
  private Path file;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the files; made if it is not there.")
  private Path folder;

  @Option(
      names = "--paper",
      description =
          "Paper of the sheets: ${COMPLETION-CANDIDATES}. Left out, the plan's unit decides.")
  private Paper paper;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Optional<Plan> plan = PlanReading.read(file, err);
    if (plan.isEmpty()) {
      return ExitCode.UNUSABLE;
    }
    Design design = Pipeline.solve(plan.get());
    try {
      Paper sheet = paper == null ? Packet.paperFor(plan.get().unit()) : paper;
      String name = Packet.baseName(file.getFileName().toString());
      List<Path> files = Packet.write(design, sheet, folder, name);
      out.print(FiguresText.of(design));
      out.print("\nFiles\n");
      files.forEach(f -> out.print("  " + f + "\n"));
    } catch (IOException e) {
      err.println(
          "longpoint: cannot write to " + folder + ": " + FileTrouble.of(e).in(Language.ENGLISH));
      return ExitCode.UNUSABLE;
    }
    out.flush();
    return design.hasErrors() ? ExitCode.PLAN_HAS_ERRORS : ExitCode.WELL;
  }
}
