package longpoint.tracing;

import java.util.Objects;
import longpoint.geometry.Ring;

/**
 * A closed outline found in a drawing.
 *
 * @param layer it stands on
 * @param ring counter-clockwise, in the plan's unit
 * @param depth how many other outlines stand around it: 0 for the outside of a building
 */
public record Outline(String layer, Ring ring, int depth) {
  public Outline {
    Objects.requireNonNull(layer);
    Objects.requireNonNull(ring);
  }

  public boolean isOuter() {
    return depth == 0;
  }
}
