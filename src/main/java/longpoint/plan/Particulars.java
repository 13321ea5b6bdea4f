package longpoint.plan;

import java.util.Objects;
import java.util.Optional;
import longpoint.wording.Language;

/**
 * What the title block of a sheet says besides the job's title. Nothing here changes a figure.
 *
 * @param site where the job is, may be empty
 * @param drawnBy who drew it, may be empty
 * @param date as it is to be printed, may be empty; the program never adds one of its own
 * @param north where true north lies on the plan, degrees clockwise from up the page; empty if not
 *     known
 * @param language the sheets, lists and pages are written in; empty if whoever makes them decides
 */
public record Particulars(
    String site, String drawnBy, String date, Optional<Double> north, Optional<Language> language) {
  /** Nothing given. */
  public static final Particulars NONE =
      new Particulars("", "", "", Optional.empty(), Optional.empty());

  public Particulars {
    Objects.requireNonNull(site);
    Objects.requireNonNull(drawnBy);
    Objects.requireNonNull(date);
    Objects.requireNonNull(north);
    Objects.requireNonNull(language);
  }

  public Particulars withSite(String site) {
    return new Particulars(site, drawnBy, date, north, language);
  }

  public Particulars withDrawnBy(String drawnBy) {
    return new Particulars(site, drawnBy, date, north, language);
  }

  public Particulars withDate(String date) {
    return new Particulars(site, drawnBy, date, north, language);
  }

  public Particulars withNorth(Optional<Double> north) {
    return new Particulars(site, drawnBy, date, north, language);
  }

  public Particulars withLanguage(Optional<Language> language) {
    return new Particulars(site, drawnBy, date, north, language);
  }
}
