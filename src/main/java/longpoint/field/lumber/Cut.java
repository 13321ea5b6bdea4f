package longpoint.field.lumber;

import java.util.List;
import java.util.Objects;

/**
 * Pieces that are cut alike. Lengths in plan units, not rounded.
 *
 * @param mark letters of its use and a number; unique in the list
 * @param section of the board it is cut from
 * @param count how many
 * @param length as it is marked: along the edge the figures are given for, long point to long point
 *     where an end is mitred
 * @param board how much board one piece takes up, its slanted ends included, ≥ {@code length}
 * @param from the first or lower end
 * @param to the other end
 * @param spliced whether it is part of a longer run, jointed over what carries it
 * @param at runs, sides or roof lines it belongs to, in order
 */
public record Cut(
    String mark,
    Use use,
    Section section,
    int count,
    double length,
    double board,
    EndCut from,
    EndCut to,
    Splice spliced,
    List<String> at) {
  /** Whether a piece is whole. */
  public enum Splice {
    WHOLE,
    /** One of several in a row; the joints fall on what carries the row. */
    SPLICED,
    /** Longer than the longest board and not to be jointed without somebody's design. */
    TOO_LONG
  }

  public Cut {
    Objects.requireNonNull(mark);
    Objects.requireNonNull(use);
    Objects.requireNonNull(section);
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
    Objects.requireNonNull(spliced);
    at = List.copyOf(at);
    if (count < 1 || !(length > 0) || !(board >= length)) {
      throw new IllegalArgumentException("no piece: " + count + " of " + length + ", " + board);
    }
  }
}
