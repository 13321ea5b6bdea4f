package longpoint.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import longpoint.packet.FiguresText;
import longpoint.packet.Output;
import longpoint.packet.Packet;
import longpoint.packet.Request;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.planfile.FileTrouble;
import longpoint.sheets.Paper;
import longpoint.units.LengthUnit;
import longpoint.wording.Language;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

  @Option(
      names = "--only",
      split = ",",
      paramLabel = "KIND",
      description = "Kinds of file to write: ${COMPLETION-CANDIDATES}. Left out, all.")
  private Set<Output> only = Set.of();

  @Option(names = "--zip", description = "Also packs all files into one archive.")
  private boolean zip;

  @Option(
      names = "--mail",
      description =
          "Also writes a mail ready to be addressed. It takes along the kinds chosen with --only;"
              + " left out, the PDF, the page for phones, the lists, the DXF files and the plan.")
  private boolean mail;

  @Mixin private SpokenLanguage language;

  @Mixin private WallChoice walls;

  private Request request(LengthUnit unit) {
    Request all = Request.everything(unit);
    Set<Request.Bundle> bundles = EnumSet.noneOf(Request.Bundle.class);
    if (zip) {
      bundles.add(Request.Bundle.ZIP);
    }
    if (mail) {
      bundles.add(Request.Bundle.MAIL);
    }
    return all.withPaper(paper == null ? all.paper() : paper)
        .withOutputs(only.isEmpty() ? all.outputs() : only)
        .withBundles(bundles)
        .withLanguage(language.asked());
  }

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Optional<Plan> plan = PlanReading.read(file, language.beforePlan(), err);
    if (plan.isEmpty()) {
      return ExitCode.UNUSABLE;
    }
    Language said = language.of(plan.get());
    Design design = Pipeline.solve(walls.of(plan.get(), said));
    try {
      String name = Packet.baseName(file.getFileName().toString());
      List<Path> files = Packet.write(design, request(plan.get().unit()), folder, name);
      out.print(FiguresText.of(design.spoken(said)));
      out.print("\n" + SpokenLanguage.text(said, "files") + "\n");
      files.forEach(f -> out.print("  " + f + "\n"));
    } catch (IOException e) {
      err.println(
          "longpoint: " + SpokenLanguage.text(said, "cannotWrite", folder, FileTrouble.of(e)));
      return ExitCode.UNUSABLE;
    }
    out.flush();
    return design.hasErrors() ? ExitCode.PLAN_HAS_ERRORS : ExitCode.WELL;
  }
}
