package longpoint.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import longpoint.geometry.Bounds;
import longpoint.geometry.Region;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.planfile.PlanFile;
import longpoint.planfile.PlanFileException;
import longpoint.tracing.CadDrawing;
import longpoint.tracing.DrawingUnit;
import longpoint.tracing.Traced;
import longpoint.tracing.TracingException;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.wording.Language;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "trace",
    description = {
      "Makes a plan of the wall outlines in a CAD drawing (DXF): a part with a hip roof for each.",
      "Without --to it lists the layers and what is found on the likeliest."
    },
    mixinStandardHelpOptions = true)
final class TraceCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "DRAWING", description = "The DXF file.")
  private Path file;

  @Option(
      names = "--to",
      paramLabel = "PLAN",
      description = "The plan file to write; one that is there is not written over.")
  private Path to;

  @Option(
      names = "--layer",
      paramLabel = "NAME",
      description = "Layer of the walls; may be given again. Left out, the likeliest.")
  private List<String> layers = List.of();

  @Option(
      names = "--drawn-in",
      paramLabel = "UNIT",
      description = "Unit of the drawing: in, ft, yd, mm, cm, dm or m. Left out, what it says.")
  private String drawnIn;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      description = "Unit of the plan: in or mm. Left out, inches for feet and inches, else mm.")
  private String unit;

  @Option(
      names = "--inner",
      defaultValue = "left_out",
      description =
          "Outlines inside others: ${COMPLETION-CANDIDATES}. Left out, they are left out.")
  private Traced.Inner inner;

  @Option(
      names = "--gaps",
      defaultValue = "left_open",
      description =
          "Walls that close only across a gap: ${COMPLETION-CANDIDATES}. Left out, left open.")
  private Traced.Gaps gaps;

  @Mixin private SpokenLanguage spoken;

  @Override
  public Integer call() {
    Language language = spoken.beforePlan();
    PrintWriter err = spec.commandLine().getErr();
    try {
      return trace(CadDrawing.read(file), err);
    } catch (TracingException e) {
      err.println(PlanReading.said(file, e.message(language), language));
    } catch (PlanFileException e) {
      err.println("longpoint: " + e.message(language));
    }
    return ExitCode.UNUSABLE;
  }

  private int trace(CadDrawing drawing, PrintWriter err) throws PlanFileException {
    DrawingUnit drawn =
        drawnIn == null
            ? drawing.likelyUnit()
            : choice("--drawn-in", drawnIn, DrawingUnit.values(), DrawingUnit::symbol);
    LengthUnit plan =
        unit == null
            ? drawn.planUnit()
            : choice("--unit", unit, LengthUnit.values(), LengthUnit::symbol);
    Language language = spoken.beforePlan();
    Set<String> chosen = layers.isEmpty() ? drawing.likelyLayers() : new LinkedHashSet<>(layers);
    Traced traced = drawing.trace(chosen, drawn, plan, gaps);
    for (Problem note : traced.notes()) {
      err.println(
          PlanReading.said(file, note.message(language) + gapped(note.cure(language)), language));
    }
    list(drawing, drawn, chosen);
    List<Region> grounds = traced.regions(inner);
    grounds.forEach(g -> list(g, plan));
    if (grounds.isEmpty()) {
      err.println(PlanReading.said(file, text("trace.noOutline", chosen), language));
      return ExitCode.UNUSABLE;
    }
    return to == null ? ExitCode.WELL : write(grounds, plan, err);
  }

  private static String gapped(String cure) {
    return cure.isEmpty() ? "" : " " + cure;
  }

  private void list(CadDrawing drawing, DrawingUnit drawn, Set<String> chosen) {
    PrintWriter out = spec.commandLine().getOut();
    out.print(text("trace.drawnIn", drawn.symbol()) + "\n" + text("trace.layers") + "\n");
    for (CadDrawing.LayerSummary layer : drawing.layers()) {
      String star = chosen.contains(layer.name()) ? "* " : "  ";
      String key = layer.hidden() ? "trace.layer.hidden" : "trace.layer";
      out.print("  " + star + text(key, layer.name(), layer.strokes()) + "\n");
    }
    out.print(text("trace.outlines") + "\n");
  }

  private void list(Region ground, LengthUnit unit) {
    Bounds box = ground.shell().bounds();
    String words =
        text(
            ground.holes().isEmpty() ? "trace.outline" : "trace.outline.holes",
            ground.shell().size(),
            LengthText.of(box.width(), unit),
            LengthText.of(box.height(), unit),
            FigureText.area(ground.area(), unit, spoken.beforePlan()),
            ground.holes().size());
    spec.commandLine().getOut().print("  " + words + "\n");
  }

  private int write(List<Region> grounds, LengthUnit unit, PrintWriter err)
      throws PlanFileException {
    if (Files.exists(to)) {
      err.println("longpoint: " + text("trace.taken", to));
      return ExitCode.UNUSABLE;
    }
    List<Part> parts = new ArrayList<>();
    for (Region ground : grounds) {
      int sides = ground.shell().size() + ground.holes().stream().mapToInt(h -> h.size()).sum();
      String id = parts.isEmpty() ? "main" : "part-" + (parts.size() + 1);
      String name = parts.isEmpty() ? text("trace.house") : text("trace.part", parts.size() + 1);
      parts.add(Part.fresh(id, name, ground, Collections.nCopies(sides, EdgeKind.EAVE), unit));
    }
    String title = file.getFileName().toString().replaceFirst("(?i)\\.dxf$", "");
    PlanFile.write(Plan.empty(unit).withTitle(title).withParts(parts), to);
    spec.commandLine().getOut().print(text("trace.plan") + "\n  " + to + "\n");
    return ExitCode.WELL;
  }

  private String text(String key, Object... parts) {
    return SpokenLanguage.text(spoken.beforePlan(), key, parts);
  }

  private <T> T choice(
      String option, String given, T[] all, java.util.function.Function<T, String> symbol) {
    for (T one : all) {
      if (symbol.apply(one).equalsIgnoreCase(given)) {
        return one;
      }
    }
    String known = List.of(all).stream().map(symbol).collect(Collectors.joining(", "));
    throw new picocli.CommandLine.ParameterException(
        spec.commandLine(), option + " knows " + known + ", not " + given);
  }
}
