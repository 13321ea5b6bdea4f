package longpoint.field.loads;

import java.util.Objects;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * A truss or rafter that carries roof.
 *
 * @param id of the truss, or the rafter's mark with the number of its place
 * @param mark on the layout
 * @param part id of the part it belongs to
 * @param plane id of the plane a valley truss stands on; empty for others
 * @param axis from its first bearing to its last, in plan
 * @param reach the same with its tails
 * @param way how it carries
 * @param lie whether it runs up a slope, or along a hip or valley
 * @param first what carries its first end
 * @param last what carries its last end
 */
record Member(
    String id,
    String mark,
    String part,
    String plane,
    Segment axis,
    Segment reach,
    Way way,
    Lie lie,
    End first,
    End last) {
  /** How a member carries. */
  enum Way {
    /** From bearing to bearing. */
    SPANS,
    /** On a wall under its whole length. */
    ON_WALL,
    /** Straight down on the roof beneath. */
    THROUGH
  }

  /** Where a member runs. */
  enum Lie {
    /** Square to a wall, up one slope and perhaps down the other. */
    UP_THE_SLOPE,
    /** Under a hip or valley, between two planes. */
    UNDER_A_CORNER
  }

  /**
   * What an end comes to.
   *
   * @param by id of the member that carries it; empty for anything else
   * @param on id of the wall under it, or what kind of line it comes to
   */
  record End(BearingLoad.On kind, Optional<String> by, String on) {
    End {
      Objects.requireNonNull(kind);
      Objects.requireNonNull(by);
      Objects.requireNonNull(on);
    }
  }

  Point direction() {
    return axis.direction();
  }
}
