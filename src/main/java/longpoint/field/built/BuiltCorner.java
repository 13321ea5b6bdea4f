package longpoint.field.built;

import java.util.Objects;
import longpoint.geometry.Point;

/**
 * A corner of the walls as it stands.
 *
 * @param number as the wall sheet shows it
 * @param part id of its part
 * @param corner its place in the part, from 0
 * @param planned where it is drawn
 * @param built where it stands, in the plan's axes laid over the walls as they fit best
 * @param within one standard deviation of its place among the others, plan units; 0 where it stays
 *     as drawn
 * @param hold how it is known
 */
public record BuiltCorner(
    int number, String part, int corner, Point planned, Point built, double within, Hold hold) {
  /** How a corner is known. */
  public enum Hold {
    /** The tapes hold it. */
    HELD,
    /** The tapes leave it open; it stands as near to the plan as they allow. */
    OPEN,
    /** No tape goes there: it stays as drawn. */
    DRAWN
  }

  public BuiltCorner {
    Objects.requireNonNull(part);
    Objects.requireNonNull(planned);
    Objects.requireNonNull(built);
    Objects.requireNonNull(hold);
  }

  public double moved() {
    return planned.distance(built);
  }
}
