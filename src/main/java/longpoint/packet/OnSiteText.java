package longpoint.packet;

import java.util.List;
import longpoint.pipeline.Design;
import longpoint.sheets.BuiltRows;
import longpoint.sheets.RoofNames;
import longpoint.sheets.RowTable;
import longpoint.sheets.SupplierRows;
import longpoint.sheets.Words;

/** What was measured and delivered, as plain text. */
final class OnSiteText {
  private OnSiteText() {}

  static void write(Design design, RoofNames names, TextSections out) {
    List<RowTable> walls = BuiltRows.tables(names, design.onSite().walls());
    walls.forEach(t -> section(t, out));
    if (!walls.isEmpty()) {
      out.line(names.words().text("built.caution.rule"));
    }
    trusses(design, out);
  }

  static void trusses(Design design, TextSections out) {
    Words words = Words.of(design.plan());
    List<RowTable> trusses = SupplierRows.tables(words, design.onSite().trusses());
    trusses.forEach(t -> section(t, out));
    if (!trusses.isEmpty()) {
      out.line(words.text("supplied.caution.rule"));
    }
  }

  private static void section(RowTable rows, TextSections out) {
    TextTable table = new TextTable(rows.listHeads());
    for (int i = 0; i < rows.rows().size(); i++) {
      table.rowOf(rows.subjects().get(i), rows.rows().get(i).toArray(String[]::new));
    }
    out.section(rows.title(), table);
  }
}
