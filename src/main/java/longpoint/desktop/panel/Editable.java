package longpoint.desktop.panel;

import java.util.regex.Pattern;
import longpoint.desktop.Texts;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.units.SlopeText;
import longpoint.wording.Language;

/**
 * Figures as they stand in an entry field: what is read back is the very same number. The decimal
 * sign is that of the window's language; both are read everywhere.
 */
final class Editable {
  /** With a comma this could be a thousand and more: a nought says that it is not. */
  private static final Pattern THOUSAND =
      Pattern.compile("(?<![0-9,])([1-9][0-9]{0,2},[0-9]{3})(?![0-9])");

  private Editable() {}

  static String length(double length, LengthUnit unit) {
    return in(Texts.language(), LengthText.exact(length, unit));
  }

  /** As it is read, for a length that came about by hand and has no exact figure. */
  static String rounded(double length, LengthUnit unit) {
    return in(Texts.language(), LengthText.of(length, unit));
  }

  static String slope(Slope slope) {
    return slope(slope, Texts.language());
  }

  static String slope(Slope slope, Language language) {
    return in(language, SlopeText.exact(slope).replace("deg", "°"));
  }

  static String in(Language language, String figure) {
    return switch (language) {
      case ENGLISH -> figure;
      case FRENCH -> THOUSAND.matcher(figure.replace('.', ',')).replaceAll("$1" + "0");
    };
  }
}
