package longpoint.packet;

import java.util.List;
import longpoint.field.lumber.BoardStock;
import longpoint.field.lumber.Lumber;
import longpoint.sheets.LumberRows;
import longpoint.sheets.RoofNames;
import longpoint.sheets.Words;

/** The cut list and the boards to buy, as plain text. */
final class LumberText {
  private LumberText() {}

  static void write(Lumber lumber, RoofNames names, TextSections out) {
    Words words = names.words().from("packet");
    LumberRows rows = new LumberRows(names);
    out.section(words.text("cuts"), cuts(lumber, rows));
    out.section(words.text("stock"), table(rows.stockHeads(), rows.stock(lumber)));
    if (!lumber.stock().isEmpty()) {
      out.line(names.words().text("lumber.sizes"));
    }
    for (BoardStock stock : lumber.stock()) {
      out.section(
          names.words().text("lumber.cutting", rows.section(stock.section())),
          table(rows.patternHeads(), rows.patterns(stock)));
    }
  }

  private static TextTable cuts(Lumber lumber, LumberRows rows) {
    TextTable table = new TextTable(rows.cutHeads());
    List<List<String>> cells = rows.cuts(lumber);
    for (int i = 0; i < cells.size(); i++) {
      table.rowOf(lumber.cuts().get(i).mark(), cells.get(i).toArray(String[]::new));
    }
    return table;
  }

  private static TextTable table(List<String> heads, List<List<String>> rows) {
    TextTable table = new TextTable(heads);
    rows.forEach(r -> table.row(r.toArray(String[]::new)));
    return table;
  }
}
