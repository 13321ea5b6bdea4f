package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.geometry.Bounds;
import longpoint.plan.Plan;

/** Trusses on paper: schedule and tape marks, the outline of each, every valley set on its deck. */
final class FrameSheets {
  /** What the lengths of every sheet of the frame are. */
  static String measures(Words words) {
    return words.text("frame.measures");
  }

  private final Plan plan;
  private final Words words;
  private final FramingSet framing;
  private final SheetBorder border;
  private final TrussTables trusses;
  private final List<Sheet> sheets = new ArrayList<>();

  private FrameSheets(Plan plan, FramingSet framing, RoofNames names, SheetBorder border) {
    this.plan = plan;
    this.words = names.words();
    this.framing = framing;
    this.border = border;
    this.trusses = new TrussTables(framing, new Cells(words), names);
  }

  /** A sheet that would be empty is not made. */
  static List<Sheet> of(Plan plan, FramingSet framing, RoofNames names, SheetBorder border) {
    FrameSheets sheets = new FrameSheets(plan, framing, names, border);
    sheets.schedule();
    sheets.profiles();
    framing
        .valleySets()
        .forEach(s -> sheets.sheets.addAll(ValleySheets.of(plan, framing, s, names, border)));
    return List.copyOf(sheets.sheets);
  }

  private void schedule() {
    List<SheetTable> tables = List.of(trusses.schedule(), trusses.tapes(), trusses.hangers());
    List<String> reminders =
        framing.girders().isEmpty() ? FrameReminders.trusses(words) : FrameReminders.girders(words);
    TableFlow.pages(tables, border.field(reminders))
        .forEach(
            m ->
                sheets.add(
                    Sheet.tables(words.text("truss.schedule"), measures(words), reminders, m)));
  }

  private void profiles() {
    if (framing.marks().isEmpty()) {
      return;
    }
    List<String> reminders = FrameReminders.trusses(words);
    Bounds field = border.field(reminders);
    FigureShelves.Drawn drawn =
        FigureShelves.fitted(
            plan.unit(),
            field,
            scale -> framing.marks().stream().map(m -> ProfileFigure.of(plan, m, scale)).toList());
    FigureShelves.pages(drawn.figures(), field)
        .forEach(
            m ->
                sheets.add(
                    Sheet.figures(
                        words.text("truss.outlines"),
                        drawn.scale(),
                        measures(words),
                        reminders,
                        m)));
  }
}
