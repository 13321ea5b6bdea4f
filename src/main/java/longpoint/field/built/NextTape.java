package longpoint.field.built;

import java.util.Objects;

/**
 * A tape worth taking next.
 *
 * @param from number of a corner
 * @param to number of another
 */
public record NextTape(int from, int to, Purpose purpose) {
  /** What a tape would be good for. */
  public enum Purpose {
    /** It tells what the tapes so far leave open. */
    SHAPE,
    /** It checks readings that nothing checks yet. */
    CHECK
  }

  public NextTape {
    Objects.requireNonNull(purpose);
  }
}
