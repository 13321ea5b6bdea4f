package longpoint.units;

/**
 * Writes lengths as a tape shows them: feet, inches and sixteenths ({@code 4'-5 7/16"}) or whole
 * millimetres. {@link #exact} writes what {@link LengthEntry} reads back as the very same number.
 */
public final class LengthText {
  private static final int PER_INCH = 16;

  /** The finest fraction {@link #exact} uses; beyond it the figure is written as a decimal. */
  private static final int FINEST = 64;

  /** Beyond this a double no longer tells one sixteenth from the next. */
  private static final double LARGEST = 1e14;

  private LengthText() {}

  /** To the nearest sixteenth or millimetre. */
  public static String of(double length, LengthUnit unit) {
    return of(length, unit, Rounding.NEAREST);
  }

  /**
   * @param length in the unit, finite
   */
  public static String of(double length, LengthUnit unit, Rounding rounding) {
    if (Math.abs(length) > LARGEST) {
      return exact(length, unit);
    }
    long steps = steps(length, unit, rounding);
    return unit == LengthUnit.INCH ? feetInches(steps, PER_INCH) : Long.toString(steps);
  }

  /** In inches without feet, {@code 53 7/16"}, or in whole millimetres. */
  public static String small(double length, LengthUnit unit, Rounding rounding) {
    if (Math.abs(length) > LARGEST) {
      return exact(length, unit);
    }
    long steps = steps(length, unit, rounding);
    if (unit == LengthUnit.MILLIMETRE) {
      return Long.toString(steps);
    }
    return sign(steps) + inches(Math.abs(steps), PER_INCH) + '"';
  }

  /** The length that {@link #of} prints, as a number in the unit. */
  public static double rounded(double length, LengthUnit unit, Rounding rounding) {
    if (Math.abs(length) > LARGEST) {
      return length;
    }
    double steps = steps(length, unit, rounding);
    return unit == LengthUnit.INCH ? steps / PER_INCH : steps;
  }

  /** What stands in an entry field: reads back as the same number, to the last bit. */
  public static String exact(double length, LengthUnit unit) {
    double fine = length * FINEST;
    if (unit == LengthUnit.INCH && Math.abs(length) < LARGEST && fine == Math.rint(fine)) {
      return feetInches((long) fine, FINEST);
    }
    return Decimal.plain(length) + (unit == LengthUnit.INCH ? "\"" : "");
  }

  private static long steps(double length, LengthUnit unit, Rounding rounding) {
    if (Double.isNaN(length)) {
      throw new IllegalArgumentException("a length is a number");
    }
    return (long) rounding.whole(unit == LengthUnit.INCH ? length * PER_INCH : length);
  }

  private static String feetInches(long steps, int perInch) {
    long size = Math.abs(steps);
    long perFoot = 12L * perInch;
    String inches = inches(size % perFoot, perInch);
    // A fraction alone after the feet is easily misread: 18'-0 5/16", never 18'-5/16".
    String nought = size % perFoot > 0 && size % perFoot < perInch ? "0 " : "";
    return sign(steps) + size / perFoot + "'-" + nought + inches + '"';
  }

  private static String inches(long steps, int perInch) {
    long whole = steps / perInch;
    long rest = steps % perInch;
    if (rest == 0) {
      return Long.toString(whole);
    }
    long of = perInch;
    while (rest % 2 == 0) {
      rest /= 2;
      of /= 2;
    }
    return (whole == 0 ? "" : whole + " ") + rest + "/" + of;
  }

  private static String sign(long steps) {
    return steps < 0 ? "-" : "";
  }
}
