package longpoint.units;

import java.util.Locale;
import longpoint.wording.Language;

/** Writes areas and angles as a drawing carries them. */
public final class FigureText {
  private static final double SQUARE_INCHES_PER_SQUARE_FOOT = 144;
  private static final double SQUARE_MM_PER_SQUARE_METRE = 1e6;

  private FigureText() {}

  /**
   * Square feet to a tenth, or square metres to a hundredth.
   *
   * @param area in the square of the unit, finite
   */
  public static String area(double area, LengthUnit unit) {
    return switch (unit) {
      case INCH -> fixed(area / SQUARE_INCHES_PER_SQUARE_FOOT, 1) + " sq ft";
      case MILLIMETRE -> fixed(area / SQUARE_MM_PER_SQUARE_METRE, 2) + " m²";
    };
  }

  /**
   * As {@link #area(double, LengthUnit)} in a language: {@code 133,2 pi²} or {@code 12,37 m²} in
   * French, with the decimal comma of that language (SI brochure 5.4.4).
   */
  public static String area(double area, LengthUnit unit, Language language) {
    return switch (language) {
      case ENGLISH -> area(area, unit);
      case FRENCH -> area(area, unit).replace('.', ',').replace("sq ft", "pi²");
    };
  }

  /** As {@link #angle(double)} in a language: {@code 33,7°} in French. */
  public static String angle(double degrees, Language language) {
    return switch (language) {
      case ENGLISH -> angle(degrees);
      case FRENCH -> angle(degrees).replace('.', ',');
    };
  }

  /** Degrees to a tenth, as an adjustable saw is set: {@code 33.7°}. */
  public static String angle(double degrees) {
    return fixed(degrees, 1) + "°";
  }

  /** Fixed decimals, the same in every country; never {@code -0.0}. */
  static String fixed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.matches("-[0.]*") ? text.substring(1) : text;
  }
}
