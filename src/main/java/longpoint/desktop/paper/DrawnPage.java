package longpoint.desktop.paper;

import java.util.List;
import java.util.function.Predicate;
import longpoint.drawing.Drawing;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Placement;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;

/** A drawing from the screen as a sheet of paper just large enough for it. */
public final class DrawnPage {
  private static final double MARGIN_MM = 6;

  private DrawnPage() {}

  /**
   * Stands a drawing on paper at the scale its lettering was laid out for.
   *
   * @param unitsPerMm units of the drawing to a millimetre of paper, &gt; 0
   * @param shown which layers are switched on
   */
  public static Page of(Drawing drawing, double unitsPerMm, Predicate<Layer> shown) {
    List<Mark> marks = drawing.marks().stream().filter(m -> isShown(m, shown)).toList();
    Bounds box = Strokes.of(marks, unitsPerMm).bounds();
    if (box.isEmpty()) {
      return new Page("", drawing.title(), 2 * MARGIN_MM, 2 * MARGIN_MM, List.of());
    }
    double scale = 1 / unitsPerMm;
    Point origin = new Point(MARGIN_MM - box.minX() * scale, MARGIN_MM - box.minY() * scale);
    return new Page(
        "",
        drawing.title(),
        box.width() * scale + 2 * MARGIN_MM,
        box.height() * scale + 2 * MARGIN_MM,
        List.of(new Mark.Group("drawing", new Placement(origin, scale, 0), marks)));
  }

  private static boolean isShown(Mark mark, Predicate<Layer> shown) {
    if (mark instanceof Mark.Path p) {
      return shown.test(p.layer());
    } else if (mark instanceof Mark.Arc a) {
      return shown.test(a.layer());
    } else if (mark instanceof Mark.Text t) {
      return shown.test(t.layer());
    } else if (mark instanceof Mark.Dimension d) {
      return shown.test(d.layer());
    } else if (mark instanceof Mark.Fill f) {
      return shown.test(f.layer());
    }
    return true;
  }
}
