package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;

/**
 * A table as marks on a page.
 *
 * @param title above it
 * @param columns from the left
 * @param rows as many cells each as there are columns
 */
record SheetTable(String title, List<Column> columns, List<List<String>> rows) {
  static final double ROW = 4.5;

  /** Title and heads, with the room below them. */
  static final double HEAD = 12;

  /** Room below the last row. */
  static final double FOOT = 5;

  private static final double PAD = 1;

  /**
   * @param share of the table's width; the shares of all columns add up to 1
   * @param anchor START for words, END for figures
   */
  record Column(String head, double share, Anchor anchor) {}

  SheetTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    for (List<String> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(row + " in a table of " + columns.size());
      }
    }
  }

  double height() {
    return HEAD + rows.size() * ROW + FOOT;
  }

  /** How many rows fit in a height, at least none. */
  static int rowsIn(double height) {
    return Math.max(0, (int) Math.floor((height - HEAD) / ROW));
  }

  /** The rows from one on, under the same heads. */
  SheetTable from(int row) {
    return new SheetTable(title + ", continued", columns, rows.subList(row, rows.size()));
  }

  SheetTable first(int count) {
    return new SheetTable(title, columns, rows.subList(0, Math.min(count, rows.size())));
  }

  /**
   * @param topLeft on the page, millimetres
   */
  List<Mark> marks(Point topLeft, double width) {
    List<Mark> marks = new ArrayList<>();
    double y = topLeft.y() - Lettering.MEDIUM;
    marks.add(text(new Point(topLeft.x(), y), title, Lettering.MEDIUM, Anchor.START));
    y -= 5;
    row(marks, topLeft.x(), y, width, columns.stream().map(Column::head).toList());
    double rule = y - 1.5;
    marks.add(
        Mark.Path.line(
            new Point(topLeft.x(), rule), new Point(topLeft.x() + width, rule), Layers.RULES, ""));
    y = topLeft.y() - HEAD;
    for (List<String> cells : rows) {
      y -= ROW;
      row(marks, topLeft.x(), y + 1, width, cells);
    }
    return marks;
  }

  private void row(List<Mark> marks, double left, double y, double width, List<String> cells) {
    double x = left;
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      double room = column.share() * width;
      boolean right = column.anchor() == Anchor.END;
      String shown = Lettering.fitted(cells.get(i), Lettering.SMALL, room - 2 * PAD);
      double at = right ? x + room - PAD : x + PAD;
      if (!shown.isEmpty()) {
        marks.add(text(new Point(at, y), shown, Lettering.SMALL, column.anchor()));
      }
      x += room;
    }
  }

  private static Mark text(Point at, String text, double height, Anchor anchor) {
    return new Mark.Text(at, text, height, 0, anchor, Layers.TEXT, "");
  }
}
