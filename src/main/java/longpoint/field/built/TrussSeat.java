package longpoint.field.built;

import java.util.Objects;
import java.util.Optional;

/**
 * How a truss made to the plan sits on the walls as built: it stands at its planned place and its
 * ridge where the plan has it, the plan laid over the walls as they fit best.
 *
 * @param truss its id
 * @param mark its mark
 * @param run id of its run
 * @param station its centre along the run
 * @param span as planned, outside to outside of its bearings
 * @param apart from outside to outside of the walls that it sits on, along the truss
 * @param from how much further out than planned the wall at its first end stands
 * @param to the same at its other end
 * @param overhangFrom level length of the tail that is left beyond the first wall; empty where it
 *     has none
 * @param overhangTo the same beyond the other
 * @param notice whether the walls are off by more than should be let pass unasked
 */
public record TrussSeat(
    String truss,
    String mark,
    String run,
    double station,
    double span,
    double apart,
    double from,
    double to,
    Optional<Double> overhangFrom,
    Optional<Double> overhangTo,
    boolean notice) {
  public TrussSeat {
    Objects.requireNonNull(mark);
    Objects.requireNonNull(overhangFrom);
    Objects.requireNonNull(overhangTo);
  }

  /** Positive where the walls stand further apart than the truss is long. */
  public double difference() {
    return apart - span;
  }
}
