package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Placement;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;

/**
 * One of several drawings on a sheet, in real size with its caption below.
 *
 * @param name of the group it becomes
 * @param unitsPerMm plan units to a millimetre of paper, &gt; 0
 * @param captionMm how much of its height is caption
 */
record SheetFigure(String name, double unitsPerMm, List<Mark> marks, double captionMm) {
  private static final double GAP_MM = 4;
  private static final double LEAD = 1.6;

  /** Captions are wrapped to the drawing, but no narrower than this. */
  private static final double NARROWEST_MM = 64;

  SheetFigure {
    marks = List.copyOf(marks);
  }

  /** Without a caption. */
  SheetFigure(String name, double unitsPerMm, List<Mark> marks) {
    this(name, unitsPerMm, marks, 0);
  }

  /** A line of caption; the first is written large. */
  record Line(String text, Layer layer) {
    static Line of(String text) {
      return new Line(text, Layers.TEXT);
    }
  }

  /** The same figure with lines of lettering below it. */
  SheetFigure captioned(List<Line> lines) {
    return captioned(lines, NARROWEST_MM);
  }

  /**
   * The same figure with lines of lettering below it.
   *
   * @param narrowest millimetres that the lettering may use though the drawing be narrower
   */
  SheetFigure captioned(List<Line> lines, double narrowest) {
    Bounds box = bounds();
    double width = Math.max(narrowest, box.width() / unitsPerMm);
    List<Mark> all = new ArrayList<>(marks);
    double y = box.minY() - GAP_MM * unitsPerMm;
    double height = Lettering.MEDIUM;
    for (Line line : lines) {
      for (String words : Lettering.wrapped(line.text(), height, width, 4)) {
        y -= height * LEAD * unitsPerMm;
        Point at = new Point(box.minX(), y);
        all.add(new Mark.Text(at, words, height, 0, Anchor.START, line.layer(), ""));
      }
      height = Lettering.SMALL;
    }
    return new SheetFigure(name, unitsPerMm, all, (box.minY() - y) / unitsPerMm);
  }

  /** The box around it in real size. */
  Bounds bounds() {
    return Strokes.of(marks, unitsPerMm).bounds();
  }

  double widthMm() {
    return bounds().width() / unitsPerMm;
  }

  double heightMm() {
    return bounds().height() / unitsPerMm;
  }

  /** On a page, its upper left corner at a point. */
  Mark at(Point topLeft) {
    double scale = 1 / unitsPerMm;
    Bounds box = bounds();
    Point origin = new Point(topLeft.x() - box.minX() * scale, topLeft.y() - box.maxY() * scale);
    return new Mark.Group(name, new Placement(origin, scale, 0), marks);
  }
}
