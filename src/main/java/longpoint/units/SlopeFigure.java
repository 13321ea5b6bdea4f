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
    return SlopeText.of(slope, language);
  }
}
