package longpoint.drawing;

import longpoint.geometry.Point;

/**
 * How much room lettering takes up, without a font at hand.
 *
 * <p>Widths are those of the Helvetica metrics (Adobe font metrics of 1989, from memory), which
 * Arial, Liberation Sans and Nimbus Sans keep. Characters outside ASCII count as wide as a capital
 * M: more room than most need, so that lettering placed by this estimate does not collide. A font
 * with other metrics (Inter is up to a tenth wider) needs a little more; the margin placed round
 * every box covers it.
 */
public final class Lettering {
  /** Heights of capitals on paper in millimetres, from the series of ISO 3098-1 (from memory). */
  public static final double SMALL = 2.5;

  public static final double MEDIUM = 3.5;
  public static final double LARGE = 5;

  /** Height of a capital over the size of the font, Arial and its like. */
  public static final double CAPITAL = 0.716;

  /** How far g and y hang below the line, over the height of a capital. */
  private static final double DESCENT = 0.3;

  private static final int WIDEST = 833;

  /** Thousandths of the font's size, from the space to the tilde. */
  private static final int[] WIDTHS = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, // space to /
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, // 0 to ?
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, // @ to O
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, // P to _
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, // ` to o
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584 // p to ~
  };

  private Lettering() {}

  /** Size of the font whose capitals have this height. */
  public static double fontSize(double capitalHeight) {
    return capitalHeight / CAPITAL;
  }

  /**
   * Length of one line of lettering.
   *
   * @param heightMm height of a capital
   * @return in millimetres
   */
  public static double width(String text, double heightMm) {
    long thousandths = text.codePoints().mapToLong(Lettering::width).sum();
    return thousandths * fontSize(heightMm) / 1000;
  }

  private static int width(int character) {
    int place = character - ' ';
    return place >= 0 && place < WIDTHS.length ? WIDTHS[place] : WIDEST;
  }

  /**
   * The start of a line that fits in a width; an ellipsis shows that something was left off.
   *
   * @param widthMm on paper
   */
  public static String fitted(String text, double heightMm, double widthMm) {
    if (width(text, heightMm) <= widthMm) {
      return text;
    }
    int end = text.length();
    while (end > 0 && width(text.substring(0, end) + "…", heightMm) > widthMm) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + "…";
  }

  /**
   * The room a line of lettering takes up, in the units the mark stands in.
   *
   * @param unitsPerMm units of the drawing to a millimetre of paper, &gt; 0
   */
  public static Box box(Mark.Text text, double unitsPerMm) {
    double radians = Math.toRadians(text.degrees());
    Point along = new Point(Math.cos(radians), Math.sin(radians));
    double length = width(text.text(), text.heightMm()) * unitsPerMm;
    double height = text.heightMm() * unitsPerMm;
    double bottom = text.anchor() == Anchor.CENTRE ? -height / 2 : 0;
    double middle =
        switch (text.anchor()) {
          case START -> length / 2;
          case MIDDLE, CENTRE -> 0;
          case END -> -length / 2;
        };
    double up = bottom + height * (1 - DESCENT) / 2;
    Point centre = text.at().plus(along.times(middle)).plus(along.left().times(up));
    return new Box(centre, along, length / 2, height * (1 + DESCENT) / 2);
  }
}
