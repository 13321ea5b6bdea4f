package longpoint.plan;

import java.util.Locale;
import java.util.Objects;
import longpoint.units.LengthUnit;

/**
 * The sheathing of a part. Lengths in plan units.
 *
 * @param thickness of a sheet, square to its face, ≥ 0
 * @param sheetWidth up the slope, &gt; 0
 * @param sheetLength along the eave, &gt; 0
 * @param start where the first sheet of the first course begins
 */
public record Deck(
    double thickness, double sheetWidth, double sheetLength, Start start, Extras extras) {
  /** The edge sheets are laid from, seen standing on the ground facing the plane. */
  public enum Start {
    LEFT,
    RIGHT,
    CENTRE,
    /** Wherever the program finds the fewest sheets. */
    LEAST;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Deck {
    Objects.requireNonNull(start);
    Objects.requireNonNull(extras);
  }

  public static Deck of(LengthUnit unit) {
    return switch (unit) {
      case INCH -> new Deck(0.46875, 48, 96, Start.LEFT, Extras.NONE);
      case MILLIMETRE -> new Deck(12, 1220, 2440, Start.LEFT, Extras.NONE);
    };
  }
}
