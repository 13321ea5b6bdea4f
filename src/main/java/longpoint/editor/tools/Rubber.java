package longpoint.editor.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Scene;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/** Lines and live figures that tools draw over the plan. */
final class Rubber {
  private Rubber() {}

  /** Rubber lines from corner to corner. */
  static List<Overlay.Line> lines(List<Point> corners) {
    List<Overlay.Line> lines = new ArrayList<>();
    for (int i = 0; i + 1 < corners.size(); i++) {
      lines.add(
          new Overlay.Line(new Segment(corners.get(i), corners.get(i + 1)), Overlay.Style.RUBBER));
    }
    return lines;
  }

  /** The length of a line, written beside it; none for a line of no length. */
  static List<Overlay.Dimension> length(Point from, Point to, LengthUnit unit) {
    return from.equals(to)
        ? List.of()
        : List.of(
            new Overlay.Dimension(new Segment(from, to), LengthText.of(from.distance(to), unit)));
  }

  /** The length of each line from corner to corner. */
  static List<Overlay.Dimension> path(List<Point> corners, Scene scene) {
    List<Overlay.Dimension> figures = new ArrayList<>();
    for (int i = 0; i + 1 < corners.size(); i++) {
      figures.addAll(length(corners.get(i), corners.get(i + 1), scene.plan().unit()));
    }
    return figures;
  }

  /** Width and depth of an upright box, written beside two of its sides. */
  static List<Overlay.Dimension> box(Point a, Point b, LengthUnit unit) {
    Point corner = new Point(b.x(), a.y());
    List<Overlay.Dimension> both = new ArrayList<>(length(a, corner, unit));
    both.addAll(length(corner, b, unit));
    return both;
  }

  /** How far across and up something has been moved, in words; nothing where it has not. */
  static String by(Point from, Point to, Scene scene) {
    if (from.equals(to)) {
      return "";
    }
    LengthUnit unit = scene.plan().unit();
    Point step = to.minus(from);
    return Messages.text("drag.by", LengthText.of(step.x(), unit), LengthText.of(step.y(), unit))
        + " ";
  }

  /** Degrees to one decimal, e.g. {@code 22.5°}. */
  static String degrees(double degrees) {
    String text = String.format(Locale.ROOT, "%.1f", degrees);
    return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + "°";
  }

  /** The angle at a corner between the lines to two points, 0 to 180 degrees. */
  static double angle(Point at, Point one, Point other) {
    Point a = one.minus(at);
    Point b = other.minus(at);
    return StrictMath.toDegrees(StrictMath.atan2(Math.abs(a.cross(b)), a.dot(b)));
  }
}
