package longpoint.export;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as files carry them: plain, without exponent, never a negative nought. */
final class Figures {
  private Figures() {}

  /**
   * A number to a count of decimals, without trailing noughts.
   *
   * @throws IllegalArgumentException if it is not finite
   */
  static String plain(double value, int decimals) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("no file can hold " + value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
