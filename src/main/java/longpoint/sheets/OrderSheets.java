package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longpoint.field.lumber.BoardStock;
import longpoint.field.lumber.Lumber;
import longpoint.field.takeoff.TakeOff;
import longpoint.plan.SpanRating;
import longpoint.sheets.SheetTable.Column;
import longpoint.sheets.SheetTable.Kind;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/** What to order and what to cut it into, as lists. */
final class OrderSheets {
  private static final String MEASURES = "Of the parts that are to be built.";

  private OrderSheets() {}

  private static final String CUTTING =
      "Sizes are to count by; span tables, the local code or an engineer decide them.";

  /** None where there is nothing to order. */
  static List<Sheet> of(Solved solved, SheetBorder border) {
    List<Sheet> sheets = new ArrayList<>();
    TableFlow.pages(lumber(solved), border.field(List.of()))
        .forEach(m -> sheets.add(Sheet.tables("Cut and stock lists", CUTTING, List.of(), m)));
    sheets.addAll(takeOff(solved, border));
    return sheets;
  }

  private static List<SheetTable> lumber(Solved solved) {
    Lumber lumber = solved.lumber();
    LumberRows rows = new LumberRows(solved.plan().unit(), solved.names());
    List<SheetTable> tables = new ArrayList<>();
    tables.add(
        new SheetTable(
            "Cut list; ends as the saw is set from square; trusses come made",
            columns(LumberRows.CUT_HEADS, "number", "cut to"),
            rows.cuts(lumber)));
    tables.add(
        new SheetTable(
            "Boards to buy; no cutting of these pieces from these lengths takes less than the least",
            columns(LumberRows.STOCK_HEADS, "together", "at least", "waste"),
            rows.stock(lumber)));
    for (BoardStock stock : lumber.stock()) {
      tables.add(
          new SheetTable(
              "Cutting " + rows.section(stock.section()),
              columns(LumberRows.PATTERN_HEADS, "boards", "of", "left"),
              rows.patterns(stock)));
    }
    return tables;
  }

  /** What it is for may be cut short; everything else that is not a figure stands whole. */
  private static List<Column> columns(List<String> heads, String... figures) {
    return heads.stream()
        .map(
            h -> {
              Kind other = h.equals("for") ? Kind.WORDS : Kind.MARK;
              Kind kind = List.of(figures).contains(h) ? Kind.FIGURE : other;
              return new Column(h.substring(0, 1).toUpperCase(Locale.ROOT) + h.substring(1), kind);
            })
        .toList();
  }

  private static List<Sheet> takeOff(Solved solved, SheetBorder border) {
    List<SheetTable> tables =
        solved.takeOff().covering().area() > 0
            ? List.of(sheets(solved), covering(solved), edges(solved))
            : List.of();
    return TableFlow.pages(tables, border.field(List.of())).stream()
        .map(m -> Sheet.tables("Take-off", MEASURES, List.of(), m))
        .toList();
  }

  private static SheetTable sheets(Solved solved) {
    LengthUnit unit = solved.plan().unit();
    List<List<String>> rows = new ArrayList<>();
    for (TakeOff.Sheets s : solved.takeOff().sheets()) {
      rows.add(
          List.of(
              LengthText.exact(s.panel().thickness(), unit),
              LengthText.of(s.panel().width(), unit)
                  + " × "
                  + LengthText.of(s.panel().length(), unit),
              count(s.bought()),
              count(s.lowerBound()),
              FigureText.area(s.areaUsed(), unit)));
    }
    return new SheetTable(
        "Sheathing; to buy by the cutting diagrams, and what no cutting can go below",
        List.of(
            new Column("Thick", Kind.MARK),
            new Column("Sheet", Kind.MARK),
            new Column("To buy", Kind.FIGURE),
            new Column("At least", Kind.FIGURE),
            new Column("Covers", Kind.FIGURE)),
        rows);
  }

  private static SheetTable covering(Solved solved) {
    LengthUnit unit = solved.plan().unit();
    TakeOff t = solved.takeOff();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Nails by the schedule", count(t.fixings().nails())));
    if (t.edgeSupport() == SpanRating.EdgeSupport.CLIPS) {
      rows.add(List.of("Edge clips", count(t.fixings().clips())));
    }
    rows.add(List.of("Underlay, rolls", count(t.covering().rolls())));
    rows.add(List.of("Roofing, true area", FigureText.area(t.covering().area(), unit)));
    rows.add(List.of("Roofing with waste", FigureText.area(t.covering().withWaste(), unit)));
    String lots = unit == LengthUnit.INCH ? "squares of 100 sq ft" : "lots of 10 m²";
    rows.add(
        List.of("Roofing, " + lots, String.format(Locale.ROOT, "%.2f", t.covering().squares())));
    rows.add(List.of("Roofing, bundles", count(t.covering().bundles())));
    String share = "Attic vents at " + t.vents().share().key();
    rows.add(List.of(share, FigureText.area(t.vents().needed(), unit)));
    rows.add(List.of("Soffit", FigureText.area(t.soffit(), unit)));
    return table("Fixings and covering; which vent share holds is for the local code to say", rows);
  }

  private static SheetTable edges(Solved solved) {
    LengthUnit unit = solved.plan().unit();
    TakeOff t = solved.takeOff();
    return table(
        "Edges and lines",
        List.of(
            List.of("Drip edge, eaves", LengthText.of(t.lines().eaves(), unit)),
            List.of("Drip edge, rakes", LengthText.of(t.lines().rakes(), unit)),
            List.of("Ridges", LengthText.of(t.lines().ridges(), unit)),
            List.of("Hips", LengthText.of(t.lines().hips(), unit)),
            List.of("Valleys", LengthText.of(t.lines().valleys(), unit))));
  }

  private static SheetTable table(String title, List<List<String>> rows) {
    return new SheetTable(
        title, List.of(new Column("What", Kind.WORDS), new Column("How much", Kind.FIGURE)), rows);
  }

  private static String count(long count) {
    return String.format(Locale.ROOT, "%d", count);
  }
}
