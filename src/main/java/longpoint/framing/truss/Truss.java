package longpoint.framing.truss;

import java.util.Objects;
import java.util.Optional;
import longpoint.geometry.Point;

/**
 * One truss in its place.
 *
 * @param id stable: run, letters of the kind, and its number in the run
 * @param mark which truss it is
 * @param plies side by side
 * @param part id of its part
 * @param run id of its run
 * @param station centre of the truss along its run; for jacks along the wall they stand on; for a
 *     valley truss x of its uphill face
 * @param span outside to outside of its bearings
 * @param height over all
 * @param quantity of its mark on the whole roof
 * @param from plan point of its first bearing's outside face, on its centre line
 * @param to plan point of its last bearing's outside face
 * @param plate height of its first bearing above the datum
 * @param turn whether it stands end for end against the outline of its mark
 * @param carriedFrom id of the truss that carries its first end, if none of a wall
 * @param carriedTo id of the truss that carries its last end
 */
public record Truss(
    String id,
    String mark,
    TrussKind kind,
    int plies,
    String part,
    String run,
    double station,
    double span,
    double height,
    int quantity,
    Point from,
    Point to,
    double plate,
    Turn turn,
    Optional<String> carriedFrom,
    Optional<String> carriedTo) {
  /** Which way round a truss stands. */
  public enum Turn {
    AS_DRAWN,
    END_FOR_END
  }

  public Truss {
    Objects.requireNonNull(mark);
    Objects.requireNonNull(turn);
    Objects.requireNonNull(carriedFrom);
    Objects.requireNonNull(carriedTo);
  }
}
