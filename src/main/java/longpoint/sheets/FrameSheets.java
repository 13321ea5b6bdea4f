package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Mark;
import longpoint.framing.FramingSet;
import longpoint.framing.valley.ValleySet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;

/** Trusses on paper: schedule and tape marks, the outline of each, every valley set on its deck. */
final class FrameSheets {
  static final String MEASURES = "Of the frame without deck; to order and to set out by.";

  private final Plan plan;
  private final FramingSet framing;
  private final SheetBorder border;
  private final TrussTables trusses;
  private final ValleyTables valleys;
  private final List<Sheet> sheets = new ArrayList<>();

  private FrameSheets(Plan plan, FramingSet framing, RoofNames names, SheetBorder border) {
    this.plan = plan;
    this.framing = framing;
    this.border = border;
    Cells cells = new Cells(plan.unit());
    this.trusses = new TrussTables(framing, cells, names);
    this.valleys = new ValleyTables(framing, cells, names);
  }

  /** A sheet that would be empty is not made. */
  static List<Sheet> of(Plan plan, FramingSet framing, RoofNames names, SheetBorder border) {
    FrameSheets sheets = new FrameSheets(plan, framing, names, border);
    sheets.schedule();
    sheets.profiles();
    framing.valleySets().forEach(s -> sheets.valleySet(s, names));
    return List.copyOf(sheets.sheets);
  }

  private void schedule() {
    List<SheetTable> tables = List.of(trusses.schedule(), trusses.tapes(), trusses.hangers());
    List<String> reminders = FrameReminders.trusses();
    TableFlow.pages(tables, border.field(reminders))
        .forEach(m -> sheets.add(Sheet.tables("Truss schedule", MEASURES, reminders, m)));
  }

  private void profiles() {
    if (framing.marks().isEmpty()) {
      return;
    }
    List<String> reminders = FrameReminders.trusses();
    Bounds field = border.field(reminders);
    FigureShelves.Drawn drawn =
        FigureShelves.fitted(
            plan.unit(),
            field,
            scale -> framing.marks().stream().map(m -> ProfileFigure.of(plan, m, scale)).toList());
    FigureShelves.pages(drawn.figures(), field)
        .forEach(
            m ->
                sheets.add(Sheet.figures("Truss outlines", drawn.scale(), MEASURES, reminders, m)));
  }

  /** The set on its deck, legend and tables beside it, or on further sheets. */
  private void valleySet(ValleySet set, RoofNames names) {
    List<String> reminders = FrameReminders.valley();
    List<SheetTable> tables =
        List.of(valleys.valleyNames(set), valleys.valley(set), valleys.snapped(set));
    Bounds all = border.field(reminders);
    double wide = tables.stream().mapToDouble(SheetTable::naturalWidth).max().orElse(0);
    double column = Math.min(wide, all.width() * 0.45);
    Bounds room =
        new Bounds(all.minX(), all.minY(), all.maxX() - column - 2 * SheetBorder.PAD, all.maxY());
    FigureShelves.Drawn drawn =
        FigureShelves.fitted(
            plan.unit(), room, s -> List.of(ValleyFigure.of(set, plan.unit(), s, valleys::mark)));
    SheetFigure figure = drawn.figures().get(0);
    double left = room.middle().x() - figure.widthMm() / 2;
    double top = room.middle().y() + figure.heightMm() / 2;
    List<Mark> marks = new ArrayList<>(List.of(figure.at(new Point(left, top))));
    Bounds beside = new Bounds(all.maxX() - column, all.minY(), all.maxX(), all.maxY());
    Legend legend = Legend.of(FrameLayers.ofValley());
    marks.addAll(legend.marks(new Point(beside.minX(), beside.maxY())));
    Bounds below =
        new Bounds(beside.minX(), beside.minY(), beside.maxX(), beside.maxY() - legend.height());
    List<List<Mark>> pages = TableFlow.pages(tables, below, all);
    marks.addAll(pages.get(0));
    String title = "Valley set of " + names.part(set.upper());
    sheets.add(Sheet.figures(title, drawn.scale(), MEASURES, reminders, marks));
    pages
        .subList(1, pages.size())
        .forEach(m -> sheets.add(Sheet.tables(title + ", tables", MEASURES, reminders, m)));
  }
}
