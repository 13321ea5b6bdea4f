package longpoint.field.built;

import java.util.Objects;

/**
 * A figure of the work that is another one on the walls as built, squared up.
 *
 * @param kind what it is a figure of
 * @param subject id of what it belongs to: a side, a roof line, a run, a part, or a truss's mark
 * @param number of the piece, where there are several: of a valley truss from the eave; else 0
 * @param mark of the piece, where it has one; may be empty
 * @param planned as worked out for the walls as drawn
 * @param built as worked out for the walls as built
 */
public record Change(
    Kind kind, String subject, int number, String mark, double planned, double built) {
  /** What a figure is of, in the order of the work. */
  public enum Kind {
    /** From corner to corner. */
    WALL,
    /** Top of the plate above the datum. */
    PLATE,
    /** Level span of a truss, outside to outside. */
    TRUSS_SPAN,
    /** Height of a truss over all. */
    TRUSS_HEIGHT,
    /** True length of a ridge, hip, valley, eave, rake. */
    LINE,
    /** Length of a common, hip, valley or jack rafter between its cuts. */
    RAFTER,
    /** Length of the fly rafter of a gable overhang. */
    FLY_RAFTER,
    /** Length of a gable overhang's lookouts. */
    LOOKOUT,
    /** Length of the blocks between trusses. */
    BLOCK,
    /** Where a valley truss stands: level distance up the main roof from its wall. */
    VALLEY_PLACE,
    /** Length of the bottom chord of a valley truss. */
    VALLEY_CHORD,
    /** Long point to long point of a fascia or rake board. */
    FASCIA,
    /** True area of a plane that shows. */
    AREA
  }

  public Change {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(subject);
    Objects.requireNonNull(mark);
  }

  public double difference() {
    return built - planned;
  }
}
