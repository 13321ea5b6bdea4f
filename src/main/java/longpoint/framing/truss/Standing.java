package longpoint.framing.truss;

import java.util.Objects;

/**
 * A truss square to the ridge in its place along a run.
 *
 * @param station its middle, from the outside face of the start wall
 * @param thickness of one ply
 * @param plies side by side
 * @param role why it stands there
 * @param fromEnd its number from the end it belongs to, 0 for the first; −1 away from the ends
 */
public record Standing(double station, double thickness, int plies, Role role, int fromEnd) {
  /** Why a truss stands where it does. */
  public enum Role {
    START,
    END,
    LAYOUT,
    /** A truss that the user put there. */
    PLACED,
    /** A girder that the user put there. */
    PLACED_GIRDER
  }

  public Standing {
    Objects.requireNonNull(role);
  }

  static Standing ordinary(double station, double thickness) {
    return new Standing(station, thickness, 1, Role.LAYOUT, -1);
  }

  public double width() {
    return plies * thickness;
  }

  /** Face towards the start of the run. */
  public double near() {
    return station - width() / 2;
  }

  /** Face towards the end of the run. */
  public double far() {
    return station + width() / 2;
  }

  boolean overlaps(Standing other) {
    return near() < other.far() - TOUCH && other.near() < far() - TOUCH;
  }

  /** Whether it belongs to an end and holds that end up: an end truss or the girder of a hip. */
  boolean holdsAnEnd() {
    return fromEnd == 0;
  }

  /** Trusses may touch; less than this, in any unit, is the rounding of arithmetic. */
  private static final double TOUCH = 1e-6;
}
