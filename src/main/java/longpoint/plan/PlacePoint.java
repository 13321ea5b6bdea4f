package longpoint.plan;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Point;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Language;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/**
 * A place on the plan as it stands in a sentence, measured as the rulers beside the plan are:
 * {@code 20'-0" across, 14'-0" up}. What is said about a place names it first, so that its sign can
 * stand there.
 *
 * @param at plan point
 * @param words its figures; bare numbers until {@link #in(Plan)} is asked
 */
public record PlacePoint(Point at, Worded words) implements Worded {
  public PlacePoint {
    Objects.requireNonNull(at);
    Objects.requireNonNull(words);
  }

  /** A place whose plan, and so its unit, is not at hand. */
  public static PlacePoint of(Point at) {
    return new PlacePoint(at, Worded.plain(at.x() + ", " + at.y()));
  }

  public static PlacePoint of(Point at, LengthUnit unit) {
    LengthFigure across = new LengthFigure(at.x(), unit);
    LengthFigure up = new LengthFigure(at.y(), unit);
    return new PlacePoint(at, Phrase.of("plan.point", across, up));
  }

  /** The places that words name, in their order. */
  public static List<Point> named(Worded words) {
    return words instanceof Phrase phrase
        ? phrase.parts().stream()
            .filter(PlacePoint.class::isInstance)
            .map(p -> ((PlacePoint) p).at())
            .toList()
        : List.of();
  }

  /** In the plan's unit. */
  public PlacePoint in(Plan plan) {
    return of(at, plan.unit());
  }

  @Override
  public String in(Language language) {
    return words.in(language);
  }
}
