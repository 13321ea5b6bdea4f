package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longpoint.field.lumber.BoardStock;
import longpoint.field.lumber.Lumber;
import longpoint.field.takeoff.TakeOff;
import longpoint.plan.SpanRating;
import longpoint.sheets.SheetTable.Column;
import longpoint.units.LengthText;

/** What to order and what to cut it into, as lists. */
final class OrderSheets {
  private OrderSheets() {}

  /** None where there is nothing to order. */
  static List<Sheet> of(Solved solved, SheetBorder border) {
    Words words = Words.of(solved.plan());
    List<Sheet> sheets = new ArrayList<>();
    TableFlow.pages(lumber(solved), border.field(List.of()))
        .forEach(
            m ->
                sheets.add(
                    Sheet.tables(
                        words.text("lumber.sheet"), words.text("lumber.sizes"), List.of(), m)));
    sheets.addAll(takeOff(solved, border));
    return sheets;
  }

  private static List<SheetTable> lumber(Solved solved) {
    Lumber lumber = solved.lumber();
    Cells cells = new Cells(Words.of(solved.plan()));
    Words words = cells.words();
    LumberRows rows = new LumberRows(solved.names());
    List<SheetTable> tables = new ArrayList<>();
    tables.add(
        cells.table(
            words.text("lumber.cuts"),
            columns(cells, LumberRows.CUT_HEADS, "number", "cutTo"),
            rows.cuts(lumber)));
    tables.add(
        cells.table(
            words.text("lumber.stock"),
            columns(cells, LumberRows.STOCK_HEADS, "together", "atLeast", "waste"),
            rows.stock(lumber)));
    for (BoardStock stock : lumber.stock()) {
      tables.add(
          cells.table(
              words.text("lumber.cutting", rows.section(stock.section())),
              columns(cells, LumberRows.PATTERN_HEADS, "boards", "of", "leftOver"),
              rows.patterns(stock)));
    }
    return tables;
  }

  /** What it is for may be cut short; everything else that is not a figure stands whole. */
  private static List<Column> columns(Cells cells, List<String> heads, String... figures) {
    return heads.stream()
        .map(
            h ->
                List.of(figures).contains(h)
                    ? cells.figure(h)
                    : h.equals("for") ? cells.words(h) : cells.mark(h))
        .toList();
  }

  private static List<Sheet> takeOff(Solved solved, SheetBorder border) {
    List<SheetTable> tables =
        solved.takeOff().covering().area() > 0
            ? List.of(sheets(solved), covering(solved), edges(solved))
            : List.of();
    Words words = Words.of(solved.plan());
    return TableFlow.pages(tables, border.field(List.of())).stream()
        .map(
            m ->
                Sheet.tables(
                    words.text("takeoff.sheet"), words.text("takeoff.measures"), List.of(), m))
        .toList();
  }

  private static SheetTable sheets(Solved solved) {
    Words words = Words.of(solved.plan());
    Cells cells = new Cells(words);
    List<List<String>> rows = new ArrayList<>();
    for (TakeOff.Sheets s : solved.takeOff().sheets()) {
      rows.add(
          List.of(
              LengthText.exact(s.panel().thickness(), words.unit()),
              words.length(s.panel().width()) + " × " + words.length(s.panel().length()),
              count(s.bought()),
              count(s.lowerBound()),
              words.area(s.areaUsed())));
    }
    return cells.table(
        words.text("takeoff.sheathing"),
        List.of(
            cells.mark("thick"),
            cells.mark("panel"),
            cells.figure("toBuy"),
            cells.figure("atLeast"),
            cells.figure("covers")),
        rows);
  }

  private static SheetTable covering(Solved solved) {
    Words words = Words.of(solved.plan());
    TakeOff t = solved.takeOff();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of(words.text("takeoff.nails"), count(t.fixings().nails())));
    if (t.edgeSupport() == SpanRating.EdgeSupport.CLIPS) {
      rows.add(List.of(words.text("takeoff.clips"), count(t.fixings().clips())));
    }
    rows.add(List.of(words.text("takeoff.rolls"), count(t.covering().rolls())));
    rows.add(List.of(words.text("takeoff.roofing"), words.area(t.covering().area())));
    rows.add(List.of(words.text("takeoff.withWaste"), words.area(t.covering().withWaste())));
    rows.add(
        List.of(
            words.text("takeoff.lots." + words.unit().symbol()),
            words.decimal(t.covering().squares(), 2)));
    rows.add(List.of(words.text("takeoff.bundles"), count(t.covering().bundles())));
    String share = words.text("takeoff.vents", t.vents().share().key());
    rows.add(List.of(share, words.area(t.vents().needed())));
    rows.add(List.of(words.text("takeoff.soffit"), words.area(t.soffit())));
    return table(words, "takeoff.covering", rows);
  }

  private static SheetTable edges(Solved solved) {
    Words words = Words.of(solved.plan());
    TakeOff t = solved.takeOff();
    return table(
        words,
        "takeoff.edges",
        List.of(
            List.of(words.text("takeoff.dripEaves"), words.length(t.lines().eaves())),
            List.of(words.text("takeoff.dripRakes"), words.length(t.lines().rakes())),
            List.of(words.text("takeoff.ridges"), words.length(t.lines().ridges())),
            List.of(words.text("takeoff.hips"), words.length(t.lines().hips())),
            List.of(words.text("takeoff.valleys"), words.length(t.lines().valleys()))));
  }

  private static SheetTable table(Words words, String title, List<List<String>> rows) {
    Cells cells = new Cells(words);
    return cells.table(
        words.text(title), List.of(cells.words("what"), cells.figure("howMuch")), rows);
  }

  private static String count(long count) {
    return String.format(Locale.ROOT, "%d", count);
  }
}
