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
  private static final String MEASURES =
      "To the outside face of wall framing. Check the diagonals before the plates are fixed.";

  private WallSheets() {}

  /** None for a plan without a part. */
  static List<Sheet> of(Plan plan, SheetBorder border) {
    if (plan.parts().isEmpty()) {
      return List.of();
    }
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
    Legend legend = Legend.ofLines(fitted.view().drawing().marks());
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
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(
        Sheet.plan(
            "Wall plan", fitted.scale(), MEASURES, fitted.view().leftOff(), List.of(), marks));
    pages
        .subList(1, pages.size())
        .forEach(m -> sheets.add(Sheet.tables("Wall tables", MEASURES, List.of(), m)));
    return sheets;
  }

  /** Where every corner stands, by running measures and by two tapes. */
  static SheetTable corners(Plan plan, WallCorners part) {
    Cells cells = new Cells(plan.unit());
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
    return new SheetTable(
        "Corners of "
            + RoofNames.part(part.part())
            + "; along the wall "
            + from
            + " to "
            + to
            + ", square off it, and tapes from both its ends",
        List.of(
            new Column("No.", Kind.MARK),
            Cells.figure("Along"),
            Cells.figure("Off"),
            Cells.figure("From " + from),
            Cells.figure("From " + to)),
        rows);
  }

  private static SheetTable walls(Plan plan, WallCorners part) {
    Cells cells = new Cells(plan.unit());
    List<List<String>> rows = new ArrayList<>();
    for (Side side : plan.sides(part.part())) {
      int start = side.index();
      rows.add(
          List.of(
              part.number(start) + " to " + part.number(next(part, start)),
              side.kind().key(),
              cells.length(side.wall().length()),
              cells.length(side.overhang()),
              cells.length(side.heel())));
    }
    return new SheetTable(
        "Walls of "
            + RoofNames.part(part.part())
            + "; plate "
            + cells.length(part.part().plateHeight()),
        List.of(
            new Column("Corners", Kind.MARK),
            new Column("Top", Kind.MARK),
            Cells.figure("Length"),
            Cells.figure("Overhang"),
            Cells.figure("Heel")),
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
