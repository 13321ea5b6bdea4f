package longpoint.sheets;

import java.util.Locale;
import longpoint.units.LengthUnit;

/** Figures as they stand on a sheet. */
final class Wording {
  private final LengthUnit unit;

  Wording(LengthUnit unit) {
    this.unit = unit;
  }

  /** Feet-inches to the sixteenth, or whole millimetres. */
  String length(double length) {
    if (unit == LengthUnit.MILLIMETRE) {
      return String.format(Locale.ROOT, "%d", Math.round(length));
    }
    long sixteenths = Math.round(length * 16);
    long feet = sixteenths / 192;
    long inches = sixteenths % 192 / 16;
    long part = sixteenths % 16;
    if (part == 0) {
      return feet + "'-" + inches + "\"";
    }
    long cut = Long.lowestOneBit(part);
    return feet + "'-" + inches + " " + part / cut + "/" + 16 / cut + "\"";
  }

  /** Rise in a run of twelve, or degrees, as the trade of each unit says it. */
  String slope(double ratio) {
    if (unit == LengthUnit.MILLIMETRE) {
      return trimmed(Math.toDegrees(Math.atan(ratio))) + "°";
    }
    return trimmed(ratio * 12) + " in 12";
  }

  /** Square feet or square metres, to one decimal. */
  String area(double area) {
    double mm = unit.toMillimetres(1);
    return unit == LengthUnit.MILLIMETRE
        ? String.format(Locale.ROOT, "%.1f m²", area * mm * mm / 1e6)
        : String.format(Locale.ROOT, "%.1f ft²", area / 144);
  }

  private static String trimmed(double value) {
    String two = String.format(Locale.ROOT, "%.2f", value);
    return two.replaceAll("\\.?0+$", "");
  }
}
