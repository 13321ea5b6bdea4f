package longpoint.desktop.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.desktop.Errands;
import longpoint.desktop.Job;
import longpoint.desktop.Texts;
import longpoint.editor.PartCommands;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.editor.tools.Tools;
import longpoint.geometry.Region;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.tracing.CadDrawing;
import longpoint.tracing.DrawingUnit;
import longpoint.tracing.Traced;
import longpoint.units.LengthUnit;

/** The path of wall outlines from a CAD drawing to parts of the plan. */
public final class TracingFlow {
  /** More would not be read. */
  private static final int MOST_NOTES = 5;

  /**
   * How a drawing is to be traced.
   *
   * @param layers names of those that hold walls
   * @param unit the drawing is drawn in
   * @param inner what becomes of outlines inside others
   */
  public record Choice(Set<String> layers, DrawingUnit unit, Traced.Inner inner) {
    public Choice {
      layers = Set.copyOf(layers);
    }

    /** What is likely meant. */
    public static Choice likely(CadDrawing drawing) {
      return new Choice(drawing.likelyLayers(), drawing.likelyUnit(), Traced.Inner.LEFT_OUT);
    }
  }

  private final Job job;
  private final Dialogs dialogs;
  private final Errands errands;

  public TracingFlow(Job job, Dialogs dialogs, Errands errands) {
    this.job = job;
    this.dialogs = dialogs;
    this.errands = errands;
  }

  /** Whether a file's name is that of a CAD drawing. */
  public static boolean isDrawing(Path file) {
    return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".dxf");
  }

  /** Asks which drawing and traces it. */
  public void load() {
    dialogs
        .drawingToOpen(job.file().map(p -> p.toAbsolutePath().getParent()))
        .ifPresent(this::load);
  }

  /** Reads a drawing off the event thread, then asks how it is to be traced. */
  public void load(Path file) {
    String name = file.getFileName().toString();
    errands.run(
        Texts.of("state.tracing"),
        watch -> CadDrawing.read(file),
        drawing -> ask(drawing, name),
        why -> dialogs.tell(Texts.of("tell.noTracing", name), String.valueOf(why.getMessage())));
  }

  private void ask(CadDrawing drawing, String name) {
    dialogs
        .howToTrace(drawing)
        .ifPresent(choice -> trace(drawing, choice, Traced.Gaps.LEFT_OPEN, name));
  }

  private void trace(CadDrawing drawing, Choice choice, Traced.Gaps gaps, String name) {
    LengthUnit unit = job.document().plan().unit();
    errands.run(
        Texts.of("state.tracing"),
        watch -> drawing.trace(choice.layers(), choice.unit(), unit, gaps),
        traced -> {
          if (gaps == Traced.Gaps.CLOSED || traced.gaps().isEmpty()) {
            add(traced, choice, name);
          } else {
            open(drawing, choice, traced, name);
          }
        },
        why -> dialogs.tell(Texts.of("tell.noTracing", name), String.valueOf(why.getMessage())));
  }

  /** Lines that all but close: closed straight across, or left, as the user says. */
  private void open(CadDrawing drawing, Choice choice, Traced traced, String name) {
    dialogs
        .gaps(traced, job.document().plan().unit())
        .ifPresent(
            what -> {
              switch (what) {
                case CLOSED -> trace(drawing, choice, what, name);
                case LEFT_OPEN -> add(traced, choice, name);
              }
            });
  }

  /** The new parts are picked, and the tool that moves them is in hand. */
  private void add(Traced traced, Choice choice, String name) {
    List<Region> grounds = traced.regions(choice.inner());
    if (grounds.isEmpty()) {
      dialogs.tell(
          Texts.of("tell.noTracing", name), Texts.of("tracing.nothing") + notes(traced.notes()));
      return;
    }
    Plan before = job.document().plan();
    Set<String> there = before.parts().stream().map(Part::id).collect(Collectors.toSet());
    job.runner().apply(PartCommands.add(grounds, name));
    List<Ref> fresh =
        job.document().plan().parts().stream()
            .map(Part::id)
            .filter(id -> !there.contains(id))
            .map(Ref::part)
            .toList();
    job.runner().select(new Selection(fresh));
    if (!there.isEmpty()) {
      job.runner().choose(Tools.MOVE);
    }
    if (!traced.notes().isEmpty()) {
      dialogs.tell(Texts.of("tell.traced", fresh.size(), name), notes(traced.notes()).strip());
    }
  }

  private static String notes(List<Problem> notes) {
    return notes.stream()
        .limit(MOST_NOTES)
        .map(n -> "\n" + n.message(Texts.language()) + " " + n.cure(Texts.language()))
        .collect(Collectors.joining());
  }
}
