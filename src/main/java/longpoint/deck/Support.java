package longpoint.deck;

import java.util.Objects;
import longpoint.geometry.Segment;

/**
 * The centre line of something a sheet can be nailed to.
 *
 * @param mark of the truss or rafter; may be empty
 * @param kind what it is
 * @param line in plan where framing hands it over, in (u, v) inside a {@link PlaneDeck}
 * @param thickness across the line, &gt; 0
 */
public record Support(String mark, Kind kind, Segment line, double thickness) {
  /** What carries the sheets. */
  public enum Kind {
    TRUSS,
    RAFTER,
    GIRDER,
    JACK,
    VALLEY_TRUSS
  }

  public Support {
    Objects.requireNonNull(mark);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(line);
    if (!(thickness > 0)) {
      throw new IllegalArgumentException("a support needs a thickness, not " + thickness);
    }
  }

  public Support along(Segment other) {
    return new Support(mark, kind, other, thickness);
  }
}
