package longpoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.DoubleUnaryOperator;
import longpoint.wording.Language;

/**
 * Writes slopes in the notation their user chose. {@link #exact} writes what {@link SlopeEntry}
 * reads back as the same slope to the last bit.
 */
public final class SlopeText {
  /** No double needs more decimal digits than this. */
  private static final int DIGITS_OF_A_DOUBLE = 17;

  private SlopeText() {}

  /** As a drawing carries it: {@code 8/12}, {@code 33.7°}, {@code 66.7%}, {@code 0.6667}. */
  public static String of(Slope slope) {
    return switch (slope.notation()) {
      case IN_TWELVE -> trimmed(slope.ratio() * 12, 2) + "/12";
      case DEGREES -> FigureText.angle(slope.degrees());
      case PERCENT -> trimmed(slope.ratio() * 100, 1) + "%";
      case RATIO -> trimmed(slope.ratio(), 4);
    };
  }

  /**
   * As {@link #of(Slope)} in a language: in French a decimal comma, and a space before the per cent
   * sign (SI brochure 5.4.4 and 5.4.7).
   */
  public static String of(Slope slope, Language language) {
    return switch (language) {
      case ENGLISH -> of(slope);
      case FRENCH -> of(slope).replace('.', ',').replace("%", "\u00a0%");
    };
  }

  /**
   * As an entry field or a plan file carries it. A slope that its notation cannot hold exactly is
   * written as a ratio to one: the figure counts more than the notation.
   */
  public static String exact(Slope slope) {
    double ratio = slope.ratio();
    String figure =
        switch (slope.notation()) {
          case IN_TWELVE -> behind(ratio, ratio * 12, x -> Slope.inTwelve(x).ratio(), "/12");
          case DEGREES -> behind(ratio, slope.degrees(), x -> Slope.degrees(x).ratio(), "deg");
          case PERCENT -> behind(ratio, ratio * 100, x -> Slope.percent(x).ratio(), "%");
          case RATIO -> null;
        };
    return figure != null ? figure : Decimal.plain(ratio) + ":1";
  }

  /** The shortest decimal near a figure that gives the ratio exactly, or null. */
  private static String behind(double ratio, double near, DoubleUnaryOperator back, String mark) {
    if (near == 0) {
      return "0" + mark;
    }
    for (int digits = 1; digits <= DIGITS_OF_A_DOUBLE; digits++) {
      BigDecimal figure =
          new BigDecimal(near).round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (back.applyAsDouble(figure.doubleValue()) == ratio) {
        return figure.stripTrailingZeros().toPlainString() + mark;
      }
    }
    return null;
  }

  private static String trimmed(double value, int decimals) {
    return Decimal.plain(Double.parseDouble(FigureText.fixed(value, decimals)));
  }
}
