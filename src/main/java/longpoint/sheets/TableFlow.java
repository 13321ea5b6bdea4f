package longpoint.sheets;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.stop.CalledOff;

/**
 * Stands tables one under another in columns, column beside column, page after page; a table that
 * does not fit goes on in the next column under the same heads. Nothing is left off. Where it takes
 * no more pages the rows are written larger, to be read at arm's length.
 */
final class TableFlow {
  private static final double GUTTER = 9;

  /** A table that must go on elsewhere starts there, unless this many rows stand here. */
  private static final int FEWEST_ROWS = 3;

  private final Bounds first;
  private final Bounds next;
  private final Deque<SheetTable> queue;
  private final List<List<Mark>> pages = new ArrayList<>();
  private boolean squeezed;
  private int splits;

  private TableFlow(List<SheetTable> tables, Bounds first, Bounds next) {
    this.first = first;
    this.next = next;
    this.queue = new ArrayDeque<>(tables);
    queue.removeIf(t -> t.rows().isEmpty());
  }

  /** The marks of each page; no page if there is nothing in the tables. */
  static List<List<Mark>> pages(List<SheetTable> tables, Bounds field) {
    List<List<Mark>> pages = pages(tables, field, field);
    return pages.size() == 1 && pages.get(0).isEmpty() ? List.of() : pages;
  }

  /**
   * As above, where something stands on the first page already.
   *
   * @param first what is free on the first page
   * @param next what is free on each further page
   * @return the marks of the first page, which may be none, then of the others
   */
  static List<List<Mark>> pages(List<SheetTable> tables, Bounds first, Bounds next) {
    TableFlow small = new TableFlow(tables, first, next);
    small.flow();
    List<SheetTable> lettered = tables.stream().map(t -> t.lettered(Lettering.MEDIUM)).toList();
    TableFlow large = new TableFlow(lettered, first, next);
    large.flow();
    // Where tables run on after a first page that holds something else, small letters keep more of
    // them beside what they belong to.
    boolean alone = first.equals(next) || large.pages.size() == 1;
    boolean room =
        alone
            && large.pages.size() <= small.pages.size()
            && large.splits <= small.splits
            && !large.squeezed;
    return room ? large.pages : small.pages;
  }

  private void flow() {
    Bounds field = first;
    do {
      pages.add(page(field));
      field = next;
    } while (!queue.isEmpty());
  }

  private List<Mark> page(Bounds field) {
    CalledOff.check();
    List<Mark> marks = new ArrayList<>();
    double x = field.minX();
    while (!queue.isEmpty()) {
      double used = column(marks, x, field);
      if (used == 0) {
        break;
      }
      x += used + GUTTER;
    }
    if (marks.isEmpty() && !queue.isEmpty() && field.equals(next)) {
      throw new IllegalStateException("no page is so small that no row fits: " + field);
    }
    return marks;
  }

  /** Fills one column and tells its width; 0 if nothing fits beside what is there. */
  private double column(List<Mark> marks, double x, Bounds field) {
    double room = field.maxX() - x;
    double y = field.maxY();
    double widest = 0;
    while (!queue.isEmpty()) {
      SheetTable table = queue.peek();
      double width = table.naturalWidth();
      boolean elsewhere = x > field.minX() || field.width() < next.width();
      boolean squeezable = x == field.minX() && table.leastWidth() <= room;
      if (width > room && elsewhere && !squeezable) {
        return widest;
      }
      squeezed |= width > room;
      width = Math.min(width, room);
      int rows = Math.min(table.rowsIn(width, y - field.minY()), table.rows().size());
      if (rows < Math.min(FEWEST_ROWS, table.rows().size())) {
        return widest;
      }
      queue.remove();
      SheetTable part = table.first(rows);
      marks.addAll(part.marks(new Point(x, y), width));
      widest = Math.max(widest, width);
      y -= part.height(width);
      if (rows < table.rows().size()) {
        queue.addFirst(table.from(rows));
        splits++;
        return widest;
      }
    }
    return widest;
  }
}
