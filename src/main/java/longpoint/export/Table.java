package longpoint.export;

import java.util.List;
import java.util.Objects;

/**
 * A table of figures, ready to be read: every cell is text.
 *
 * @param title of the table
 * @param heads of the columns, at least one
 * @param rows each with a cell for every head
 * @param notes lines that belong under the table, may be none
 */
public record Table(String title, List<String> heads, List<List<String>> rows, List<String> notes) {
  public Table {
    Objects.requireNonNull(title);
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
    notes = List.copyOf(notes);
    if (heads.isEmpty()) {
      throw new IllegalArgumentException("a table needs a column");
    }
    for (List<String> row : rows) {
      if (row.size() != heads.size()) {
        throw new IllegalArgumentException("a row needs " + heads.size() + " cells: " + row);
      }
    }
  }
}
