package longpoint.field.restraint;

import java.util.List;
import java.util.Objects;
import longpoint.wording.Phrase;

/**
 * What to have ready before the trusses of one run are set. Lengths in plan units.
 *
 * @param run id of the run
 * @param part id of the part
 * @param trusses that stand square to its ridge
 * @param span of the longest
 * @param length from the first truss to the last
 * @param apart farthest from row to row along the top chords; 0 where general guidance has none
 * @param from who says so
 * @param rows along the trusses, from the first bearing
 * @param diagonals places along the run, from its first truss, where each row takes a diagonal
 * @param groundBraces for the first truss, one in line with each row on the top chords
 * @param boards for the rows together
 * @param tolerances of setting
 * @param steps the order of setting
 * @param cautions of this run
 */
public record RestraintRun(
    String run,
    String part,
    int trusses,
    double span,
    double length,
    double apart,
    Source from,
    List<RestraintRow> rows,
    List<Double> diagonals,
    int groundBraces,
    Boards boards,
    Tolerances tolerances,
    List<Phrase> steps,
    List<Phrase> cautions) {
  /** Who says how far rows are apart. */
  public enum Source {
    /** General guidance by span, from memory: to be checked against the supplier's documents. */
    GUIDANCE,
    /** What the user typed from the supplier's documents. */
    SUPPLIER,
    /** Nobody: ask the supplier and an engineer. */
    NONE
  }

  /**
   * @param length of one
   * @param count for all rows, each lapped over two trusses
   * @param total length of them all
   */
  public record Boards(double length, int count, double total) {}

  /**
   * @param plumb most out of plumb for the tallest truss, from top to bottom
   * @param bow most bow of the longest chord
   * @param place most away from its mark along the bearing
   */
  public record Tolerances(double plumb, double bow, double place) {}

  public RestraintRun {
    Objects.requireNonNull(from);
    Objects.requireNonNull(boards);
    Objects.requireNonNull(tolerances);
    rows = List.copyOf(rows);
    diagonals = List.copyOf(diagonals);
    steps = List.copyOf(steps);
    cautions = List.copyOf(cautions);
  }

  public long rows(RestraintRow.Place place) {
    return rows.stream().filter(r -> r.place() == place).count();
  }
}
