package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.sheets.SheetTable.Column;
import longpoint.sheets.SheetTable.Kind;

/**
 * The walls on paper: outlines with dimensions, numbered corners, diagonals and plate heights; the
 * tapes that set every corner out; the figures of every wall.
 */
final class WallSheets {
  private WallSheets() {}

  /** None for a plan without a part. */
  static List<Sheet> of(Plan plan, SheetBorder border) {
    if (plan.parts().isEmpty()) {
      return List.of();
    }
    Words words = Words.of(plan);
    Bounds field = border.drawing(List.of());
    FittedView<WallView> fitted =
        FittedView.of(
            plan.unit(),
            WallView.solid(plan),
            field.width(),
            field.height(),
            (mm, limit) -> WallView.within(plan, mm, limit));
    List<Mark> marks = new ArrayList<>(List.of(fitted.in(field, "wall-plan")));
    Bounds column = border.column(List.of());
    Legend legend = Legend.ofLines(words, fitted.view().drawing().marks());
    marks.addAll(legend.marks(new Point(column.minX(), column.maxY())));
    Bounds below =
        new Bounds(column.minX(), column.minY(), column.maxX(), column.maxY() - legend.height());
    List<SheetTable> tables = new ArrayList<>();
    for (WallCorners part : WallCorners.of(plan)) {
      tables.add(corners(plan, part));
      tables.add(walls(plan, part));
    }
    List<List<Mark>> pages = TableFlow.pages(tables, below, border.field(List.of()));
    marks.addAll(pages.get(0));
    String measures = words.text("walls.measures");
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(
        Sheet.plan(
            words.text("walls.plan"),
            fitted.scale(),
            measures,
            fitted.view().leftOff(),
            List.of(),
            marks));
    pages
        .subList(1, pages.size())
        .forEach(m -> sheets.add(Sheet.tables(words.text("walls.tables"), measures, List.of(), m)));
    return sheets;
  }

  /** Where every corner stands, by running measures and by two tapes. */
  static SheetTable corners(Plan plan, WallCorners part) {
    Cells cells = new Cells(Words.of(plan));
    Segment base = part.baseWall();
    String from = String.valueOf(part.number(part.base()));
    String to = String.valueOf(part.number(part.baseEnd()));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < part.corners().size(); i++) {
      Point corner = part.corners().get(i);
      rows.add(
          List.of(
              String.valueOf(part.number(i)),
              cells.length(base.along(corner)),
              cells.length(base.offset(corner)),
              cells.length(corner.distance(base.from())),
              cells.length(corner.distance(base.to()))));
    }
    Words words = cells.words();
    return cells.table(
        words.text("walls.corners", RoofNames.part(part.part()), from, to),
        List.of(
            cells.mark("no"),
            cells.figure("alongWall"),
            cells.figure("offWall"),
            new Column(words.text("walls.from", from), Kind.FIGURE),
            new Column(words.text("walls.from", to), Kind.FIGURE)),
        rows);
  }

  private static SheetTable walls(Plan plan, WallCorners part) {
    Words words = Words.of(plan);
    Cells cells = new Cells(words);
    List<List<String>> rows = new ArrayList<>();
    for (Side side : plan.sides(part.part())) {
      int start = side.index();
      rows.add(
          List.of(
              words.text("fromTo", part.number(start), part.number(next(part, start))),
              words.choice("edge", side.kind()),
              cells.length(side.wall().length()),
              cells.length(side.overhang()),
              cells.length(side.heel())));
    }
    return cells.table(
        words.text(
            "walls.of", RoofNames.part(part.part()), cells.length(part.part().plateHeight())),
        List.of(
            cells.mark("corners"),
            cells.mark("top"),
            cells.figure("length"),
            cells.figure("overhang"),
            cells.figure("heel")),
        rows);
  }

  /** Sides of a ring follow one another, the last back to the first. */
  private static int next(WallCorners part, int side) {
    int start = 0;
    int size = part.part().outline().size();
    for (int hole = 0; side >= start + size; hole++) {
      start += size;
      size = part.part().holes().get(hole).size();
    }
    return start + (side - start + 1) % size;
  }
}
