package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.drawing.Mark;
import longpoint.framing.FramingSet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * The frame seen from above with marks and tape marks: one layout, or for a house too large for one
 * an overview without marks and a layout of each part.
 *
 * @param sheets none for a plan without a frame
 * @param scale of the first
 */
record LayoutSheets(List<Sheet> sheets, PaperScale scale) {
  LayoutSheets {
    sheets = List.copyOf(sheets);
  }

  static LayoutSheets of(
      Plan plan, RoofSurface surface, FramingSet framing, RoofNames names, SheetBorder border) {
    if (framing.trusses().isEmpty() && framing.rafters().isEmpty()) {
      return new LayoutSheets(List.of(), PaperScale.usual(plan.unit()));
    }
    return new Layouts(plan, surface, framing, names, border).all();
  }

  /** The steps, with what they share. */
  private static final class Layouts {
    private final Plan plan;
    private final Words words;
    private final RoofSurface surface;
    private final FramingSet framing;
    private final SheetBorder border;
    private final Bounds field;
    private final TrussTables tables;
    private final List<Sheet> sheets = new ArrayList<>();

    Layouts(
        Plan plan, RoofSurface surface, FramingSet framing, RoofNames names, SheetBorder border) {
      this.plan = plan;
      this.words = names.words();
      this.surface = surface;
      this.framing = framing;
      this.border = border;
      this.field = border.drawing(FrameReminders.layout(words, framing));
      this.tables = new TrussTables(framing, new Cells(words), names);
    }

    LayoutSheets all() {
      boolean alone = plan.parts().size() == 1;
      if (alone || FittedFrame.hasRoom(plan, surface, framing, field)) {
        FittedFrame whole = FittedFrame.of(plan, surface, framing, field);
        if (alone || whole.readable()) {
          pages(words.text("layout.frame"), whole, plan, surface);
          return new LayoutSheets(sheets, whole.scale());
        }
      }
      FittedFrame whole = FittedFrame.bare(plan, surface, framing, field);
      layout(words.text("layout.overview"), whole, plan);
      for (Part part : plan.parts()) {
        Plan own = plan.withParts(List.of(part));
        if (!new FrameMarks(own, framing, 1).all().isEmpty()) {
          String title = words.text("layout.part", RoofNames.part(part));
          RoofSurface roof = roofOf(part);
          pages(title, FittedFrame.of(own, roof, framing, field), own, roof);
        }
      }
      return new LayoutSheets(sheets, whole.scale());
    }

    /** On one page if all its marks have room there, else on several. */
    private void pages(String title, FittedFrame whole, Plan shown, RoofSurface roof) {
      FrameTiles tiles =
          whole.view().leftOff() == 0
              ? new FrameTiles(List.of(), whole.scale())
              : FrameTiles.of(shown, words, roof, framing, field);
      if (tiles.views().isEmpty() || tiles.leftOff() >= whole.view().leftOff()) {
        layout(title, whole, shown);
        return;
      }
      for (int i = 0; i < tiles.views().size(); i++) {
        page(
            words.text("layout.page", title, i + 1, tiles.views().size()),
            new FittedFrame(tiles.views().get(i), tiles.scale(), whole.extent()));
      }
    }

    /**
     * Of several that show one frame together; how many stand here would not be how many to order.
     */
    private void page(String title, FittedFrame fitted) {
      List<Mark> marks = new ArrayList<>(List.of(fitted.in(field)));
      Bounds column = border.column(FrameReminders.layout(words, framing));
      Legend legend = Legend.of(words, fitted.layers());
      marks.addAll(legend.marks(new Point(column.minX(), column.maxY())));
      sheets.add(sheet(title, fitted, marks));
    }

    private Sheet sheet(String title, FittedFrame fitted, List<Mark> marks) {
      return Sheet.plan(
          title,
          fitted.scale(),
          measures(fitted),
          fitted.view().leftOff(),
          FrameReminders.layout(words, framing),
          marks);
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

    /**
     * Legend, and below it what stands here as far as there is room: the schedule has it all, spans
     * that would cut a kind short too.
     */
    private void layout(String title, FittedFrame fitted, Plan shown) {
      List<Mark> marks = new ArrayList<>(List.of(fitted.in(field)));
      Bounds column = border.column(FrameReminders.layout(words, framing));
      Legend legend = Legend.of(words, fitted.layers());
      marks.addAll(legend.marks(new Point(column.minX(), column.maxY())));
      Point below = new Point(column.minX(), column.maxY() - legend.height());
      SheetTable all = tables.standing(new FrameMarks(shown, framing, 1));
      SheetTable table = all.naturalWidth() > column.width() ? all.withoutLast() : all;
      double width = Math.min(column.width(), table.naturalWidth());
      int rows = table.rowsIn(width, below.y() - column.minY());
      if (rows >= table.rows().size() && !table.rows().isEmpty()) {
        marks.addAll(table.marks(below, width));
      }
      sheets.add(sheet(title, fitted, marks));
    }

    private String measures(FittedFrame fitted) {
      return switch (fitted.extent()) {
        case WHOLE -> FrameSheets.measures(words);
        case AROUND_FRAME -> words.text("layout.cutOff");
      };
    }
  }
}
