package longpoint.plan;

import java.util.Objects;
import java.util.Optional;

/**
 * What the title block of a sheet says besides the job's title. Nothing here changes a figure.
 *
 * @param site where the job is, may be empty
 * @param drawnBy who drew it, may be empty
 * @param date as it is to be printed, may be empty; the program never adds one of its own
 * @param north where true north lies on the plan, degrees clockwise from up the page; empty if not
 *     known
 */
public record Particulars(String site, String drawnBy, String date, Optional<Double> north) {
  /** Nothing given. */
  public static final Particulars NONE = new Particulars("", "", "", Optional.empty());

  public Particulars {
    Objects.requireNonNull(site);
    Objects.requireNonNull(drawnBy);
    Objects.requireNonNull(date);
    Objects.requireNonNull(north);
  }

  public Particulars withSite(String site) {
    return new Particulars(site, drawnBy, date, north);
  }

  public Particulars withDrawnBy(String drawnBy) {
    return new Particulars(site, drawnBy, date, north);
  }

  public Particulars withDate(String date) {
    return new Particulars(site, drawnBy, date, north);
  }

  public Particulars withNorth(Optional<Double> north) {
    return new Particulars(site, drawnBy, date, north);
  }
}
