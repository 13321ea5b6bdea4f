package longpoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Doubles as the shortest decimal that reads back as the same double. The language's own printing
 * differs between Java releases in the last digits; this does not.
 */
public final class Decimal {
  private static final int DIGITS_OF_A_DOUBLE = 17;

  /** Up to this many zeros are written out; beyond, an exponent is used. */
  private static final int MOST_ZEROS = 15;

  private Decimal() {}

  /**
   * A JSON number. Minus zero is written {@code 0}.
   *
   * @param value finite
   */
  public static String json(double value) {
    BigDecimal d = shortest(value);
    boolean far = d.scale() < -MOST_ZEROS || d.scale() - d.precision() > MOST_ZEROS;
    return far ? d.toString() : d.toPlainString();
  }

  /** Without an exponent, however many zeros that takes. */
  static String plain(double value) {
    return shortest(value).toPlainString();
  }

  private static BigDecimal shortest(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite number: " + value);
    }
    if (value == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal exact = new BigDecimal(value);
    for (int digits = 1; digits < DIGITS_OF_A_DOUBLE; digits++) {
      BigDecimal d = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (d.doubleValue() == value) {
        return d.stripTrailingZeros();
      }
    }
    return exact.round(new MathContext(DIGITS_OF_A_DOUBLE)).stripTrailingZeros();
  }
}
