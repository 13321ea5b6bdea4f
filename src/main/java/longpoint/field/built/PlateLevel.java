package longpoint.field.built;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The plate of one part as its corners were read.
 *
 * @param part its id
 * @param planned height of the plate on the plan
 * @param high the highest reading: what the others are shimmed up to
 * @param low the lowest
 * @param corners one for each reading that counts
 * @param tilt what is left of being out of level when twist is taken away; empty where fewer than
 *     three corners were read, or all in one line
 * @param allowed difference from high to low that is usual to let pass
 */
public record PlateLevel(
    String part,
    double planned,
    double high,
    double low,
    List<At> corners,
    Optional<Tilt> tilt,
    double allowed) {
  /**
   * @param number of the corner
   * @param shim what brings it up to the highest
   * @param off how far it stands above the plane through all of them: the twist
   */
  public record At(int number, double reads, double shim, double off) {}

  /**
   * The plane that fits the readings best.
   *
   * @param across rise over the run, to the right of the page
   * @param up rise over the run, up the page
   */
  public record Tilt(double across, double up) {
    /** Rise over run in the steepest direction. */
    public double slope() {
      return Math.hypot(across, up);
    }
  }

  public PlateLevel {
    Objects.requireNonNull(part);
    corners = List.copyOf(corners);
    Objects.requireNonNull(tilt);
  }

  public double range() {
    return high - low;
  }

  public boolean passes() {
    return range() <= allowed;
  }
}
