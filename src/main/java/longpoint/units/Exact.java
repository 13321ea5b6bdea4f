package longpoint.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * A number as typed, kept as a fraction so that thirds and millimetres stay exact until the one
 * rounding at the end.
 *
 * @param den above 0
 */
record Exact(BigInteger num, BigInteger den) {
  static final Exact ZERO = of(0);

  static Exact of(long whole) {
    return new Exact(BigInteger.valueOf(whole), BigInteger.ONE);
  }

  static Exact of(long num, long den) {
    return of(num).over(of(den));
  }

  static Exact decimal(String digits) {
    BigDecimal d = new BigDecimal(digits);
    return new Exact(d.unscaledValue(), BigInteger.TEN.pow(d.scale()));
  }

  Exact plus(Exact o) {
    return new Exact(num.multiply(o.den).add(o.num.multiply(den)), den.multiply(o.den));
  }

  Exact negated() {
    return new Exact(num.negate(), den);
  }

  Exact times(Exact o) {
    return new Exact(num.multiply(o.num), den.multiply(o.den));
  }

  /**
   * @param o not zero
   */
  Exact over(Exact o) {
    BigInteger top = num.multiply(o.den);
    BigInteger bottom = den.multiply(o.num);
    return bottom.signum() < 0 ? new Exact(top.negate(), bottom.negate()) : new Exact(top, bottom);
  }

  boolean isZero() {
    return num.signum() == 0;
  }

  int compareTo(Exact o) {
    return num.multiply(o.den).compareTo(o.num.multiply(den));
  }

  /** The nearest double; infinite when too large for one. */
  double toDouble() {
    // Forty digits leave the second rounding no case a typed figure can reach.
    return new BigDecimal(num).divide(new BigDecimal(den), new MathContext(40)).doubleValue();
  }
}
