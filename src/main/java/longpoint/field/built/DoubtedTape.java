package longpoint.field.built;

import java.util.List;
import java.util.Objects;

/**
 * A reading that does not agree with the others.
 *
 * @param place in the plan's list of tapes, from 0
 * @param by how much too long it reads; negative if too short
 * @param test its residual over the residual's standard deviation; above 3.29 it is doubted
 * @param others places of the readings that could be wrong instead, for all the tapes can tell
 * @param witness what points to it: the other tapes, the plan, or nothing
 */
public record DoubtedTape(
    int place, double by, double test, List<Integer> others, Witness witness) {
  /** What points to a reading. */
  enum Witness {
    /** The other tapes. */
    TAPES,
    /** The plan: the tapes cannot tell it from others. */
    PLAN,
    /** Nothing: one of several is wrong. */
    NONE
  }

  public DoubtedTape {
    others = List.copyOf(others);
    Objects.requireNonNull(witness);
  }
}
