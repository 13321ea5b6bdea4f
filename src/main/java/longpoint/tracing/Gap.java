package longpoint.tracing;

import java.util.Objects;
import longpoint.geometry.Point;

/**
 * Two ends of lines that do not meet, though an outline would close if they did.
 *
 * @param layer they stand on
 * @param from one end, in the plan's unit
 * @param to the other
 */
public record Gap(String layer, Point from, Point to) {
  public Gap {
    Objects.requireNonNull(layer);
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
  }

  public double width() {
    return from.distance(to);
  }
}
