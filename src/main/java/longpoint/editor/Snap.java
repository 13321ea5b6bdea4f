package longpoint.editor;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * Where the pointer is taken to be, and why.
 *
 * @param at the place itself
 * @param kind what holds it
 * @param reason in words, e.g. "on the corner of House"; empty when free
 * @param guides lines that show the reason, e.g. from a wall to the place
 */
public record Snap(Point at, Kind kind, String reason, List<Segment> guides) {
  /** What may hold a pointer, strongest first. */
  public enum Kind {
    CORNER,
    MIDDLE,
    CROSSING,
    ON_SIDE,
    IN_LINE,
    SQUARE,
    GRID,
    FREE
  }

  public Snap {
    Objects.requireNonNull(at);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(reason);
    guides = List.copyOf(guides);
  }

  public static Snap free(Point at) {
    return new Snap(at, Kind.FREE, "", List.of());
  }

  public boolean isFree() {
    return kind == Kind.FREE;
  }
}
