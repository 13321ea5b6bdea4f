package longpoint.plan;

import java.util.Locale;
import java.util.Objects;

/**
 * How one part's roof meets another's.
 *
 * @param upper id of the part that runs on over the other
 * @param lower id of the part it meets
 * @param method whether the lower roof is complete beneath
 * @param madeFor what the valley trusses were made to sit on
 */
public record Join(String upper, String lower, Method method, MadeFor madeFor, Extras extras) {
  /** Two ways to build a join. */
  public enum Method {
    /** The lower roof is framed and sheathed whole; valley trusses stand on its deck. */
    OVERLAY,
    /** The lower trusses stop at a girder and the attic is one. */
    THROUGH;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** The surface a valley set was drawn for. */
  public enum MadeFor {
    /** The bare frame: on a deck each truss then slides down the slope. */
    FRAME,
    /** The finished deck. */
    DECK;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Join {
    Objects.requireNonNull(upper);
    Objects.requireNonNull(lower);
    Objects.requireNonNull(method);
    Objects.requireNonNull(madeFor);
    Objects.requireNonNull(extras);
  }

  public static Join overlay(String upper, String lower) {
    return new Join(upper, lower, Method.OVERLAY, MadeFor.FRAME, Extras.NONE);
  }
}
