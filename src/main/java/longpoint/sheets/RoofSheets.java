package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * The roof plan on paper at the largest standard scale that fits, with legend and the tables of
 * lines, planes and eaves. Tables that do not fit beside the drawing run on over further sheets.
 *
 * @param sheets the plan first
 * @param scale of the view
 */
record RoofSheets(List<Sheet> sheets, PaperScale scale) {
  RoofSheets {
    sheets = List.copyOf(sheets);
  }

  /** Never fails for what a user can draw; an empty plan gives an empty view. */
  static RoofSheets of(Plan plan, RoofSurface surface, SheetBorder border) {
    Words words = Words.of(plan);
    Bounds field = border.drawing(List.of());
    FittedView<PlanView> fitted = FittedView.of(plan, surface, field.width(), field.height());
    List<SheetTable> tables =
        List.of(
            RoofTables.lines(plan, surface),
            RoofTables.planes(plan, surface),
            RoofTables.eaves(plan, surface));
    List<Mark> marks = new ArrayList<>(List.of(fitted.in(field, "roof-plan")));
    Legend legend = Legend.ofLines(words, fitted.view().drawing().marks());
    Bounds column = border.column(List.of());
    marks.addAll(legend.marks(new Point(column.minX(), column.maxY())));
    Bounds below =
        new Bounds(column.minX(), column.minY(), column.maxX(), column.maxY() - legend.height());
    List<List<Mark>> pages = TableFlow.pages(tables, below, border.field(List.of()));
    marks.addAll(pages.get(0));
    List<Sheet> sheets = new ArrayList<>();
    int leftOff = fitted.view().leftOff();
    String measures = words.text("roof.measures");
    sheets.add(
        Sheet.plan(words.text("roof.plan"), fitted.scale(), measures, leftOff, List.of(), marks));
    for (List<Mark> more : pages.subList(1, pages.size())) {
      sheets.add(Sheet.tables(words.text("roof.tables"), measures, List.of(), more));
    }
    return new RoofSheets(sheets, fitted.scale());
  }
}
