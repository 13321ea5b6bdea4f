package longpoint.desktop.canvas;

import java.awt.Insets;
import java.awt.Rectangle;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.units.LengthUnit;

/**
 * What is to be seen when all of the sheet is in sight.
 *
 * @param extent walls and roof; an empty box gives a room-sized sheet
 * @param lettering pixels that dimensions and words reach beyond it, at any zoom
 */
record SheetRoom(Bounds extent, Insets lettering) {
  /** Free pixels around everything when all of it is shown. */
  private static final int MARGIN = 28;

  /** Share of the sheet's width that lettering gets on each side, and the least and most of it. */
  private static final double AROUND = 0.13;

  private static final double LEAST_AROUND = 56;
  private static final double MOST_AROUND = 140;

  /** A sheet nothing is drawn on yet. */
  static final SheetRoom AT_FIRST = new SheetRoom(Bounds.EMPTY, new Insets(60, 60, 90, 90));

  /** All of it in a window so large. */
  View whole(int width, int height, LengthUnit unit) {
    return View.fit(extent.isEmpty() ? blank(unit) : extent, window(width, height));
  }

  private static Bounds blank(LengthUnit unit) {
    double room = unit == LengthUnit.INCH ? 480 : 12_000;
    return new Bounds(0, 0, room, room * 0.6);
  }

  /** A box in the middle of a window so large, with what stands around it. */
  View around(Bounds box, int width, int height) {
    Rectangle middle = window(width, height);
    middle.grow(-middle.width / 6, -middle.height / 6);
    return View.fit(box, middle);
  }

  private Rectangle window(int width, int height) {
    int left = GridPainter.RULER + MARGIN + lettering.left;
    int top = GridPainter.RULER + MARGIN + lettering.top;
    int right = MARGIN + lettering.right;
    int bottom = MARGIN + lettering.bottom;
    return new Rectangle(left, top, width - left - right, height - top - bottom);
  }

  /** Pixels that lettering is to keep within of the house. */
  static double aroundPixels(int width) {
    return Math.max(LEAST_AROUND, Math.min(MOST_AROUND, AROUND * width));
  }

  /** Whether walls, roof and their lettering show whole under a view. */
  boolean isWhole(View view, int width, int height) {
    if (extent.isEmpty()) {
      return true;
    }
    Point low = new Point(extent.minX(), extent.minY());
    Point high = new Point(extent.maxX(), extent.maxY());
    return view.x(low) >= GridPainter.RULER + lettering.left
        && view.y(high) >= GridPainter.RULER + lettering.top
        && view.x(high) <= width - lettering.right
        && view.y(low) <= height - lettering.bottom;
  }
}
