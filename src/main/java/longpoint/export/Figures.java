package longpoint.export;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as files carry them: plain, without exponent, never a negative nought. */
final class Figures {
  private static final double[] POWERS = {1, 10, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10};

  /** Below two to the fiftieth a count of steps is off by a quarter of one at most. */
  private static final double EXACT = 1L << 50;

  private Figures() {}

  /**
   * A number to a count of decimals, without trailing noughts.
   *
   * @param decimals 0 to 10
   * @throws IllegalArgumentException if it is not finite
   */
  static String plain(double value, int decimals) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("no file can hold " + value);
    }
    double steps = Math.abs(value) * POWERS[decimals];
    return steps < EXACT ? plain(value < 0, Math.round(steps), decimals) : big(value, decimals);
  }

  /** From a count of steps, by whole numbers: far faster, and most of what a file holds. */
  private static String plain(boolean negative, long steps, int decimals) {
    if (steps == 0) {
      return "0";
    }
    long unit = (long) POWERS[decimals];
    StringBuilder out = new StringBuilder(24);
    if (negative) {
      out.append('-');
    }
    out.append(steps / unit);
    long rest = steps % unit;
    if (rest > 0) {
      int point = out.length();
      // A leading one keeps the noughts before the digits; the point takes its place.
      out.append(unit + rest).setCharAt(point, '.');
      int end = out.length();
      while (out.charAt(end - 1) == '0') {
        end--;
      }
      out.setLength(end);
    }
    return out.toString();
  }

  private static String big(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
