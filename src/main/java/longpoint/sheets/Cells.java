package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longpoint.sheets.SheetTable.Column;
import longpoint.sheets.SheetTable.Kind;
import longpoint.units.FigureText;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/** How figures stand in the cells of the frame's tables. */
record Cells(LengthUnit unit) {
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

  static SheetTable running(String title, String first, String second, List<List<String>> rows) {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(first, Kind.MARK));
    columns.add(new Column(second, Kind.MARK));
    for (int i = 0; i < RUNNING; i++) {
      columns.add(figure(""));
    }
    return new SheetTable(title, columns, rows);
  }

  /** Two columns that name the thing, then figures. */
  static List<Column> columns(String mark, String kind, String... figures) {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(mark, Kind.MARK));
    columns.add(new Column(kind, Kind.MARK));
    for (String head : figures) {
      columns.add(figure(head));
    }
    return columns;
  }

  static Column figure(String head) {
    return new Column(head, Kind.FIGURE);
  }

  /** A length that could not be worked out is a question mark: no figure is better than a wrong. */
  String length(double length) {
    return !Double.isFinite(length) ? "?" : LengthText.of(length, unit);
  }

  static String count(long count) {
    return String.format(Locale.ROOT, "%d", count);
  }

  /** What the saw is set to, from square, for a cut measured from the edge of the stock. */
  static String saw(double fromEdge) {
    return FigureText.angle(90 - fromEdge);
  }
}
