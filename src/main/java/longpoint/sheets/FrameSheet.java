package longpoint.sheets;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.framing.FramingSet;
import longpoint.framing.valley.ValleySet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * The frame on paper, sheets F-1 and on: layout with marks, schedule and tape marks, the outline of
 * each truss, every valley set on its deck, gable ladders and ridge blocks, rafters and fascia. A
 * sheet that would be empty is not made.
 *
 * @param pages in order; none for a plan without a frame
 * @param scale of the layout
 */
public record FrameSheet(List<Page> pages, PaperScale scale) {
  private static final String NO_SCALE = "none";

  /** A table that must go on elsewhere starts there, unless this many rows stand here. */
  private static final int FEWEST_ROWS = 3;

  public FrameSheet {
    pages = List.copyOf(pages);
  }

  /** Lays out the sheets. Never fails for what a user can draw. */
  public static FrameSheet of(Plan plan, RoofSurface surface, FramingSet framing, Paper paper) {
    return new Sheets(plan, surface, framing, paper).all();
  }

  /** The steps, with what they share. */
  private static final class Sheets {
    private final Plan plan;
    private final RoofSurface surface;
    private final FramingSet framing;
    private final FrameBorder border;
    private final Bounds field;
    private final FrameTables tables;
    private final List<Page> pages = new ArrayList<>();

    Sheets(Plan plan, RoofSurface surface, FramingSet framing, Paper paper) {
      this.plan = plan;
      this.surface = surface;
      this.framing = framing;
      List<Problem> problems = new ArrayList<>(surface.problems());
      problems.addAll(framing.problems());
      this.border = new FrameBorder(plan, problems, paper);
      this.field = border.field();
      this.tables = new FrameTables(framing, plan.unit());
    }

    FrameSheet all() {
      PaperScale scale = PaperScale.usual(plan.unit());
      if (!framing.trusses().isEmpty() || !framing.rafters().isEmpty()) {
        scale = layout();
      }
      List<String> trusses = FrameReminders.trusses();
      tables("Truss schedule", trusses, tables.schedule(), tables.tapes(), tables.hangers());
      profiles();
      framing.valleySets().forEach(this::valleySet);
      ladders();
      tables("Ladders and blocks", FrameReminders.ladders(), tables.ladders(), tables.blocks());
      tables("Rafters and fascia", FrameReminders.rafters(), tables.rafters(), tables.boards());
      return new FrameSheet(pages, scale);
    }

    private FrameBorder.Sheet sheet(
        String title, String scale, int leftOff, List<String> reminders) {
      return FrameBorder.Sheet.of(pages.size() + 1, title, scale, leftOff, reminders);
    }

    /** One layout, or one of the whole without marks and one of each part with them. */
    private PaperScale layout() {
      boolean alone = plan.parts().size() == 1;
      if (alone || FittedFrame.hasRoom(plan, surface, framing, field)) {
        FittedFrame whole = FittedFrame.of(plan, surface, framing, field);
        if (alone || whole.readable()) {
          layout("Frame layout", whole, plan);
          return whole.scale();
        }
      }
      FittedFrame whole = FittedFrame.bare(plan, surface, framing, field);
      layout("Frame overview", whole, plan);
      for (Part part : plan.parts()) {
        Plan own = plan.withParts(List.of(part));
        if (!new FrameMarks(own, framing, 1).all().isEmpty()) {
          String name = part.name().isBlank() ? part.id() : part.name();
          layout("Layout: " + name, FittedFrame.of(own, roofOf(part), framing, field), own);
        }
      }
      return whole.scale();
    }

    /** The lines of the roof over one part, those it shares with others too. */
    private RoofSurface roofOf(Part part) {
      List<RoofPlane> planes =
          surface.planes().stream().filter(p -> p.part().equals(part.id())).toList();
      Set<String> ids = planes.stream().map(RoofPlane::id).collect(Collectors.toSet());
      List<RoofLine> lines =
          surface.lines().stream()
              .filter(l -> l.planes().stream().anyMatch(ids::contains))
              .toList();
      return new RoofSurface(planes, lines, List.of());
    }

    private void layout(String title, FittedFrame fitted, Plan shown) {
      List<Mark> marks = new ArrayList<>(List.of(fitted.in(field)));
      marks.addAll(border.compass(fitted.scale()));
      FrameBorder.Sheet sheet =
          sheet(title, fitted.scale().title(), fitted.view().leftOff(), FrameReminders.layout());
      column(sheet, marks, fitted.layers(), tables.standing(new FrameMarks(shown, framing, 1)));
      pages.add(border.page(sheet, marks));
    }

