package longpoint.sheets;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.framing.FramingSet;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * A frame too crowded for one page, on several that meet at match lines: the fewest pages of which
 * none leaves a mark or tape figure off, else those that leave off least.
 *
 * @param views a page each, row after row from the top left
 * @param scale of all
 */
record FrameTiles(List<FrameView> views, PaperScale scale) {
  /** Columns and rows tried for a frame that is wider than high, the fewest pages first. */
  private static final int[][] GRIDS = {{2, 1}, {3, 1}, {2, 2}, {3, 2}, {4, 2}};

  /** Room for tape figures on a side that is no match line, on paper. */
  private static final double LETTERING_MM = 22;

  /**
   * How far lettering may stand out past a match line: a figure beside the last truss, on paper.
   */
  private static final double PAST_MM = 3;

  /** Between a match line and its words, past lettering that leans over it, on paper. */
  private static final double AIR_MM = PAST_MM + 1;

  /** Room for a match line's words, on paper. */
  private static final double MATCH_MM = AIR_MM + Lettering.SMALL + 1;

  FrameTiles {
    views = List.copyOf(views);
  }

  int leftOff() {
    return views.stream().mapToInt(FrameView::leftOff).sum();
  }

  static FrameTiles of(
      Plan plan, Words words, RoofSurface surface, FramingSet framing, Bounds field) {
    FrameBase base = FrameBase.around(plan, surface, framing);
    Bounds solid = FrameView.solid(plan, base, framing);
    boolean wide = solid.width() >= solid.height();
    FrameTiles best = null;
    for (int[] grid : GRIDS) {
      int columns = wide ? grid[0] : grid[1];
      int rows = wide ? grid[1] : grid[0];
      Tiling tiling = new Tiling(plan, words, surface, framing, base, solid, columns, rows);
      for (PaperScale scale : tiling.scales(field)) {
        FrameTiles tiles = tiling.on(field, scale);
        if (best == null || tiles.leftOff() < best.leftOff()) {
          best = tiles;
        }
        if (best.leftOff() == 0) {
          return best;
        }
      }
    }
    return best;
  }

  private record Tiling(
      Plan plan,
      Words words,
      RoofSurface surface,
      FramingSet framing,
      FrameBase base,
      Bounds solid,
      int columns,
      int rows) {
    /** The largest that fits, and the next ones that leave room for tape figures. */
    private List<PaperScale> scales(Bounds field) {
      Bounds most = less(field, matchX(), matchY());
      double across = LETTERING_MM * (columns == 1 ? 2 : 1);
      double up = LETTERING_MM * (rows == 1 ? 2 : 1);
      Bounds room = less(most, across, up);
      Set<PaperScale> scales = new LinkedHashSet<>();
      scales.add(FittedFrame.scales(plan, window(0, 0), most).get(0));
      scales.addAll(FittedFrame.scales(plan, window(0, 0), room));
      return List.copyOf(scales);
    }

    private static Bounds less(Bounds field, double across, double up) {
      return new Bounds(field.minX(), field.minY(), field.maxX() - across, field.maxY() - up);
    }

    FrameTiles on(Bounds field, PaperScale scale) {
      double unitsPerMm = scale.unitsPerMm(plan.unit());
      List<FrameView> views = new ArrayList<>();
      for (int row = 0; row < rows; row++) {
        for (int column = 0; column < columns; column++) {
          views.add(view(column, row, unitsPerMm, field));
        }
      }
      return new FrameTiles(views, scale);
    }

    /** Row 0 is the top one. */
    private Bounds window(int column, int row) {
      double width = solid.width() / columns;
      double height = solid.height() / rows;
      double left = solid.minX() + column * width;
      double top = solid.maxY() - row * height;
      return new Bounds(left, top - height, left + width, top);
    }

    private double matchX() {
      return MATCH_MM * Math.min(2, columns - 1);
    }

    private double matchY() {
      return MATCH_MM * Math.min(2, rows - 1);
    }

    /** Lettering may stand in the spare paper outside the house, but not past a match line. */
    private FrameView view(int column, int row, double unitsPerMm, Bounds field) {
      Bounds window = window(column, row);
      double spareX = Math.max(0, (field.width() - matchX()) * unitsPerMm - window.width());
      double spareY = Math.max(0, (field.height() - matchY()) * unitsPerMm - window.height());
      double past = PAST_MM * unitsPerMm;
      int sidesX = (column == 0 ? 1 : 0) + (column == columns - 1 ? 1 : 0);
      int sidesY = (row == 0 ? 1 : 0) + (row == rows - 1 ? 1 : 0);
      Bounds limit =
          new Bounds(
              window.minX() - (column == 0 ? spareX / sidesX : past),
              window.minY() - (row == rows - 1 ? spareY / sidesY : past),
              window.maxX() + (column == columns - 1 ? spareX / sidesX : past),
              window.maxY() + (row == 0 ? spareY / sidesY : past));
      FrameView.Page page = new FrameView.Page(unitsPerMm, limit, Optional.of(window));
      FrameView view = FrameView.within(plan, surface, framing, base, page);
      List<Mark> beneath = new ArrayList<>(view.base());
      beneath.addAll(matchLines(window, column, row, unitsPerMm));
      return new FrameView(
          view.title(),
          unitsPerMm,
          beneath,
          view.frame(),
          view.tapes(),
          view.labels(),
          view.leftOff(),
          view.led());
    }

    private List<Mark> matchLines(Bounds w, int column, int row, double unitsPerMm) {
      Point a = new Point(w.minX(), w.maxY());
      Point b = new Point(w.maxX(), w.maxY());
      Point c = new Point(w.maxX(), w.minY());
      Point d = new Point(w.minX(), w.minY());
      List<Mark> marks = new ArrayList<>();
      if (column > 0) {
        marks.addAll(matchLine(d, a, number(column - 1, row), unitsPerMm));
      }
      if (column < columns - 1) {
        marks.addAll(matchLine(b, c, number(column + 1, row), unitsPerMm));
      }
      if (row > 0) {
        marks.addAll(matchLine(a, b, number(column, row - 1), unitsPerMm));
      }
      if (row < rows - 1) {
        marks.addAll(matchLine(c, d, number(column, row + 1), unitsPerMm));
      }
      return marks;
    }

    private int number(int column, int row) {
      return row * columns + column + 1;
    }

    /** Its words stand on the far side, the page on the right of its direction. */
    private List<Mark> matchLine(Point from, Point to, int page, double unitsPerMm) {
      Point way = to.minus(from).unit();
      double degrees = Math.toDegrees(Math.atan2(way.y(), way.x()));
      boolean upsideDown = degrees > 91 || degrees < -91;
      double off = AIR_MM + (upsideDown ? Lettering.SMALL : 0);
      Point at = from.toward(to, 0.5).plus(way.left().times(off * unitsPerMm));
      String text = words.text("layout.match", page, columns * rows);
      return List.of(
          Mark.Path.line(from, to, FrameLayers.MATCH, ""),
          new Mark.Text(
              at,
              text,
              Lettering.SMALL,
              upsideDown ? degrees - 180 : degrees,
              Anchor.MIDDLE,
              FrameLayers.MATCH,
              ""));
    }
  }
}
