package longpoint.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.units.LengthUnit;

/**
 * Scale bar and arrow to plan north. The bar stays true when a copy is made smaller or larger. The
 * plan does not know true north: the arrow says which way the plan's own y axis runs.
 */
final class ScaleBar {
  private static final int FIELDS = 4;
  private static final double LONGEST = 60;
  private static final double THICK = 1.5;

  private ScaleBar() {}

  /** A bar of four fields of round length, at most 60 mm long, from its lower left corner. */
  static List<Mark> bar(Point corner, LengthUnit unit, PaperScale scale) {
    double foot = unit == LengthUnit.INCH ? 12 : 1000;
    double field = fieldLength(LONGEST / FIELDS * scale.unitsPerMm(unit) / foot);
    double mm = field * foot / scale.unitsPerMm(unit);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < FIELDS; i++) {
      Point left = corner.plus(new Point(i * mm, 0));
      Ring box =
          new Ring(
              List.of(
                  left,
                  left.plus(new Point(mm, 0)),
                  left.plus(new Point(mm, THICK)),
                  left.plus(new Point(0, THICK))));
      marks.add(
          i % 2 == 0
              ? new Mark.Fill(new Region(box), Layers.SYMBOL, "")
              : new Mark.Path(box.points(), true, Layers.SYMBOL, ""));
    }
    String end = plain(FIELDS * field) + (unit == LengthUnit.INCH ? " ft" : " m");
    String half = plain(FIELDS / 2 * field);
    double widest = Lettering.width(end, Lettering.SMALL);
    marks.add(text(corner.plus(new Point(0, THICK + 1.5)), "0"));
    if (widest < FIELDS / 2 * mm - 1) {
      marks.add(text(corner.plus(new Point(FIELDS / 2 * mm, THICK + 1.5)), half));
    }
    marks.add(text(corner.plus(new Point(FIELDS * mm, THICK + 1.5)), end));
    return marks;
  }

  /** An arrow up the page around a middle point, with its word below. */
  static List<Mark> north(Point middle) {
    Point tip = middle.plus(new Point(0, 6));
    Point tail = middle.minus(new Point(0, 4));
    Ring half = new Ring(List.of(tip, middle.plus(new Point(-2.5, -2)), middle));
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Path.line(tail, tip, Layers.SYMBOL, ""));
    marks.add(new Mark.Fill(new Region(half), Layers.SYMBOL, ""));
    marks.add(Mark.Path.line(tip, middle.plus(new Point(2.5, -2)), Layers.SYMBOL, ""));
    marks.add(Mark.Path.line(middle.plus(new Point(2.5, -2)), middle, Layers.SYMBOL, ""));
    marks.add(text(tail.minus(new Point(0, 3.5)), "Plan north"));
    return marks;
  }

  /** The largest of 1, 2, 5, 10 … (or a half, a fifth …) that is not above a length. */
  private static double fieldLength(double most) {
    double power = Math.pow(10, Math.floor(Math.log10(most)));
    double lead = most / power;
    return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value)
        .setScale(3, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static Mark text(Point at, String text) {
    return new Mark.Text(at, text, Lettering.SMALL, 0, Anchor.MIDDLE, Layers.SYMBOL, "");
  }
}
