package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.field.restraint.Restraint;
import longpoint.field.restraint.RestraintRow;
import longpoint.field.restraint.RestraintRun;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.Truss;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/** Temporary restraint on paper: rows across the trusses, the order of setting, lists. */
final class RestraintSheets {
  private final Plan plan;
  private final RoofSurface surface;
  private final FramingSet framing;
  private final Restraint restraint;
  private final RoofNames names;
  private final Words words;
  private final SheetBorder border;

  private RestraintSheets(Solved solved, SheetBorder border) {
    this.plan = solved.plan();
    this.surface = solved.surface();
    this.framing = solved.framing();
    this.restraint = solved.aids().restraint();
    this.names = solved.names();
    this.words = names.words();
    this.border = border;
  }

  /** None for a plan without a run of trusses. */
  static List<Sheet> of(Solved solved, SheetBorder border) {
    return solved.aids().restraint().runs().isEmpty()
        ? List.of()
        : new RestraintSheets(solved, border).sheets();
  }

  private List<Sheet> sheets() {
    List<String> reminders =
        Stream.of("reminder.bracing", "reminder.restraint", "reminder.height")
            .map(words::text)
            .toList();
    Bounds field = border.drawing(reminders);
    FittedFrame whole = FittedFrame.toDrawOn(plan, surface, framing, field);
    Mark.Group base = (Mark.Group) whole.in(field);
    double unitsPerMm = whole.view().unitsPerMm();
    Clutter clutter = clutter(base, unitsPerMm);
    List<Mark> rows = new ArrayList<>();
    int leftOff = 0;
    for (RestraintRun run : restraint.runs()) {
      leftOff += rows(run, unitsPerMm, clutter, rows);
    }
    List<Mark> marks = new ArrayList<>(List.of(base));
    marks.add(new Mark.Group("restraint", base.placement(), rows));
    Bounds column = border.column(reminders);
    Legend legend = Legend.of(words, AidLayers.ofRestraint());
    marks.addAll(legend.marks(new Point(column.minX(), column.maxY())));
    double y = column.maxY() - legend.height();
    RestraintRows lists = new RestraintRows(names);
    List<String> said = lists.said(longest());
    Paragraphs steps =
        new Paragraphs(words.text("restraint.order"), said, column.width(), Layers.TEXT);
    boolean fits = y - steps.height() >= column.minY();
    if (fits) {
      marks.addAll(steps.marks(new Point(column.minX(), y)));
    }
    String title = words.text("restraint.sheet");
    String measures = FrameSheets.measures(words);
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(Sheet.plan(title, whole.scale(), measures, leftOff, reminders, marks));
    Bounds all = border.field(reminders);
    List<String> notes = lists.runs(restraint).notes();
    List<Mark> words = new ArrayList<>();
    double low = all.minY();
    Paragraphs told =
        new Paragraphs(this.words.text("restraint.notes"), notes, all.width(), Layers.TEXT);
    words.addAll(told.marks(new Point(all.minX(), low + told.height())));
    low += told.height();
    if (!fits) {
      Paragraphs wide =
          new Paragraphs(this.words.text("restraint.order"), said, all.width(), Layers.TEXT);
      words.addAll(wide.marks(new Point(all.minX(), low + wide.height())));
      low += wide.height();
    }
    List<SheetTable> tables =
        Stream.of(lists.runs(restraint), lists.tolerances(restraint), lists.rows(restraint))
            .map(t -> t.onSheet(this.words))
            .toList();
    Bounds above = new Bounds(all.minX(), low + 4, all.maxX(), all.maxY());
    List<List<Mark>> pages = TableFlow.pages(tables, above, all);
    words.addAll(pages.get(0));
    sheets.add(Sheet.tables(title, measures, reminders, words));
    pages
        .subList(1, pages.size())
        .forEach(m -> sheets.add(Sheet.tables(title, measures, reminders, m)));
    return sheets;
  }

  private RestraintRun longest() {
    return restraint.runs().stream()
        .max(Comparator.comparingInt(RestraintRun::trusses))
        .orElseThrow();
  }

  /** What new lettering must not cover. */
  static Clutter clutter(Mark.Group base, double unitsPerMm) {
    Bounds all = Strokes.of(base.marks(), unitsPerMm).bounds();
    Clutter clutter = new Clutter(unitsPerMm, Math.max(all.width(), all.height()));
    base.marks().forEach(m -> clutter.take(clutter.shape(m)));
    return clutter;
  }

  /** Draws and numbers the rows of a run; tells how many numbers found no room. */
  private int rows(RestraintRun run, double unitsPerMm, Clutter clutter, List<Mark> marks) {
    double bay = plan.part(run.part()).orElseThrow().frame().spacing();
    int leftOff = 0;
    for (int i = 0; i < run.rows().size(); i++) {
      RestraintRow row = run.rows().get(i);
      if (row.length() <= 0) {
        continue;
      }
      marks.add(Mark.Path.line(row.line().from(), row.line().to(), layer(row.place()), run.run()));
      Point off = new Point(0, Lettering.SMALL * unitsPerMm);
      boolean below = row.place() == RestraintRow.Place.BOTTOM;
      boolean done = false;
      for (double at = 1.5 * bay; at < row.length() && !done; at += bay) {
        Point on = row.line().from().plus(row.line().direction().times(at));
        for (Point by : List.of(off.times(below ? -1.7 : 0.6), off.times(below ? 0.6 : -1.7))) {
          Mark label =
              new Mark.Text(
                  on.plus(by),
                  "R" + (i + 1),
                  Lettering.SMALL,
                  0,
                  Anchor.MIDDLE,
                  FrameLayers.MARK,
                  run.run());
          Clutter.Shape shape = clutter.shape(label);
          if (!done && !clutter.covers(shape)) {
            clutter.take(shape);
            marks.add(label);
            done = true;
          }
        }
      }
      leftOff += done ? 0 : 1;
    }
    diagonals(run, unitsPerMm, marks);
    return leftOff;
  }

  private static Layer layer(RestraintRow.Place place) {
    return switch (place) {
      case TOP -> AidLayers.TOP_ROW;
      case PEAK -> AidLayers.PEAK_ROW;
      case BOTTOM -> AidLayers.BOTTOM_ROW;
    };
  }

  /** A cross over the row at every place where it takes a diagonal. */
  private void diagonals(RestraintRun run, double unitsPerMm, List<Mark> marks) {
    Truss first =
        framing.trusses().stream()
            .filter(t -> t.run().equals(run.run()) && t.kind().squareToRidge())
            .min(Comparator.comparingDouble(Truss::station))
            .orElseThrow();
    double arm = 1.4 * unitsPerMm;
    for (RestraintRow row : run.rows()) {
      if (row.length() <= 0) {
        continue;
      }
      Point along = row.line().direction();
      double start = along.dot(row.line().from().minus(first.from()));
      for (double place : run.diagonals()) {
        double away = start < 0 ? Math.abs(start) - place : place - start;
        if (away >= -arm && away <= row.length() + arm) {
          Point at = row.line().from().plus(along.times(Math.max(0, Math.min(row.length(), away))));
          Point slant = new Point(arm, arm);
          marks.add(Mark.Path.line(at.minus(slant), at.plus(slant), AidLayers.DIAGONAL, run.run()));
        }
      }
    }
  }
}
