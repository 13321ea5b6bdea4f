package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longpoint.sheets.SheetTable.Column;
import longpoint.sheets.SheetTable.Kind;

/** Heads and cells of the tables on sheets; a head is named by its key under {@code head}. */
record Cells(Words words) {
  /** Figures to a row of running marks. */
  private static final int RUNNING = 8;

  /** Breaks a row of running figures over as many lines as it needs. */
  void running(List<List<String>> rows, String name, String second, List<Double> figures) {
    for (int i = 0; i < figures.size(); i += RUNNING) {
      List<String> row = new ArrayList<>(List.of(i == 0 ? name : "", i == 0 ? second : ""));
      for (int j = i; j < i + RUNNING; j++) {
        row.add(j < figures.size() ? length(figures.get(j)) : "");
      }
      rows.add(row);
    }
  }

  SheetTable running(String title, String first, String second, List<List<String>> rows) {
    List<Column> columns = new ArrayList<>();
    columns.add(mark(first));
    columns.add(mark(second));
    for (int i = 0; i < RUNNING; i++) {
      columns.add(new Column("", Kind.FIGURE));
    }
    return table(title, columns, rows);
  }

  /** Two columns that name the thing, then figures. */
  List<Column> columns(String mark, String kind, String... figures) {
    List<Column> columns = new ArrayList<>();
    columns.add(mark(mark));
    columns.add(mark(kind));
    for (String head : figures) {
      columns.add(figure(head));
    }
    return columns;
  }

  Column mark(String head) {
    return new Column(head(head), Kind.MARK);
  }

  Column words(String head) {
    return new Column(head(head), Kind.WORDS);
  }

  Column figure(String head) {
    return new Column(head(head), Kind.FIGURE);
  }

  private String head(String key) {
    return words.text("head." + key);
  }

  /**
   * @param title what follows its first colon or semicolon is written small beneath
   */
  SheetTable table(String title, List<Column> columns, List<List<String>> rows) {
    return new SheetTable(words, title, columns, rows);
  }

  /** A length that could not be worked out is a question mark: no figure is better than a wrong. */
  String length(double length) {
    return !Double.isFinite(length) ? "?" : words.length(length);
  }

  static String count(long count) {
    return String.format(Locale.ROOT, "%d", count);
  }

  /** What the saw is set to, from square, for a cut measured from the edge of the stock. */
  String saw(double fromEdge) {
    return words.angle(90 - fromEdge);
  }
}
