package longpoint.drawing;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;

/**
 * How much room lettering takes up, without a font at hand.
 *
 * <p>Widths are those of the Helvetica metrics (Adobe font metrics of 1989, from memory), which
 * Arial, Liberation Sans and Nimbus Sans keep; a letter with an accent is as wide as without. What
 * is not in Latin-1 or in French text counts as wide as a capital M: more room than most need, so
 * that lettering placed by this estimate does not collide. A font with other metrics (Inter is up
 * to a tenth wider) needs a little more; the margin placed round every box covers it.
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

  /** The no-break space, after the controls that no text has. */
  private static final int FIRST_LATIN = 0xA0;

  /** Thousandths of the font's size, from the no-break space to ÿ. */
  private static final int[] LATIN_WIDTHS = {
    278, 333, 556, 556, 556, 556, 260, 556, 333, 737, 370, 556, 584, 333, 737, 333, // to macron
    400, 584, 333, 333, 333, 556, 537, 278, 333, 333, 365, 556, 834, 834, 834, 611, // ° to ¿
    667, 667, 667, 667, 667, 667, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278, // À to Ï
    722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611, // Ð to ß
    556, 556, 556, 556, 556, 556, 889, 500, 556, 556, 556, 556, 278, 278, 278, 278, // à to ï
    556, 556, 556, 556, 556, 556, 556, 584, 611, 556, 556, 556, 556, 500, 556, 500 // ð to ÿ
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
    long thousandths = 0;
    for (int i = 0; i < text.length(); i++) {
      // Both halves of a pair are one letter.
      char c = text.charAt(i);
      boolean second =
          i > 0 && Character.isLowSurrogate(c) && Character.isHighSurrogate(text.charAt(i - 1));
      thousandths += second ? 0 : width(c);
    }
    return thousandths * fontSize(heightMm) / 1000;
  }

  private static int width(int character) {
    int place = character - ' ';
    if (place >= 0 && place < WIDTHS.length) {
      return WIDTHS[place];
    }
    int latin = character - FIRST_LATIN;
    if (latin >= 0 && latin < LATIN_WIDTHS.length) {
      return LATIN_WIDTHS[latin];
    }
    return switch (character) {
      case '’', '‘' -> 222;
      case '•' -> 350;
      case '–' -> 556;
      case '−' -> 584;
      case 'œ' -> 944;
      case 'Œ', '…', '—' -> 1000;
      default -> WIDEST;
    };
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
    double room = widthMm - width("…", heightMm);
    int end = 0;
    while (end < text.length()) {
      int c = text.codePointAt(end);
      room -= width(Character.toString(c), heightMm);
      if (room < 0) {
        break;
      }
      end += Character.charCount(c);
    }
    return text.substring(0, end).stripTrailing() + "…";
  }

  /**
   * Breaks text into lines at its spaces, and inside a word that is longer than a line. What does
   * not fit the last line is left off, and an ellipsis says so.
   *
   * @param most lines, at least 1
   */
  public static List<String> wrapped(String text, double heightMm, double widthMm, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip();
    while (!rest.isEmpty() && lines.size() < most - 1) {
      int end = lineEnd(rest, heightMm, widthMm);
      lines.add(rest.substring(0, end).stripTrailing());
      rest = rest.substring(end).stripLeading();
    }
    if (!rest.isEmpty()) {
      lines.add(fitted(rest, heightMm, widthMm));
    }
    return lines;
  }

  /** How many characters of a text stand on its first line, at least one. */
  private static int lineEnd(String text, double heightMm, double widthMm) {
    double room = widthMm;
    int end = 0;
    int lastSpace = 0;
    while (end < text.length()) {
      int c = text.codePointAt(end);
      room -= width(Character.toString(c), heightMm);
      if (room < 0 && end > 0) {
        return lastSpace > 0 ? lastSpace : end;
      }
      end += Character.charCount(c);
      lastSpace = Character.isWhitespace(c) ? end : lastSpace;
    }
    return end;
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
