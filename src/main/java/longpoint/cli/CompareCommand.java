package longpoint.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import longpoint.packet.FiguresJson;
import longpoint.packet.SupplierDifferences;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.planfile.FileTrouble;
import longpoint.planfile.PlanFile;
import longpoint.planfile.PlanFileException;
import longpoint.trusslist.Column;
import longpoint.trusslist.TrussList;
import longpoint.trusslist.TrussListException;
import longpoint.wording.Language;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "compare",
    description = {
      "Holds a supplier's list of trusses (CSV) against the layout of a plan.",
      "Ends with 0 when they agree, 1 when they differ."
    },
    mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan file.")
  private Path file;

  @Parameters(index = "1", paramLabel = "LIST", description = "The supplier's list.")
  private Path list;

  @Option(
      names = "--column",
      paramLabel = "WHAT=NUMBER",
      description =
          "Which column holds what, counted from 1: mark, quantity, span, height, slope,"
              + " other-slope, overhang, other-overhang, heel, other-heel, plies. Left out, what the"
              + " heads say.")
  private Map<String, Integer> columns = new LinkedHashMap<>();

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Also writes the differences to a file, to be sent back.")
  private Path csv;

  @Option(
      names = "--keep",
      paramLabel = "PLAN",
      description = "Also writes the plan with the list in it, for its sheets and packets.")
  private Path keep;

  @Option(names = "--json", description = "For programs: every figure of the plan with the list.")
  private boolean json;

  @Mixin private SpokenLanguage language;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Optional<Plan> plan = PlanReading.read(file, language.beforePlan(), err);
    if (plan.isEmpty()) {
      return ExitCode.UNUSABLE;
    }
    Language said = language.of(plan.get());
    try {
      TrussList read = TrussList.read(list, plan.get().unit(), chosen());
      for (Problem note : read.notes()) {
        String cure = note.cure(said);
        String words = note.message(said) + (cure.isEmpty() ? "" : " " + cure);
        err.println(PlanReading.said(list, words, said));
      }
      Plan with = plan.get().withOnSite(plan.get().onSite().withTrusses(read.supplied()));
      return compared(with, said);
    } catch (TrussListException e) {
      err.println(PlanReading.said(list, e.message(said), said));
    } catch (PlanFileException e) {
      err.println("longpoint: " + e.message(said));
    } catch (IOException e) {
      err.println("longpoint: " + SpokenLanguage.text(said, "cannotWrite", csv, FileTrouble.of(e)));
    }
    return ExitCode.UNUSABLE;
  }

  private Map<Column, Integer> chosen() {
    Map<Column, Integer> chosen = new EnumMap<>(Column.class);
    columns.forEach(
        (key, number) -> {
          Optional<Column> column = Column.of(key);
          if (column.isEmpty() || number < 1) {
            throw new ParameterException(
                spec.commandLine(), "--column takes such as span=4, not " + key + "=" + number);
          }
          chosen.put(column.get(), number - 1);
        });
    return chosen;
  }

  private int compared(Plan with, Language said) throws IOException {
    Design design = Pipeline.solve(with).spoken(said);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.print(FiguresJson.of(design, said));
    } else if (design.onSite().trusses().agrees()) {
      out.print(SpokenLanguage.text(said, "compare.agrees") + "\n");
      out.print(SupplierDifferences.text(design));
    } else {
      out.print(SupplierDifferences.text(design));
    }
    if (csv != null) {
      try (OutputStream to = new BufferedOutputStream(Files.newOutputStream(csv))) {
        SupplierDifferences.write(design, to);
      }
    }
    if (keep != null) {
      PlanFile.write(with, keep);
    }
    out.flush();
    return design.onSite().trusses().agrees() ? ExitCode.WELL : ExitCode.PLAN_HAS_ERRORS;
  }
}
