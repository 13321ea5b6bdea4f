package longpoint.sheets;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Placement;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * The roof plan on paper: the view at the largest standard scale that fits, title block, legend,
 * tables of lines, planes and eaves, scale bar. Tables that do not fit beside the drawing run on
 * over further pages; nothing is left off.
 *
 * @param pages the plan first
 * @param scale of the view
 */
public record PlanSheet(List<Page> pages, PaperScale scale) {
  /** On paper, millimetres. */
  private static final double MARGIN = 10;

  private static final double PAD = 4;

  /** A table that must go on elsewhere starts there, unless this many rows stand here. */
  private static final int FEWEST_ROWS = 4;

  /** Strip below the drawing for scale bar and arrow. */
  private static final double STRIP = 20;

  /** Room in the strip for the scale bar, and for the arrow. */
  private static final double BAR = 76;

  private static final double ARROW = 26;

  /** Share of the paper's width the right-hand column takes, and its limits. */
  private static final double COLUMN_SHARE = 0.25;

  private static final double NARROWEST = 78;
  private static final double WIDEST = 100;

  public PlanSheet {
    pages = List.copyOf(pages);
  }

  /**
   * Lays out the sheet. Never fails for what a user can draw; an empty plan gives an empty view.
   */
  public static PlanSheet of(Plan plan, RoofSurface surface, Paper paper) {
    return new Layout(plan, surface, paper).sheet();
  }

  /** The steps, with what they share. */
  private static final class Layout {
    private final Plan plan;
    private final RoofSurface surface;
    private final Paper paper;
    private final double column;
    private final Bounds field;
    private final FittedView fitted;

    Layout(Plan plan, RoofSurface surface, Paper paper) {
      this.plan = plan;
      this.surface = surface;
      this.paper = paper;
      this.column = Math.max(NARROWEST, Math.min(WIDEST, paper.widthMm() * COLUMN_SHARE));
      this.field =
          new Bounds(
              MARGIN + PAD,
              MARGIN + STRIP,
              paper.widthMm() - MARGIN - column - PAD,
              paper.heightMm() - MARGIN - PAD);
      this.fitted = FittedView.of(plan, surface, field.width(), field.height());
    }

    PlanSheet sheet() {
      Deque<SheetTable> tables = new ArrayDeque<>();
      tables.add(RoofTables.lines(plan, surface));
      tables.add(RoofTables.planes(plan, surface));
      tables.add(RoofTables.eaves(plan, surface));
      tables.removeIf(t -> t.rows().isEmpty());
      List<Page> pages = new ArrayList<>();
      pages.add(planPage(tables));
      while (!tables.isEmpty()) {
        pages.add(tablePage(pages.size() + 1, tables));
      }
      return new PlanSheet(pages, fitted.scale());
    }

    private Page planPage(Deque<SheetTable> tables) {
      List<Mark> marks = frame(1, "Roof plan");
      double mmPerUnit = 1 / fitted.view().unitsPerMm();
      Bounds box = fitted.bounds();
      Point middle = box.isEmpty() ? new Point(0, 0) : box.middle();
      Point origin = field.middle().minus(middle.times(mmPerUnit));
      marks.add(
          new Mark.Group(
              "roof-plan", new Placement(origin, mmPerUnit, 0), fitted.view().drawing().marks()));
      Point corner = new Point(MARGIN + 8, MARGIN + 7);
      marks.addAll(ScaleBar.bar(corner, plan.unit(), fitted.scale()));
      marks.addAll(ScaleBar.north(new Point(columnLeft() - ARROW / 2, MARGIN + 11)));
      Legend legend = new Legend(fitted.view());
      Point top = new Point(columnLeft() + PAD, paper.heightMm() - MARGIN - PAD);
      marks.addAll(legend.marks(top));
      Point below = top.minus(new Point(0, legend.height()));
      fill(marks, tables, below, column - 2 * PAD, below.y() - titleTop(1, "Roof plan") - PAD);
      return page(1, "Roof plan", marks);
    }

    private Page tablePage(int number, Deque<SheetTable> tables) {
      List<Mark> marks = frame(number, "Roof tables");
      double width = column - 2 * PAD;
      double left = MARGIN + PAD;
      double top = paper.heightMm() - MARGIN - PAD;
      while (left + width < columnLeft() && !tables.isEmpty()) {
        fill(marks, tables, new Point(left, top), width, top - MARGIN - STRIP);
        left += width + 2 * PAD;
      }
      return page(number, "Roof tables", marks);
    }

    /** Puts as much of the tables as fits under a point; takes off the queue what was put. */
    private static void fill(
        List<Mark> marks, Deque<SheetTable> tables, Point topLeft, double width, double height) {
      double used = 0;
      while (!tables.isEmpty()) {
        SheetTable table = tables.peek();
        int rows = Math.min(SheetTable.rowsIn(height - used), table.rows().size());
        if (rows < Math.min(FEWEST_ROWS, table.rows().size())) {
          return;
        }
        tables.remove();
        SheetTable part = table.first(rows);
        marks.addAll(part.marks(topLeft.minus(new Point(0, used)), width));
        used += part.height();
        if (rows < table.rows().size()) {
          tables.addFirst(table.from(rows));
          return;
        }
      }
    }

    private List<Mark> frame(int number, String title) {
      List<Mark> marks = new ArrayList<>();
      double right = paper.widthMm() - MARGIN;
      double top = paper.heightMm() - MARGIN;
      marks.add(
          new Mark.Path(
              List.of(
                  new Point(MARGIN, MARGIN),
                  new Point(right, MARGIN),
                  new Point(right, top),
                  new Point(MARGIN, top)),
              true,
              Layers.FRAME,
              ""));
      marks.add(
          Mark.Path.line(
              new Point(columnLeft(), MARGIN), new Point(columnLeft(), top), Layers.FRAME, ""));
      marks.addAll(titleBlock(number, title).marks(new Point(columnLeft(), MARGIN)));
      Point cautions = new Point(MARGIN + BAR, MARGIN + STRIP - PAD / 2);
      marks.addAll(TitleBlock.cautions(cautions, columnLeft() - ARROW - cautions.x()));
      return marks;
    }

    private double columnLeft() {
      return paper.widthMm() - MARGIN - column;
    }

    private double titleTop(int number, String title) {
      return MARGIN + titleBlock(number, title).height();
    }

    private TitleBlock titleBlock(int number, String title) {
      return new TitleBlock(plan, surface.problems(), title, "R-" + number, fitted, paper, column);
    }

    private Page page(int number, String title, List<Mark> marks) {
      String job = plan.title().isBlank() ? "Untitled" : plan.title();
      return new Page("R-" + number, title + ", " + job, paper.widthMm(), paper.heightMm(), marks);
    }
  }
}