    /** Legend, and a table below it as far as there is room: it stands whole elsewhere. */
    private void column(
        FrameBorder.Sheet sheet, List<Mark> marks, List<Layer> layers, SheetTable table) {
      Bounds column = border.column(sheet);
      Legend legend = new Legend(layers);
      Point top = new Point(column.minX(), column.maxY());
      marks.addAll(legend.marks(top));
      Point below = top.minus(new Point(0, legend.height()));
      int rows = SheetTable.rowsIn(below.y() - column.minY());
      if (rows >= table.rows().size() && !table.rows().isEmpty()) {
        marks.addAll(table.marks(below, column.width()));
      }
    }

    private void profiles() {
      if (framing.marks().isEmpty()) {
        return;
      }
      FigureShelves.Drawn drawn =
          FigureShelves.fitted(
              plan.unit(),
              field,
              scale ->
                  framing.marks().stream().map(m -> ProfileFigure.of(plan, m, scale)).toList());
      figures("Truss outlines", drawn, FrameReminders.trusses());
    }

    private void ladders() {
      if (framing.ladders().isEmpty()) {
        return;
      }
      FigureShelves.Drawn drawn =
          FigureShelves.fitted(
              plan.unit(), field, scale -> LadderFigure.all(plan, framing.ladders(), scale));
      figures("Gable ladders", drawn, FrameReminders.ladders());
    }

    private void figures(String title, FigureShelves.Drawn drawn, List<String> reminders) {
      for (List<Mark> marks : FigureShelves.pages(drawn.figures(), field)) {
        pages.add(border.page(sheet(title, drawn.scale().title(), 0, reminders), marks));
      }
    }

    /** The set on its deck over its tables. */
    private void valleySet(ValleySet set) {
      List<SheetTable> wanted = List.of(tables.valley(set), tables.snapped(set));
      double height = wanted.stream().mapToDouble(SheetTable::height).sum();
      boolean beside = height < field.height() / 2;
      double foot = beside ? field.minY() + height : field.minY();
      Bounds room = new Bounds(field.minX(), foot, field.maxX(), field.maxY());
      FigureShelves.Drawn drawn =
          FigureShelves.fitted(
              plan.unit(), room, s -> List.of(ValleyFigure.of(set, plan.unit(), s, tables::mark)));
      SheetFigure figure = drawn.figures().get(0);
      double left = room.middle().x() - figure.widthMm() / 2;
      List<Mark> marks = new ArrayList<>(List.of(figure.at(new Point(left, room.maxY()))));
      double y = foot;
      for (SheetTable table : beside ? wanted : List.<SheetTable>of()) {
        marks.addAll(table.marks(new Point(field.minX(), y), tableWidth()));
        y -= table.height();
      }
      String title = "Valley set";
      FrameBorder.Sheet sheet = sheet(title, drawn.scale().title(), 0, FrameReminders.valley());
      column(sheet, marks, FrameLayers.ofValley(), tables.valleyNames(set));
      pages.add(border.page(sheet, marks));
      if (!beside) {
        tables(title, FrameReminders.valley(), wanted.toArray(SheetTable[]::new));
      }
    }

    private double tableWidth() {
      return field.width();
    }

    /** Tables over as many pages as they need; none if all are empty. */
    private void tables(String title, List<String> reminders, SheetTable... wanted) {
      Deque<SheetTable> queue = new ArrayDeque<>(List.of(wanted));
      queue.removeIf(t -> t.rows().isEmpty());
      while (!queue.isEmpty()) {
        List<Mark> marks = new ArrayList<>();
        double y = field.maxY();
        boolean full = false;
        while (!queue.isEmpty() && !full) {
          SheetTable table = queue.peek();
          int rows = Math.min(SheetTable.rowsIn(y - field.minY()), table.rows().size());
          full = rows < Math.min(FEWEST_ROWS, table.rows().size());
          if (!full) {
            queue.remove();
            SheetTable part = table.first(rows);
            marks.addAll(part.marks(new Point(field.minX(), y), tableWidth()));
            y -= part.height();
            if (rows < table.rows().size()) {
              queue.addFirst(table.from(rows));
              full = true;
            }
          }
        }
        pages.add(border.page(sheet(title, NO_SCALE, 0, reminders), marks));
      }
    }
  }
}
