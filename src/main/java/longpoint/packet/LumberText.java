package longpoint.packet;

import java.util.List;
import longpoint.field.lumber.BoardStock;
import longpoint.field.lumber.Lumber;
import longpoint.sheets.LumberRows;
import longpoint.sheets.RoofNames;
import longpoint.units.LengthUnit;

/** The cut list and the boards to buy, as plain text. */
final class LumberText {
  private LumberText() {}

  static void write(Lumber lumber, RoofNames names, LengthUnit unit, TextSections out) {
    LumberRows rows = new LumberRows(unit, names);
    out.section(
        "Cut list, ends as the saw is set from square; trusses come made",
        table(LumberRows.CUT_HEADS, rows.cuts(lumber)));
    out.section(
        "Boards to buy: no cutting of these pieces from these lengths takes less than \"at least\"",
        table(LumberRows.STOCK_HEADS, rows.stock(lumber)));
    if (!lumber.stock().isEmpty()) {
      out.line("Sizes are to count by; span tables, the local code or an engineer decide them.");
    }
    for (BoardStock stock : lumber.stock()) {
      out.section(
          "Cutting " + rows.section(stock.section()),
          table(LumberRows.PATTERN_HEADS, rows.patterns(stock)));
    }
  }

  private static TextTable table(List<String> heads, List<List<String>> rows) {
    TextTable table = new TextTable(heads.toArray(String[]::new));
    rows.forEach(r -> table.row(r.toArray(String[]::new)));
    return table;
  }
}
