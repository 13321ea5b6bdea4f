package longpoint.packet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import longpoint.export.CsvWriter;
import longpoint.export.Table;
import longpoint.pipeline.Design;
import longpoint.sheets.RowTable;
import longpoint.sheets.SupplierRows;
import longpoint.sheets.Words;

/** What a supplier's list differs in, to be sent back to him. */
public final class SupplierDifferences {
  private SupplierDifferences() {}

  /** Differences, missing and surplus trusses, and what every row was taken for. */
  public static List<Table> tables(Design design) {
    Words words = Words.of(design.plan());
    List<RowTable> rows = SupplierRows.tables(words, design.onSite().trusses());
    return rows.stream()
        .map(
            t ->
                new Table(
                    t.title(),
                    t.listHeads(),
                    t.rows(),
                    t == rows.get(rows.size() - 1)
                        ? List.of(words.text("supplied.caution.rule"))
                        : List.of()))
        .toList();
  }

  /** The same as comma-separated values; see {@link CsvWriter}. */
  public static void write(Design design, OutputStream out) throws IOException {
    CsvWriter.write(tables(design), out);
  }

  /** The same as plain text. */
  public static String text(Design design) {
    TextSections out = new TextSections();
    OnSiteText.trusses(design, out);
    return out.toString();
  }
}
