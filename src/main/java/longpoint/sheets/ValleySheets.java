package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longpoint.drawing.Mark;
import longpoint.framing.FramingSet;
import longpoint.framing.valley.ValleySet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;

/**
 * A valley set on paper: on its deck in true size, with legend and tables beside it or below,
 * whichever takes fewer sheets and then shows it larger.
 */
final class ValleySheets {
  private static final double LEGEND = 62;

  /** Shares of the field's height that tables below may take. */
  private static final double[] BELOW = {0.3, 0.4, 0.5};

  /** The most of the field's width that tables beside may take. */
  private static final double BESIDE = 0.45;

  private final Plan plan;
  private final ValleySet set;
  private final ValleyTables valleys;
  private final Bounds field;

  private ValleySheets(Plan plan, ValleySet set, ValleyTables valleys, Bounds field) {
    this.plan = plan;
    this.set = set;
    this.valleys = valleys;
    this.field = field;
  }

  /** A way of laying the sheet out: the pages' marks, the first with the drawing. */
  private record Laid(PaperScale scale, List<List<Mark>> pages) {}

  static List<Sheet> of(
      Plan plan, FramingSet framing, ValleySet set, RoofNames names, SheetBorder border) {
    List<String> reminders = FrameReminders.valley(names.words());
    ValleyTables valleys = new ValleyTables(framing, new Cells(Words.of(plan)), names);
    Laid best = new ValleySheets(plan, set, valleys, border.field(reminders)).best();
    String title = names.words().text("valley.sheet", names.run(set.upper()));
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(
        Sheet.figures(
            title,
            best.scale(),
            FrameSheets.measures(names.words()),
            reminders,
            best.pages().get(0)));
    best.pages()
        .subList(1, best.pages().size())
        .forEach(
            m ->
                sheets.add(
                    Sheet.tables(
                        names.words().text("tables", title),
                        FrameSheets.measures(names.words()),
                        reminders,
                        m)));
    return sheets;
  }

  private Laid best() {
    List<Laid> ways = new ArrayList<>(List.of(beside()));
    for (double share : BELOW) {
      ways.add(below(share));
    }
    return ways.stream()
        .min(
            Comparator.<Laid>comparingInt(l -> l.pages().size())
                .thenComparingDouble(l -> l.scale().ratio()))
        .orElseThrow();
  }

  private List<SheetTable> tables() {
    return List.of(valleys.valleyNames(set), valleys.valley(set), valleys.snapped(set));
  }

  private Legend legend() {
    return Legend.of(Words.of(plan), FrameLayers.ofValley());
  }

  private Laid beside() {
    Legend legend = legend();
    double tables = tables().stream().mapToDouble(SheetTable::naturalWidth).max().orElse(0);
    double wide = Math.max(tables, legend.width());
    double column = Math.min(wide, field.width() * BESIDE);
    Bounds right = new Bounds(field.maxX() - column, field.minY(), field.maxX(), field.maxY());
    Bounds beneath =
        new Bounds(right.minX(), right.minY(), right.maxX(), right.maxY() - legend.height());
    Bounds room =
        new Bounds(field.minX(), field.minY(), right.minX() - 2 * SheetBorder.PAD, field.maxY());
    return laid(room, legend, right.minX(), TableFlow.pages(tables(), beneath, field));
  }

  private Laid below(double share) {
    Legend legend = legend();
    double aside = Math.max(LEGEND, legend.width() + SheetBorder.PAD);
    double line = field.minY() + field.height() * share;
    Bounds foot = new Bounds(field.minX(), field.minY(), field.maxX(), line);
    Bounds room =
        new Bounds(field.minX(), line + SheetBorder.PAD, field.maxX() - aside, field.maxY());
    return laid(
        room,
        legend,
        field.maxX() - aside + SheetBorder.PAD,
        TableFlow.pages(tables(), foot, field));
  }

  private Laid laid(Bounds room, Legend legend, double legendLeft, List<List<Mark>> tables) {
    FigureShelves.Drawn drawn =
        FigureShelves.fitted(
            plan.unit(),
            room,
            s -> List.of(ValleyFigure.of(set, Words.of(plan), s, t -> valleys.placed(set, t))));
    SheetFigure figure = drawn.figures().get(0);
    double left = room.middle().x() - figure.widthMm() / 2;
    double top = room.middle().y() + figure.heightMm() / 2;
    List<Mark> marks = new ArrayList<>(List.of(figure.at(new Point(left, top))));
    marks.addAll(legend.marks(new Point(legendLeft, field.maxY())));
    marks.addAll(tables.get(0));
    List<List<Mark>> pages = new ArrayList<>(List.of(marks));
    pages.addAll(tables.subList(1, tables.size()));
    return new Laid(drawn.scale(), pages);
  }
}
