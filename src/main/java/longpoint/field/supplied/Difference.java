package longpoint.field.supplied;

import java.util.Objects;

/**
 * A figure of a truss as the layout and as the supplier has it.
 *
 * @param figure which
 * @param planned by the layout; a slope as rise over run, plies as a number
 * @param supplied by the list
 * @param off how far they are apart as it is noticed: plan units; of a slope, over half the span
 * @param differs whether that is more than 1/8 in or 3 mm, or any other number of plies
 */
public record Difference(
    Figure figure, double planned, double supplied, double off, boolean differs) {
  /** What is compared. */
  public enum Figure {
    SPAN,
    HEIGHT,
    SLOPE,
    OTHER_SLOPE,
    OVERHANG,
    OTHER_OVERHANG,
    HEEL,
    OTHER_HEEL,
    PLIES
  }

  public Difference {
    Objects.requireNonNull(figure);
  }
}
