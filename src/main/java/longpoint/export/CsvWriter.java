package longpoint.export;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes tables one below the other as comma-separated values (RFC 4180) in UTF-8, for
 * spreadsheets.
 *
 * <p>The first column names the table on every line, so that a spreadsheet can filter by it; then
 * come its heads, its rows and its notes, filled up to the columns of the widest table. A byte
 * order mark leads, or spreadsheets take a degree sign for two other letters. A cell that a
 * spreadsheet would work out as a formula is led by an apostrophe, as is common practice against
 * formulas in files of strangers; plain numbers stay numbers, with a decimal point in every
 * language.
 */
public final class CsvWriter {
  private static final char BYTE_ORDER_MARK = '\uFEFF';
  private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+(\\.[0-9]+)?");

  private CsvWriter() {}

  /**
   * Writes the tables in order. The stream is flushed, not closed.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(List<Table> tables, OutputStream out) throws IOException {
    Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
    int columns = 1 + tables.stream().mapToInt(t -> t.heads().size()).max().orElse(0);
    writer.write(BYTE_ORDER_MARK);
    for (Table table : tables) {
      line(writer, table.title(), table.heads(), columns);
      for (List<String> row : table.rows()) {
        line(writer, table.title(), row, columns);
      }
      for (String note : table.notes()) {
        line(writer, table.title(), List.of(note), columns);
      }
    }
    writer.flush();
  }

  private static void line(Writer writer, String title, List<String> cells, int columns)
      throws IOException {
    List<String> fields = new ArrayList<>();
    fields.add(field(title));
    cells.forEach(c -> fields.add(field(ReadFigure.pointed(c))));
    while (fields.size() < columns) {
      fields.add("");
    }
    writer.write(String.join(",", fields));
    writer.write("\r\n");
  }

  private static String field(String cell) {
    String safe = guarded(cell);
    boolean plain = safe.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
    return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
  }

  /** The cell, led by an apostrophe if a spreadsheet would work it out as a formula. */
  public static String guarded(String cell) {
    return isFormula(cell) ? "'" + cell : cell;
  }

  /** Spreadsheets skip blanks before they look for the sign that begins a formula. */
  private static boolean isFormula(String cell) {
    String bare = cell.strip();
    boolean begins = !bare.isEmpty() && "=+-@".indexOf(bare.charAt(0)) >= 0;
    boolean control = !cell.isEmpty() && cell.charAt(0) < ' ';
    return control || begins && !NUMBER.matcher(bare).matches();
  }
}
