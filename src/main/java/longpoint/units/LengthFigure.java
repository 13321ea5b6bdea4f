package longpoint.units;

import java.util.Objects;
import longpoint.wording.Language;
import longpoint.wording.Worded;

/**
 * A length as it stands in a sentence: {@code 4'-5 7/16"}, {@code 1358 mm}.
 *
 * @param length in the unit, finite
 */
public record LengthFigure(double length, LengthUnit unit) implements Worded {
  public LengthFigure {
    Objects.requireNonNull(unit);
  }

  @Override
  public String in(Language language) {
    String figure = LengthText.of(length, unit);
    return switch (unit) {
      case INCH -> figure;
      case MILLIMETRE -> figure + " mm";
    };
  }
}
