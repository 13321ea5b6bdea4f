package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import longpoint.framing.FramingSet;
import longpoint.framing.gable.GableWall;
import longpoint.framing.stick.Rafter;
import longpoint.geometry.Bounds;
import longpoint.plan.Plan;
import longpoint.sheets.FigureShelves.Share;

/** What is cut by hand, on paper: gable ladders, blocks, rafters, fascia and rake boards. */
final class StickSheets {
  /** Widths of the lettering below a rafter. */
  private static final List<Double> CAPTIONS_MM = List.of(96.0, 120.0, 160.0);

  /** Share of a sheet's height that lettering may take from the drawing above it. */
  private static final double CAPTION = 0.5;

  private final Plan plan;
  private final FramingSet framing;
  private final RoofNames names;
  private final SheetBorder border;
  private final StickTables tables;
  private final List<Sheet> sheets = new ArrayList<>();

  private StickSheets(Plan plan, FramingSet framing, RoofNames names, SheetBorder border) {
    this.plan = plan;
    this.framing = framing;
    this.names = names;
    this.border = border;
    this.tables = new StickTables(framing, new Cells(names.words()), names);
  }

  /** A sheet that would be empty is not made. */
  static List<Sheet> of(Plan plan, FramingSet framing, RoofNames names, SheetBorder border) {
    Words words = names.words();
    StickSheets sheets = new StickSheets(plan, framing, names, border);
    sheets.ladders();
    sheets.tables(
        words.text("sticks.tables"),
        FrameReminders.ladders(words),
        List.of(sheets.tables.ladders(), sheets.tables.blocks(), sheets.tables.boards()));
    sheets.gables();
    sheets.rafters();
    sheets.tables(
        words.text("rafters.tables"),
        FrameReminders.rafters(words),
        List.of(
            sheets.tables.rafterTapes(),
            sheets.tables.openings(),
            sheets.tables.rafters(),
            sheets.tables.rafterCuts(),
            sheets.tables.gableStuds(),
            sheets.tables.highWalls()));
    return List.copyOf(sheets.sheets);
  }

  private void ladders() {
    if (!framing.ladders().isEmpty()) {
      figures(
          names.words().text("ladders.sheet"),
          FrameReminders.ladders(names.words()),
          Share.QUARTER,
          scale -> LadderFigure.all(plan, framing.ladders(), names, scale));
    }
  }

  private void gables() {
    List<GableWall> walls = framing.gableWalls();
    if (walls.stream().anyMatch(w -> !w.places().isEmpty())) {
      figures(
          names.words().text("studs.sheet"),
          FrameReminders.rafters(names.words()),
          Share.QUARTER,
          scale -> GableFigure.all(plan, walls, names, scale));
    }
  }

  private void rafters() {
    List<Rafter> rafters = framing.rafters();
    Words words = names.words();
    if (!rafters.isEmpty()) {
      figures(
          words.text("rafters.sheet"),
          FrameReminders.rafters(words),
          Share.TALL_CAPTIONS,
          scale -> RafterFigure.all(rafters, words, captionWidth(), scale));
    }
    if (rafters.stream().anyMatch(r -> r.seat().isPresent())) {
      figures(
          words.text("seats.sheet"),
          FrameReminders.rafters(words),
          Share.QUARTER,
          scale -> {
            List<SheetFigure> figures = new ArrayList<>(PeakFigure.all(rafters, words, scale));
            figures.addAll(SeatFigure.all(rafters, words, scale));
            return figures;
          });
    }
  }

  /** What is said of a rafter is set wider where a small sheet has no height for it. */
  private double captionWidth() {
    Bounds field = border.field(FrameReminders.rafters(names.words()));
    double small =
        PaperScale.of(plan.unit()).stream()
            .mapToDouble(s -> s.unitsPerMm(plan.unit()))
            .max()
            .orElseThrow();
    return CAPTIONS_MM.stream()
        .filter(
            w ->
                RafterFigure.all(framing.rafters(), names.words(), w, small).stream()
                    .allMatch(f -> f.captionMm() < field.height() * CAPTION))
        .findFirst()
        .orElse(field.width());
  }

  /** At the largest scale at which they stand well on their sheets. */
  private void figures(
      String title, List<String> reminders, Share share, Function<Double, List<SheetFigure>> draw) {
    Bounds field = border.field(reminders);
    FigureShelves.Drawn drawn = FigureShelves.fitted(plan.unit(), field, share, draw);
    FigureShelves.pages(drawn.figures(), field)
        .forEach(
            m ->
                sheets.add(
                    Sheet.figures(
                        title, drawn.scale(), FrameSheets.measures(names.words()), reminders, m)));
  }

  private void tables(String title, List<String> reminders, List<SheetTable> wanted) {
    TableFlow.pages(wanted, border.field(reminders))
        .forEach(
            m ->
                sheets.add(Sheet.tables(title, FrameSheets.measures(names.words()), reminders, m)));
  }
}
