package longpoint.sheets;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.deck.DeckPlan;
import longpoint.deck.PlaneDeck;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Placement;
import longpoint.field.chalk.ChalkSheet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * Sheets for the crew on the roof, one for each plane: the plane laid flat with its pieces and
 * chalk lines, and beneath it the tables. Tables that do not fit run on over further pages; nothing
 * is left off.
 */
public final class ChalkPages {
  private static final double MARGIN = 12;

  /** Head of the page. */
  private static final double HEAD = 22;

  /** Share of the page's height the drawing may take. */
  private static final double DRAWING = 0.5;

  /** Room kept beside the drawing for running figures, millimetres. */
  private static final double BESIDE = 24;

  private static final double GUTTER = 8;

  /** A table that must go on elsewhere starts there, unless this many rows stand here. */
  private static final int FEWEST_ROWS = 2;

  private static final String CAUTION =
      "Layout only, not engineering. Check the corner for square and two lines by tape before"
          + " cutting; the supplier's documents and the local code rule. Work tied off.";

  private final Plan plan;
  private final Paper paper;
  private final List<Page> pages = new ArrayList<>();

  private ChalkPages(Plan plan, Paper paper) {
    this.plan = plan;
    this.paper = paper;
  }

  /** Pages in the order of the planes. */
  public static List<Page> of(
      Plan plan, RoofSurface surface, DeckPlan deck, List<ChalkSheet> chalk, Paper paper) {
    ChalkPages pages = new ChalkPages(plan, paper);
    Map<String, String> letters = PlaneMarks.of(surface);
    for (PlaneDeck plane : deck.planes()) {
      Optional<ChalkSheet> sheet =
          chalk.stream().filter(c -> c.plane().equals(plane.plane())).findFirst();
      if (sheet.isPresent() || !plane.pieces().isEmpty()) {
        pages.plane(plane, sheet, "Plane " + joined(plane, letters));
      }
    }
    return List.copyOf(pages.pages);
  }

  private static String joined(PlaneDeck plane, Map<String, String> letters) {
    return String.join(
        " and ", plane.planes().stream().map(id -> letters.getOrDefault(id, id)).toList());
  }

  private void plane(PlaneDeck deck, Optional<ChalkSheet> chalk, String title) {
    Bounds ground = ChalkView.ground(deck);
    double width = paper.widthMm() - 2 * MARGIN - 2 * BESIDE;
    double height = (paper.heightMm() - 2 * MARGIN - HEAD) * DRAWING;
    PaperScale scale = scale(ground, width, height);
    double mm = scale.unitsPerMm(plan.unit());
    ChalkView view = ChalkView.of(deck, chalk, plan.unit(), mm);
    List<Mark> marks = head(title + ": sheets and chalk lines, " + scale.title());
    Point middle = new Point(paper.widthMm() / 2, paper.heightMm() - MARGIN - HEAD - height / 2);
    Point origin = middle.minus(ground.middle().times(1 / mm));
    marks.add(new Mark.Group("plane", new Placement(origin, 1 / mm, 0), view.marks()));
    Deque<SheetTable> lines = new ArrayDeque<>();
    chalk.ifPresent(c -> lines.add(ChalkTables.lines(c, plan.unit())));
    Deque<SheetTable> tables = new ArrayDeque<>();
    tables.add(ChalkTables.pieces(deck, plan.unit()));
    tables.add(ChalkTables.differences(deck, plan.unit()));
    tables.removeIf(t -> t.rows().isEmpty());
    double top = paper.heightMm() - MARGIN - HEAD - height - GUTTER;
    tables(marks, lines, tables, top);
    page(title, marks);
    while (!lines.isEmpty() || !tables.isEmpty()) {
      List<Mark> more = head(title + ", continued");
      tables(more, lines, tables, paper.heightMm() - MARGIN - HEAD);
      page(title + ", continued", more);
    }
  }

  /** Lines to snap across the page, the other tables in two columns beneath. */
  private void tables(
      List<Mark> marks, Deque<SheetTable> lines, Deque<SheetTable> tables, double top) {
    double width = paper.widthMm() - 2 * MARGIN;
    double below = column(marks, lines, new Point(MARGIN, top), width);
    if (lines.isEmpty()) {
      double half = (width - GUTTER) / 2;
      column(marks, tables, new Point(MARGIN, below), half);
      column(marks, tables, new Point(MARGIN + half + GUTTER, below), half);
    }
  }

  private PaperScale scale(Bounds ground, double width, double height) {
    for (PaperScale scale : PaperScale.of(plan.unit())) {
      double mm = scale.unitsPerMm(plan.unit());
      if (ground.width() <= width * mm && ground.height() <= height * mm) {
        return scale;
      }
    }
    double most = Math.max(ground.width() / width, ground.height() / height);
    return PaperScale.round(plan.unit().toMillimetres(most));
  }

  private List<Mark> head(String title) {
    List<Mark> marks = new ArrayList<>();
    double top = paper.heightMm() - MARGIN;
    String job = plan.title().isBlank() ? "Untitled" : plan.title();
    marks.add(text(new Point(MARGIN, top - Lettering.LARGE), job, Lettering.LARGE));
    marks.add(text(new Point(MARGIN, top - 11), title, Lettering.MEDIUM));
    double room = paper.widthMm() - 2 * MARGIN;
    double y = top - 16;
    for (String line : Lettering.wrapped(CAUTION, Lettering.SMALL, room, 2)) {
      marks.add(
          new Mark.Text(
              new Point(MARGIN, y),
              line,
              Lettering.SMALL,
              0,
              Anchor.START,
              Layers.SMALL_PRINT,
              ""));
      y -= 4;
    }
    return marks;
  }

  /** Tables one under another; takes off the queue what was put and tells where room is left. */
  private static double column(
      List<Mark> marks, Deque<SheetTable> tables, Point topLeft, double width) {
    double y = topLeft.y();
    while (!tables.isEmpty()) {
      SheetTable table = tables.peek();
      int rows = Math.min(SheetTable.rowsIn(y - MARGIN), table.rows().size());
      if (rows < Math.min(FEWEST_ROWS, table.rows().size())) {
        return y;
      }
      tables.remove();
      SheetTable part = table.first(rows);
      marks.addAll(part.marks(new Point(topLeft.x(), y), width));
      y -= part.height();
      if (rows < table.rows().size()) {
        tables.addFirst(table.from(rows));
        return y;
      }
    }
    return y;
  }

  private void page(String title, List<Mark> marks) {
    String number = "C-" + (pages.size() + 1);
    marks.add(
        new Mark.Text(
            new Point(paper.widthMm() - MARGIN, paper.heightMm() - MARGIN - Lettering.LARGE),
            number,
            Lettering.LARGE,
            0,
            Anchor.END,
            Layers.TEXT,
            ""));
    pages.add(new Page(number, title, paper.widthMm(), paper.heightMm(), marks));
  }

  private static Mark text(Point at, String text, double height) {
    return new Mark.Text(at, text, height, 0, Anchor.START, Layers.TEXT, "");
  }
}
