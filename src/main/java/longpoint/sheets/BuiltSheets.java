package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import longpoint.drawing.Mark;
import longpoint.field.built.AsBuiltCheck;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;

/**
 * The walls as built on paper: drawn over the plan, every reading with what the fit leaves of it,
 * squareness, plates and shims, and what changes for the work.
 */
final class BuiltSheets {
  private BuiltSheets() {}

  /** None for a plan without readings. */
  static List<Sheet> of(Solved solved, SheetBorder border) {
    AsBuiltCheck check = solved.onSite().walls();
    if (check.walls().isEmpty()) {
      return List.of();
    }
    Plan plan = solved.plan();
    Words words = Words.of(plan);
    List<String> reminders =
        Stream.of("built.caution.rule", "built.caution.fit", "built.caution.place")
            .map(words::text)
            .toList();
    Bounds field = border.drawing(reminders);
    FittedView<BuiltView> fitted =
        FittedView.of(
            plan.unit(),
            BuiltView.solid(plan),
            field.width(),
            field.height(),
            (mm, limit) -> BuiltView.within(plan, check.walls(), mm, limit));
    List<Mark> marks = new ArrayList<>(List.of(fitted.in(field, "as-built")));
    Bounds column = border.column(reminders);
    Legend legend = Legend.ofLines(words, fitted.view().drawing().marks());
    marks.addAll(legend.marks(new Point(column.minX(), column.maxY())));
    Bounds below =
        new Bounds(column.minX(), column.minY(), column.maxX(), column.maxY() - legend.height());
    List<SheetTable> tables =
        BuiltRows.tables(solved.names(), check).stream().map(RowTable::onSheet).toList();
    List<List<Mark>> pages = TableFlow.pages(tables, below, border.field(reminders));
    marks.addAll(pages.get(0));
    String measures = words.text("built.measures", fitted.view().times());
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(
        Sheet.plan(
            words.text("built.sheet"),
            fitted.scale(),
            measures,
            fitted.view().leftOff(),
            reminders,
            marks));
    pages
        .subList(1, pages.size())
        .forEach(
            m ->
                sheets.add(
                    Sheet.tables(
                        words.text("built.more"), words.text("built.lengths"), reminders, m)));
    return sheets;
  }
}
