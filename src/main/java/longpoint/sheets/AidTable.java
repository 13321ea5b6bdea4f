package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import longpoint.sheets.SheetTable.Column;
import longpoint.sheets.SheetTable.Kind;

/**
 * A table of figures for lifting, restraint or loads, the same on sheets and in lists.
 *
 * @param title above it
 * @param rows as many cells each as there are columns
 * @param subjects for every row the id of what it tells of; empty where there is none
 * @param notes lines under it
 */
public record AidTable(
    String title,
    List<Column> columns,
    List<List<String>> rows,
    List<String> subjects,
    List<String> notes) {
  public AidTable {
    Objects.requireNonNull(title);
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    subjects = List.copyOf(subjects);
    notes = List.copyOf(notes);
  }

  /** Over its columns, beginning small as lists have them. */
  public List<String> heads() {
    return columns.stream().map(c -> lower(c.head())).toList();
  }

  private static String lower(String head) {
    return head.isEmpty()
        ? head
        : head.substring(0, 1).toLowerCase(Locale.ROOT) + head.substring(1);
  }

  SheetTable onSheet(Words words) {
    return new SheetTable(words, title, columns, rows);
  }

  /** Puts a table together row by row. */
  static final class Builder {
    private final String title;
    private final List<Column> columns = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> subjects = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    Builder(String title) {
      this.title = title;
    }

    Builder column(String head, Kind kind) {
      columns.add(new Column(head, kind));
      return this;
    }

    void row(String subject, List<String> cells) {
      rows.add(List.copyOf(cells));
      subjects.add(subject);
    }

    /** How many rows it has so far. */
    int size() {
      return rows.size();
    }

    void note(String note) {
      notes.add(note);
    }

    AidTable build() {
      return new AidTable(title, columns, rows, subjects, notes);
    }
  }
}
