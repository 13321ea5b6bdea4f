package longpoint.field.built;

import java.util.Objects;
import java.util.Optional;

/**
 * A tape reading beside what the fitted walls and the plan say.
 *
 * @param place in the plan's list of tapes, from 0
 * @param from number of the corner it was taken from; 0 if there is no such corner
 * @param to number of the corner it was taken to; 0 if there is no such corner
 * @param planned length on the plan
 * @param fitted length between the fitted corners
 * @param check how well the others check it; empty where it is not part of the fit
 */
public record BuiltTape(
    int place,
    int from,
    int to,
    double reads,
    double planned,
    double fitted,
    Optional<Check> check,
    State state) {
  /** What became of a reading. */
  public enum State {
    /** It is part of the fit. */
    COUNTS,
    /** It does not agree with the others and is left out. */
    DOUBTED,
    /** The user has set it aside. */
    ASIDE,
    /** It names a corner that is not there, or one corner twice. */
    NOWHERE
  }

  /**
   * @param sigma one standard deviation of the reading
   * @param redundancy 0 to 1: how much of a mistake in it would show
   * @param test its residual over the residual's own standard deviation
   * @param unseen a mistake smaller than this may well go unseen; empty if nothing checks it
   */
  public record Check(double sigma, double redundancy, double test, Optional<Double> unseen) {
    public Check {
      Objects.requireNonNull(unseen);
    }
  }

  public BuiltTape {
    Objects.requireNonNull(check);
    Objects.requireNonNull(state);
  }

  /** Fitted less read. */
  public double residual() {
    return fitted - reads;
  }
}
