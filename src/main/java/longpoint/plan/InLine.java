package longpoint.plan;

import java.util.Locale;

/**
 * What becomes of an eave's plane where, on its way up, it comes into line with the plane of a
 * parallel wall of another slope, as a bump-out's does with the main wall's behind it. One of the
 * two goes on over both walls; the other ends there in a level line.
 */
public enum InLine {
  GOES_ON,
  GIVES_WAY;

  /** As it stands in a plan file. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
