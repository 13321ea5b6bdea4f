package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;

/**
 * A table as marks on a page. Columns are as wide as what stands in them; where that is too much
 * for the page, words are cut short. A figure never is, since a piece of one would be read as
 * another: it stands whole, or three dots stand for it.
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

  private static final double PAD = 0.7;

  private static final double AFTER_MARK = 1.5;

  /** So that a count and the length beside it are never read as one figure. */
  private static final double BEFORE_FIGURE = 2.5;

  private static final String DOTS = "…";

  /** What stands in a column. */
  enum Kind {
    /** Flush left, cut short when it must be. */
    WORDS,
    /** Flush left, never cut. */
    MARK,
    /** Flush right, never cut. */
    FIGURE
  }

  record Column(String head, Kind kind) {}

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
    List<Double> widths = widths(width);
    double y = topLeft.y() - Lettering.MEDIUM;
    marks.add(text(new Point(topLeft.x(), y), title, Lettering.MEDIUM, Anchor.START));
    y -= 5;
    row(marks, topLeft.x(), y, widths, columns.stream().map(Column::head).toList());
    double rule = y - 1.5;
    marks.add(
        Mark.Path.line(
            new Point(topLeft.x(), rule), new Point(topLeft.x() + width, rule), Layers.RULES, ""));
    y = topLeft.y() - HEAD;
    for (List<String> cells : rows) {
      y -= ROW;
      row(marks, topLeft.x(), y + 1, widths, cells);
    }
    return marks;
  }

  private void row(
      List<Mark> marks, double left, double y, List<Double> widths, List<String> cells) {
    double x = left;
    for (int i = 0; i < columns.size(); i++) {
      boolean right = columns.get(i).kind() == Kind.FIGURE;
      String shown = shown(cells.get(i), columns.get(i).kind(), widths.get(i) - 2 * PAD);
      if (!shown.isEmpty()) {
        Point at = new Point(right ? x + widths.get(i) - PAD : x + PAD, y);
        marks.add(text(at, shown, Lettering.SMALL, right ? Anchor.END : Anchor.START));
      }
      x += widths.get(i);
    }
  }

  private static String shown(String cell, Kind kind, double room) {
    if (kind == Kind.WORDS) {
      return Lettering.fitted(cell, Lettering.SMALL, room);
    }
    return Lettering.width(cell, Lettering.SMALL) <= room ? cell : DOTS;
  }

  private static double apart(Kind kind) {
    return switch (kind) {
      case WORDS -> 0;
      case MARK -> AFTER_MARK;
      case FIGURE -> BEFORE_FIGURE;
    };
  }

  /** Figures and marks get what they need, words the rest; what is over goes to the words too. */
  private List<Double> widths(double width) {
    List<Double> natural = new ArrayList<>();
    double kept = 0;
    double words = 0;
    for (int i = 0; i < columns.size(); i++) {
      double widest = Lettering.width(columns.get(i).head(), Lettering.SMALL);
      for (List<String> cells : rows) {
        widest = Math.max(widest, Lettering.width(cells.get(i), Lettering.SMALL));
      }
      Kind kind = columns.get(i).kind();
      double room = widest + 2 * PAD + apart(kind);
      natural.add(room);
      if (kind == Kind.WORDS) {
        words += room;
      } else {
        kept += room;
      }
    }
    double squeeze = Math.min(1, width / kept);
    double stretch = words > 0 ? Math.max(0, width - kept) / words : width / kept;
    List<Double> widths = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      boolean takesTheRest = words == 0 || columns.get(i).kind() == Kind.WORDS;
      widths.add(natural.get(i) * (takesTheRest ? stretch : squeeze));
    }
    return widths;
  }

  private static Mark text(Point at, String text, double height, Anchor anchor) {
    return new Mark.Text(at, text, height, 0, anchor, Layers.TEXT, "");
  }
}
