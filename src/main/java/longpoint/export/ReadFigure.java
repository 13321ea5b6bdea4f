package longpoint.export;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A printed figure as a number: what a spreadsheet can reckon with.
 *
 * @param value exactly what is printed: {@code 4'-5 7/16"} is 53.4375
 * @param unit {@code in}, {@code area} (square feet), {@code metres} (square), {@code deg} or
 *     {@code percent}; empty where the text is the bare number
 */
record ReadFigure(double value, String unit) {
  private static final Pattern PLAIN = Pattern.compile("-?[0-9]{1,9}([.,][0-9]{1,6})?");

  /** Feet, inches and a fraction, as {@code units.LengthText} prints them. */
  private static final Pattern INCHES =
      Pattern.compile("(-)?(?:([0-9]{1,6})'-)?(?:([0-9]{1,7}))?(?: ?([0-9]{1,3})/([0-9]{1,3}))?\"");

  private static final Pattern MEASURED =
      Pattern.compile("(-?[0-9]{1,9}(?:[.,][0-9]{1,6})?)[ \u00a0]?(sq ft|pi²|m²|°|%)");

  /** A cell of figures and their units alone. */
  private static final Pattern FIGURES =
      Pattern.compile("[-0-9.,°%/'\"× \u00a0]*(?:sq ft|pi²|m²)?");

  private static final Pattern COMMA = Pattern.compile("(?<=[0-9]),(?=[0-9])");

  static Optional<ReadFigure> of(String text) {
    String line = text.strip();
    if (PLAIN.matcher(line).matches()) {
      return Optional.of(new ReadFigure(decimal(line), ""));
    }
    Matcher measured = MEASURED.matcher(line);
    if (measured.matches()) {
      String unit =
          switch (measured.group(2)) {
            case "°" -> "deg";
            case "%" -> "percent";
            case "m²" -> "metres";
            default -> "area";
          };
      return Optional.of(new ReadFigure(decimal(measured.group(1)), unit));
    }
    return inches(INCHES.matcher(line));
  }

  private static Optional<ReadFigure> inches(Matcher m) {
    if (!m.matches() || m.group(2) == null && m.group(3) == null && m.group(4) == null) {
      return Optional.empty();
    }
    double inches = 12 * number(m.group(2)) + number(m.group(3));
    if (m.group(4) != null && number(m.group(5)) > 0) {
      inches += number(m.group(4)) / number(m.group(5));
    }
    return Optional.of(new ReadFigure(m.group(1) == null ? inches : -inches, "in"));
  }

  /** The same figure with a point, for programs; other text as it is. */
  static String pointed(String text) {
    return FIGURES.matcher(text).matches() ? COMMA.matcher(text).replaceAll(".") : text;
  }

  private static double decimal(String figure) {
    return Double.parseDouble(figure.replace(',', '.'));
  }

  private static double number(String digits) {
    return digits == null ? 0 : Double.parseDouble(digits);
  }
}
