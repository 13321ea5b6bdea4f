package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.field.loads.Loads;
import longpoint.field.loads.PointLoad;
import longpoint.field.loads.WallLoad;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.plan.Side;

/**
 * Loads to pass on, on paper: stretches of wall and girders' bearings numbered on the layout, and
 * what comes to each. Made only where loads are typed: without them the lists have the areas.
 */
final class LoadSheets {
  private LoadSheets() {}

  /** None without typed loads or without a frame. */
  static List<Sheet> of(Solved solved, SheetBorder border) {
    Plan plan = solved.plan();
    Loads loads = solved.aids().loads();
    if (!plan.handling().loads().any() || loads.walls().isEmpty()) {
      return List.of();
    }
    Words words = Words.of(plan);
    List<String> reminders =
        Stream.of("reminder.loads", "reminder.supplier").map(words::text).toList();
    Bounds field = border.drawing(reminders);
    FittedFrame whole = FittedFrame.toDrawOn(plan, solved.surface(), solved.framing(), field);
    Mark.Group base = (Mark.Group) whole.in(field);
    List<Mark> marks = new ArrayList<>(List.of(base));
    List<Mark> numbers = new ArrayList<>();
    int leftOff = numbered(plan, loads, base, whole.view().unitsPerMm(), numbers);
    marks.add(new Mark.Group("loads", base.placement(), numbers));
    Bounds column = border.column(reminders);
    Legend legend = Legend.of(words, AidLayers.ofLoads());
    marks.addAll(legend.marks(new Point(column.minX(), column.maxY())));
    LoadRows rows = new LoadRows(plan, solved.names());
    List<String> notes = new ArrayList<>(rows.walls(loads).notes());
    notes.addAll(rows.sums(loads).notes());
    Paragraphs told = new Paragraphs(words.text("loads.read"), notes, column.width(), Layers.TEXT);
    marks.addAll(told.marks(new Point(column.minX(), column.maxY() - legend.height())));
    String title = words.text("loads.sheet");
    String measures = words.text("loads.measures");
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(Sheet.plan(title, whole.scale(), measures, leftOff, reminders, marks));
    List<SheetTable> tables = rows.all(loads).stream().map(t -> t.onSheet(words)).toList();
    TableFlow.pages(tables, border.field(reminders))
        .forEach(m -> sheets.add(Sheet.tables(title, measures, reminders, m)));
    return sheets;
  }

  /** Tells how many numbers found no room. */
  private static int numbered(
      Plan plan, Loads loads, Mark.Group base, double unitsPerMm, List<Mark> marks) {
    Clutter clutter = RestraintSheets.clutter(base, unitsPerMm);
    int leftOff = 0;
    int number = 0;
    for (WallLoad load : loads.walls()) {
      number++;
      Segment wall = wall(plan, load.wall());
      if (wall == null || load.to() <= load.from()) {
        continue;
      }
      Point along = wall.direction();
      Point out = along.left().times(-1);
      Point from = wall.from().plus(along.times(load.from()));
      Point to = wall.from().plus(along.times(load.to()));
      Point off = out.times(2.5 * unitsPerMm);
      double tick = 0.8 * unitsPerMm;
      marks.add(
          Mark.Path.line(
              from.plus(off).plus(along.times(tick / 2)),
              to.plus(off).minus(along.times(tick / 2)),
              AidLayers.LOADED,
              load.wall()));
      List<Mark> places = new ArrayList<>();
      for (double mm : new double[] {5.5, -3, 9, -6.5}) {
        for (double share : new double[] {0.5, 0.46, 0.54, 0.35, 0.65}) {
          Point at = from.toward(to, share).plus(out.times(mm * unitsPerMm));
          places.add(label(at, Cells.count(number), unitsPerMm, load.wall()));
        }
      }
      Optional<Mark> free = clear(places, clutter);
      free.ifPresent(
          label -> {
            clutter.take(clutter.shape(label));
            marks.add(label);
          });
      leftOff += free.isPresent() ? 0 : 1;
    }
    for (PointLoad load : loads.points()) {
      marks.add(
          new Mark.Arc(
              load.at(),
              1.3 * unitsPerMm,
              0,
              360,
              AidLayers.POST,
              LoadRows.subject(load.member())));
    }
    return leftOff;
  }

  /** The first place off every line, or else the first off other lettering. */
  private static Optional<Mark> clear(List<Mark> places, Clutter clutter) {
    List<Mark> legible = places.stream().filter(m -> !clutter.covers(clutter.shape(m))).toList();
    return legible.stream()
        .filter(m -> !clutter.crosses(clutter.shape(m)))
        .findFirst()
        .or(() -> legible.stream().findFirst());
  }

  private static Mark label(Point at, String said, double unitsPerMm, String subject) {
    Point low = at.minus(new Point(0, Lettering.SMALL / 2 * unitsPerMm));
    return new Mark.Text(low, said, Lettering.SMALL, 0, Anchor.MIDDLE, FrameLayers.MARK, subject);
  }

  private static Segment wall(Plan plan, String id) {
    return plan.parts().stream()
        .flatMap(p -> plan.sides(p).stream())
        .filter(s -> s.id().equals(id))
        .map(Side::wall)
        .findFirst()
        .orElse(null);
  }
}
