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
 * another: it stands whole, or three dots stand for it. A fine rule under every fifth row leads the
 * eye across.
 *
 * @param title above it; what follows its first semicolon or colon is written small beneath
 * @param continued word behind the title of a table that runs on over another page
 * @param columns from the left
 * @param rows as many cells each as there are columns
 * @param lettering height of the capitals in the rows, millimetres
 */
record SheetTable(
    String title,
    String continued,
    List<Column> columns,
    List<List<String>> rows,
    double lettering) {
  private static final double PAD = 0.7;

  private static final double AFTER_MARK = 1.5;

  /** So that a count and the length beside it are never read as one figure. */
  private static final double BEFORE_FIGURE = 2.5;

  /** A sign, in French after a space, with the note behind it. */
  private static final String NOTE = "\u00a0?[;:] ";

  private static final String DOTS = "…";
  private static final int RULED = 5;
  private static final int NOTE_LINES = 3;
  private static final double NOTE_LEAD = 1.6;

  /** Between what hangs below the title and its note. */
  private static final double NOTE_GAP = 0.8;

  /** A note makes no table wider than this. */
  private static final double NOTE_WIDTH = 90;

  /** Words may be cut to this width where a table would have no place otherwise. */
  private static final double SHORT_WORDS = 18;

  /** From row to row, over the height of a capital. */
  private static final double LEAD = 1.8;

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

  SheetTable(String title, List<Column> columns, List<List<String>> rows) {
    this(title, "continued", columns, rows, Lettering.SMALL);
  }

  SheetTable(Words words, String title, List<Column> columns, List<List<String>> rows) {
    this(title, words.text("table.continued"), columns, rows, Lettering.SMALL);
  }

  /** The same in letters of another height. */
  SheetTable lettered(double height) {
    return new SheetTable(title, continued, columns, rows, height);
  }

  private double row() {
    return lettering * LEAD;
  }

  private double titleHeight() {
    return lettering > Lettering.SMALL ? Lettering.LARGE : Lettering.MEDIUM;
  }

  private String name() {
    return title.split(NOTE, 2)[0];
  }

  private List<String> note(double width) {
    String[] pieces = title.split(NOTE, 2);
    return pieces.length == 1
        ? List.of()
        : Lettering.wrapped(pieces[1], Lettering.SMALL, width, NOTE_LINES);
  }

  /** Title, note and heads, with the room below them. */
  private double head(double width) {
    int lines = note(width).size();
    double note = lines == 0 ? 0 : lines * Lettering.SMALL * NOTE_LEAD + NOTE_GAP;
    return titleHeight() + 2 * lettering + 3.5 + note;
  }

  private double foot() {
    return 2 * lettering;
  }

  /**
   * Height of the whole on paper.
   *
   * @param width it is given
   */
  double height(double width) {
    return head(width) + rows.size() * row() + foot();
  }

  /** How many rows fit in a room, at least none. */
  int rowsIn(double width, double height) {
    return Math.max(0, (int) Math.floor((height - head(width)) / row()));
  }

  /** The rows from one on, under the same heads. */
  SheetTable from(int row) {
    String[] pieces = title.split("(?=" + NOTE + ")", 2);
    String more = ", " + continued;
    String next = pieces[0].endsWith(more) ? title : pieces[0] + more;
    String full = next.equals(title) || pieces.length == 1 ? next : next + pieces[1];
    return new SheetTable(full, continued, columns, rows.subList(row, rows.size()), lettering);
  }

  SheetTable first(int count) {
    return new SheetTable(
        title, continued, columns, rows.subList(0, Math.min(count, rows.size())), lettering);
  }

  /** Without its last column, for a place too narrow for all. */
  SheetTable withoutLast() {
    int kept = columns.size() - 1;
    List<List<String>> shorter = rows.stream().map(r -> r.subList(0, kept)).toList();
    return new SheetTable(title, continued, columns.subList(0, kept), shorter, lettering);
  }

  /** The width in which nothing is cut short. */
  double naturalWidth() {
    double columns = natural().stream().mapToDouble(d -> d).sum();
    String[] pieces = title.split(NOTE, 2);
    double note = pieces.length == 1 ? 0 : Lettering.width(pieces[1], Lettering.SMALL);
    return Math.max(
        Math.max(columns, Lettering.width(name(), titleHeight())), Math.min(note, NOTE_WIDTH));
  }

  /** The least width in which no figure is left out and of every word something stands. */
  double leastWidth() {
    List<Double> natural = natural();
    double least = 0;
    for (int i = 0; i < columns.size(); i++) {
      boolean words = columns.get(i).kind() == Kind.WORDS;
      least += words ? Math.min(SHORT_WORDS, natural.get(i)) : natural.get(i);
    }
    return least;
  }

  /**
   * @param topLeft on the page, millimetres
   */
  List<Mark> marks(Point topLeft, double width) {
    List<Mark> marks = new ArrayList<>();
    List<Double> widths = widths(width);
    double y = topLeft.y() - titleHeight();
    String name = Lettering.fitted(name(), titleHeight(), width);
    marks.add(text(new Point(topLeft.x(), y), name, titleHeight(), Anchor.START));
    List<String> note = note(width);
    y -= note.isEmpty() ? 0 : NOTE_GAP;
    for (String line : note) {
      y -= Lettering.SMALL * NOTE_LEAD;
      Point at = new Point(topLeft.x(), y);
      marks.add(new Mark.Text(at, line, Lettering.SMALL, 0, Anchor.START, Layers.SMALL_PRINT, ""));
    }
    y -= 2 * lettering;
    row(marks, topLeft.x(), y, widths, columns.stream().map(Column::head).toList());
    rule(marks, topLeft, y - 1.5, width);
    y = topLeft.y() - head(width);
    int count = 0;
    for (List<String> cells : rows) {
      y -= row();
      row(marks, topLeft.x(), y + lettering * 0.4, widths, cells);
      if (++count % RULED == 0 && count < rows.size()) {
        rule(marks, topLeft, y, width);
      }
    }
    return marks;
  }

  private static void rule(List<Mark> marks, Point left, double y, double width) {
    marks.add(
        Mark.Path.line(new Point(left.x(), y), new Point(left.x() + width, y), Layers.RULES, ""));
  }

  private void row(
      List<Mark> marks, double left, double y, List<Double> widths, List<String> cells) {
    double x = left;
    for (int i = 0; i < columns.size(); i++) {
      boolean right = columns.get(i).kind() == Kind.FIGURE;
      String shown = shown(cells.get(i), columns.get(i).kind(), widths.get(i) - 2 * PAD - lead(i));
      if (!shown.isEmpty()) {
        Point at = new Point(right ? x + widths.get(i) - PAD : x + PAD + lead(i), y);
        marks.add(text(at, shown, lettering, right ? Anchor.END : Anchor.START));
      }
      x += widths.get(i);
    }
  }

  private String shown(String cell, Kind kind, double room) {
    // Rounding may make the room a hair less than the very text it was made for.
    double enough = room + 1e-6;
    if (kind == Kind.WORDS) {
      return Lettering.fitted(cell, lettering, enough);
    }
    return Lettering.width(cell, lettering) <= enough ? cell : DOTS;
  }

  /** Room before what starts flush left after figures that end flush right. */
  private double lead(int column) {
    boolean after = column > 0 && columns.get(column - 1).kind() == Kind.FIGURE;
    return after && columns.get(column).kind() != Kind.FIGURE ? BEFORE_FIGURE : 0;
  }

  private static double apart(Kind kind) {
    return switch (kind) {
      case WORDS, MARK -> AFTER_MARK;
      case FIGURE -> BEFORE_FIGURE;
    };
  }

  private List<Double> natural() {
    List<Double> natural = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      double widest = Lettering.width(columns.get(i).head(), lettering);
      for (List<String> cells : rows) {
        widest = Math.max(widest, Lettering.width(cells.get(i), lettering));
      }
      natural.add(widest + 2 * PAD + lead(i) + apart(columns.get(i).kind()));
    }
    return natural;
  }

  /** Figures and marks get what they need, words the rest; what is over goes to the words too. */
  private List<Double> widths(double width) {
    List<Double> natural = natural();
    double kept = 0;
    double words = 0;
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).kind() == Kind.WORDS) {
        words += natural.get(i);
      } else {
        kept += natural.get(i);
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
