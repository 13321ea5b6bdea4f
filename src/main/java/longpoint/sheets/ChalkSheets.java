package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.deck.DeckPlan;
import longpoint.deck.PlaneDeck;
import longpoint.drawing.Mark;
import longpoint.drawing.Placement;
import longpoint.drawing.Strokes;
import longpoint.field.chalk.ChalkSheet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;

/**
 * Sheets for the crew on the roof, one for each plane: the plane laid flat with its pieces and
 * chalk lines, and beneath it the tables. Tables that do not fit run on over further sheets;
 * nothing is left off.
 */
final class ChalkSheets {
  /** Share of the free height the drawing may take. */
  private static final double DRAWING = 0.55;

  /** Room wished for beside the drawing, and kept beneath it, millimetres. */
  private static final double BESIDE = 24;

  private static final double BENEATH = 6;

  /** A plane is drawn at most this much smaller than it could be, for the sake of fewer sheets. */
  private static final double SMALLER = 1.5;

  private final Plan plan;
  private final RoofNames names;
  private final Words words;
  private final List<String> reminders;
  private final Bounds field;
  private final List<Sheet> sheets = new ArrayList<>();

  private ChalkSheets(Plan plan, RoofNames names, SheetBorder border) {
    this.plan = plan;
    this.names = names;
    this.words = names.words();
    this.reminders = FrameReminders.deck(words);
    this.field = border.field(reminders);
  }

  /** In the order of the planes. */
  static List<Sheet> of(
      Plan plan, DeckPlan deck, List<ChalkSheet> chalk, RoofNames names, SheetBorder border) {
    ChalkSheets sheets = new ChalkSheets(plan, names, border);
    for (PlaneDeck plane : deck.planes()) {
      Optional<ChalkSheet> lines =
          chalk.stream().filter(c -> c.plane().equals(plane.plane())).findFirst();
      if (lines.isPresent() || !plane.pieces().isEmpty()) {
        sheets.plane(plane, lines);
      }
    }
    return List.copyOf(sheets.sheets);
  }

  private void plane(PlaneDeck deck, Optional<ChalkSheet> chalk) {
    String title =
        words.text("chalk.plane", names.planes(deck.planes()).replace(" ", words.text("and")));
    List<SheetTable> tables = new ArrayList<>();
    chalk.ifPresent(c -> tables.add(ChalkTables.lines(c, words)));
    chalk.ifPresent(c -> c.square().forEach(s -> tables.add(ChalkTables.square(s, words))));
    tables.add(ChalkTables.pieces(deck, words));
    tables.add(ChalkTables.differences(deck, names));
    Laid best = null;
    for (PaperScale scale : scales(ChalkView.ground(deck))) {
      Laid laid = laid(deck, chalk, tables, scale);
      if (best == null || laid.overhang() < best.overhang() || laid.betterThan(best)) {
        best = laid;
      }
    }
    PaperScale scale = best.scale();
    List<List<Mark>> pages = best.pages();
    List<Mark> marks = new ArrayList<>(List.of(best.drawing()));
    marks.addAll(pages.get(0));
    sheets.add(
        Sheet.figures(
            words.text("chalk.sheet", title),
            scale,
            words.text("chalk.measures"),
            reminders,
            marks));
    pages
        .subList(1, pages.size())
        .forEach(
            m ->
                sheets.add(
                    Sheet.tables(
                        words.text("chalk.tables", title),
                        words.text("chalk.measures"),
                        reminders,
                        m)));
  }

  /**
   * A way of laying out a plane's sheets.
   *
   * @param pages tables beneath the drawing, then on further pages
   * @param overhang by which the drawing with its figures is too wide, 0 if it is not
   */
  private record Laid(PaperScale scale, Mark drawing, List<List<Mark>> pages, double overhang) {
    boolean betterThan(Laid other) {
      return overhang == other.overhang && pages.size() < other.pages.size();
    }
  }

  private Laid laid(
      PlaneDeck deck, Optional<ChalkSheet> chalk, List<SheetTable> tables, PaperScale scale) {
    double mm = scale.unitsPerMm(plan.unit());
    List<Mark> view = ChalkView.of(deck, chalk, words, mm).marks();
    Bounds box = Strokes.of(view, mm).bounds();
    Point top = new Point(box.middle().x(), box.maxY());
    Point origin = new Point(field.middle().x(), field.maxY()).minus(top.times(1 / mm));
    Mark drawing = new Mark.Group("plane", new Placement(origin, 1 / mm, 0), view);
    double foot = field.maxY() - box.height() / mm - BENEATH;
    Bounds beneath = new Bounds(field.minX(), field.minY(), field.maxX(), foot);
    return new Laid(
        scale,
        drawing,
        TableFlow.pages(tables, beneath, field),
        Math.max(0, box.width() / mm - field.width()));
  }

  /** The largest at which the plane has its share of the sheet, and the next smaller ones. */
  private List<PaperScale> scales(Bounds ground) {
    double width = field.width() - 2 * BESIDE;
    double height = field.height() * DRAWING;
    List<PaperScale> fitting =
        PaperScale.of(plan.unit()).stream()
            .filter(s -> ground.width() <= width * s.unitsPerMm(plan.unit()))
            .filter(s -> ground.height() <= height * s.unitsPerMm(plan.unit()))
            .toList();
    double most = Math.max(ground.width() / width, ground.height() / height);
    if (fitting.isEmpty()) {
      return List.of(PaperScale.round(plan.unit().toMillimetres(most)));
    }
    double least = fitting.get(0).ratio() * SMALLER;
    return fitting.stream().filter(s -> s.ratio() <= least).toList();
  }
}
