package longpoint.units;

import java.util.Objects;
import longpoint.wording.Language;
import longpoint.wording.Worded;

/** A slope as it stands in a sentence: {@code 8/12}, {@code 33.7°}, in French {@code 33,7°}. */
public record SlopeFigure(Slope slope) implements Worded {
  public SlopeFigure {
    Objects.requireNonNull(slope);
  }

  @Override
  public String in(Language language) {
    String figure = SlopeText.of(slope);
    return switch (language) {
      case ENGLISH -> figure;
      // Decimal comma, and a space before the per cent sign (SI brochure 5.4.4 and 5.4.7).
      case FRENCH -> figure.replace('.', ',').replace("%", "\u00a0%");
    };
  }
}
