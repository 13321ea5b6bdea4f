package longpoint.field.lift;

import java.util.Objects;
import longpoint.geometry.Point3;

/**
 * One thing that goes up.
 *
 * @param subject id of the plan, roof or frame element it is
 * @param name its mark, or empty
 * @param weight lb, or kg in a metric plan
 * @param centre where it balances
 */
public record LiftPiece(
    String subject, Kind kind, String name, double weight, Point3 centre, WeightFrom from) {
  /** What it is. */
  public enum Kind {
    TRUSS,
    DECK,
    FLY_RAFTER,
    LOOKOUTS,
    LADDER_BLOCKS,
    RIDGE_BLOCKS
  }

  /** Who says what it weighs. */
  public enum WeightFrom {
    /** The user, after the supplier's documents. */
    GIVEN,
    /** The lumber drawn, times a density. */
    LUMBER,
    /** The area, times a panel's weight. */
    PANEL
  }

  public LiftPiece {
    Objects.requireNonNull(subject);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(name);
    Objects.requireNonNull(centre);
    Objects.requireNonNull(from);
  }
}
