package longpoint.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.drawing.Anchor;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.units.LengthUnit;

/** Scale bar and north arrow. The bar stays true when a copy is made smaller or larger. */
final class ScaleBar {
  private static final int FIELDS = 4;
  private static final double LONGEST = 60;
  private static final double THICK = 1.5;

  /** Half the arrow's length. */
  private static final double ARROW = 6;

  private ScaleBar() {}

  /**
   * A bar of four fields of round length from its lower left corner.
   *
   * @param longest it may be on paper, &gt; 0; never more than 60 mm are used
   */
  static List<Mark> bar(Point corner, Words words, PaperScale scale, double longest) {
    LengthUnit unit = words.unit();
    double foot = unit == LengthUnit.INCH ? 12 : 1000;
    double most = Math.min(LONGEST, longest);
    double field = fieldLength(most / FIELDS * scale.unitsPerMm(unit) / foot);
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
    String end = end(words, FIELDS * field);
    String half = plain(words, FIELDS / 2 * field);
    double widest = Lettering.width(end, Lettering.SMALL);
    marks.add(text(corner.plus(new Point(0, THICK + 1.5)), "0"));
    if (widest < FIELDS / 2 * mm - 1) {
      marks.add(text(corner.plus(new Point(FIELDS / 2 * mm, THICK + 1.5)), half));
    }
    marks.add(text(corner.plus(new Point(FIELDS * mm, THICK + 1.5)), end));
    return marks;
  }

  /**
   * An arrow around a middle point with its word below: to north if the plan says where that is,
   * else up the page to plan north.
   *
   * @param north degrees clockwise from up the page
   */
  static List<Mark> north(Point middle, Optional<Double> north, Words words) {
    double radians = Math.toRadians(north.orElse(0.0));
    Point up = new Point(StrictMath.sin(radians), StrictMath.cos(radians));
    Point left = up.left();
    Point tip = middle.plus(up.times(ARROW));
    Point notch = middle.minus(up.times(ARROW / 3));
    Point wide = left.times(ARROW / 2);
    Point low = middle.minus(up.times(ARROW));
    Ring half = new Ring(List.of(tip, low.plus(wide), notch));
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Fill(new Region(half), Layers.SYMBOL, ""));
    marks.add(new Mark.Path(List.of(tip, low.minus(wide), notch), true, Layers.SYMBOL, ""));
    marks.add(text(middle.minus(new Point(0, ARROW + 5)), northWord(north, words)));
    return marks;
  }

  /** What stands below the arrow. */
  static String northWord(Optional<Double> north, Words words) {
    return words.text(north.isPresent() ? "title.north" : "title.planNorth");
  }

  /** The largest of 1, 2, 5, 10 … (or a half, a fifth …) that is not above a length. */
  private static double fieldLength(double most) {
    double power = Math.pow(10, Math.floor(Math.log10(most)));
    double lead = most / power;
    return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
  }

  private static String end(Words words, double value) {
    String figure = plain(words, value);
    return words.text(words.unit() == LengthUnit.INCH ? "scale.feet" : "scale.metres", figure);
  }

  private static String plain(Words words, double value) {
    return words.figure(
        BigDecimal.valueOf(value)
            .setScale(3, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString());
  }

  private static Mark text(Point at, String text) {
    return new Mark.Text(at, text, Lettering.SMALL, 0, Anchor.MIDDLE, Layers.SYMBOL, "");
  }
}
