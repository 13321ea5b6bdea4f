package longpoint.plan;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longpoint.units.LengthUnit;

/**
 * The sheathing of a part. Lengths in plan units.
 *
 * @param thickness of a sheet, square to its face, ≥ 0
 * @param sheetWidth up the slope, &gt; 0
 * @param sheetLength along the eave, &gt; 0
 * @param start where the first sheet of the first course begins
 * @param walkway how far the sheets run in beneath another part's roof that lies over this one, up
 *     from the line where this roof comes out from under it, ≥ 0; what lies farther in is left
 *     open. Empty to sheathe it whole
 * @param firstCourse width of the lowest course, up the slope, where its sheets are ripped; empty
 *     for whole sheets. More than a sheet's width is a whole sheet
 */
public record Deck(
    double thickness,
    double sheetWidth,
    double sheetLength,
    Start start,
    Optional<Double> walkway,
    Optional<Double> firstCourse,
    Extras extras) {
  /** The edge sheets are laid from, seen standing on the ground facing the plane. */
  public enum Start {
    LEFT,
    RIGHT,
    CENTRE,
    /** Wherever the program finds the fewest sheets. */
    LEAST;

    /** The same edge of the plane's mirror image. */
    Start mirrored() {
      return switch (this) {
        case LEFT -> RIGHT;
        case RIGHT -> LEFT;
        case CENTRE, LEAST -> this;
      };
    }

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Deck {
    Objects.requireNonNull(start);
    Objects.requireNonNull(walkway);
    Objects.requireNonNull(firstCourse);
    Objects.requireNonNull(extras);
  }

  /** Sheathed whole beneath whatever lies over it. */
  public Deck(double thickness, double sheetWidth, double sheetLength, Start start, Extras extras) {
    this(thickness, sheetWidth, sheetLength, start, Optional.empty(), Optional.empty(), extras);
  }

  public Deck withThickness(double thickness) {
    return new Deck(thickness, sheetWidth, sheetLength, start, walkway, firstCourse, extras);
  }

  public Deck withStart(Start start) {
    return new Deck(thickness, sheetWidth, sheetLength, start, walkway, firstCourse, extras);
  }

  public Deck withWalkway(Optional<Double> walkway) {
    return new Deck(thickness, sheetWidth, sheetLength, start, walkway, firstCourse, extras);
  }

  public Deck withFirstCourse(Optional<Double> width) {
    return new Deck(thickness, sheetWidth, sheetLength, start, walkway, width, extras);
  }

  public static Deck of(LengthUnit unit) {
    return switch (unit) {
      case INCH -> new Deck(0.46875, 48, 96, Start.LEFT, Extras.NONE);
      case MILLIMETRE -> new Deck(12, 1220, 2440, Start.LEFT, Extras.NONE);
    };
  }
}
