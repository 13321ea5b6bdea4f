package longpoint.units;

import longpoint.wording.Phrase;

/**
 * Reads one number: {@code 291.5}, {@code 291,5}, {@code 7/8}, {@code 3 1/2}, {@code 3-1/2}, {@code
 * 3½}. It has no sign and no unit.
 */
final class Numeral {
  /** Vulgar fractions with a character of their own, each with its value beside it. */
  private static final String VULGAR = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚";

  private static final int[][] VULGAR_VALUES = {
    {1, 2}, {1, 4}, {3, 4}, {1, 8}, {3, 8}, {5, 8}, {7, 8}, {1, 3}, {2, 3}, {1, 5}, {2, 5}, {3, 5},
    {4, 5}, {1, 6}, {5, 6}
  };

  /** Fractions of an inch as rules and tapes carry them. */
  private static final Exact FINEST_TAPE = Exact.of(1, 64);

  private Numeral() {}

  /**
   * A number and how it was written.
   *
   * @param whole whether it was digits only
   */
  record Read(Exact value, boolean whole) {}

  static boolean starts(Typed in) {
    char c = in.peek();
    return Typed.isDigit(c)
        || VULGAR.indexOf(c) >= 0 && c != 0
        || (c == '.' || c == ',') && Typed.isDigit(in.peek(1));
  }

  /** Reads the number that {@link #starts} at the finger. */
  static Read read(Typed in) throws EntryException {
    int from = in.at();
    Exact vulgar = takeVulgar(in);
    if (vulgar != null) {
      return new Read(vulgar, false);
    }
    String digits = in.takeDigits();
    if (startsDecimals(in)) {
      return new Read(decimals(in, from, digits), false);
    }
    Exact whole = Exact.decimal(digits);
    if (slashWhole(in, 0)) {
      in.take('/');
      return new Read(whole.over(denominator(in)), false);
    }
    Exact fraction = fractionAfterWhole(in, from);
    return fraction == null ? new Read(whole, true) : new Read(whole.plus(fraction), false);
  }

  private static boolean startsDecimals(Typed in) {
    return in.peek() == '.' && !Character.isLetter(in.peek(1))
        || in.peek() == ',' && Typed.isDigit(in.peek(1));
  }

  private static Exact decimals(Typed in, int from, String whole) throws EntryException {
    char mark = in.peek();
    in.advance(1);
    String parts = in.takeDigits();
    char next = in.peek();
    if ((next == '.' || next == ',') && Typed.isDigit(in.peek(1))) {
      throw in.wrong(in.at(), "number.marks");
    }
    boolean group = parts.length() == 3 && whole.length() <= 3 && !whole.matches("0*");
    if (mark == ',' && group && !metres(in)) {
      String typed = in.text(from, in.at());
      throw in.wrong(from, "number.thousand", typed, whole + parts, whole + "." + parts);
    }
    return Exact.decimal((whole.isEmpty() ? "0" : whole) + "." + (parts.isEmpty() ? "0" : parts));
  }

  /**
   * Whether metres follow: nobody has a wall of thousands of them, so that a comma before them is
   * the decimal sign.
   */
  private static boolean metres(Typed in) {
    int i = in.peek() == ' ' ? 1 : 0;
    char next = in.peek(i + 1);
    boolean metre = in.peek(i) == 'm' && !Character.isLetter(next);
    return metre || in.peek(i) == 'm' && (next == 'è' || next == 'e');
  }

  /** Whether a slash and a whole number stand here, as in the tail of 7/8. */
  private static boolean slashWhole(Typed in, int ahead) {
    if (in.peek(ahead) != '/' || !Typed.isDigit(in.peek(ahead + 1))) {
      return false;
    }
    int i = ahead + 1;
    while (Typed.isDigit(in.peek(i))) {
      i++;
    }
    boolean decimals = (in.peek(i) == '.' || in.peek(i) == ',') && Typed.isDigit(in.peek(i + 1));
    return !decimals;
  }

  private static Exact denominator(Typed in) throws EntryException {
    int at = in.at();
    Exact d = Exact.decimal(in.takeDigits());
    if (d.isZero()) {
      throw in.wrong(at, "number.nothing");
    }
    return d;
  }

  /** The fraction of a mixed number, or null with the finger where it was. */
  private static Exact fractionAfterWhole(Typed in, int from) throws EntryException {
    int back = in.at();
    boolean spaced = in.skipSpaces();
    boolean dash = !spaced && in.take('-');
    Exact fraction = takeVulgar(in);
    if (fraction == null && (spaced || dash)) {
      fraction = takeFraction(in);
    }
    if (fraction == null) {
      in.backTo(back);
      return null;
    }
    boolean proper = fraction.compareTo(Exact.of(1)) < 0;
    if (!proper || dash && !onTape(fraction)) {
      String typed = in.text(from, in.at());
      throw in.wrong(back, Phrase.of("units.twoWays", typed), Phrase.of("units.number.mixed"));
    }
    return fraction;
  }

  private static boolean onTape(Exact fraction) {
    Exact steps = fraction.over(FINEST_TAPE);
    return steps.num().mod(steps.den()).signum() == 0;
  }

  private static Exact takeFraction(Typed in) throws EntryException {
    int i = 0;
    while (Typed.isDigit(in.peek(i))) {
      i++;
    }
    if (i == 0 || !slashWhole(in, i)) {
      return null;
    }
    Exact top = Exact.decimal(in.takeDigits());
    in.take('/');
    return top.over(denominator(in));
  }

  private static Exact takeVulgar(Typed in) {
    int which = in.atEnd() ? -1 : VULGAR.indexOf(in.peek());
    if (which < 0) {
      return null;
    }
    in.advance(1);
    return Exact.of(VULGAR_VALUES[which][0], VULGAR_VALUES[which][1]);
  }
}
