package longpoint.plan;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * How one part's roof meets another's.
 *
 * @param upper id of the part that runs on over the other
 * @param lower id of the part it meets
 * @param method whether the lower roof is complete beneath
 * @param madeFor what the valley trusses were made to sit on
 * @param tails whether a new lower roof keeps its tails over the mouth of the upper one
 * @param chords lengths of the bottom chords of the valley trusses as the supplier lists them, plan
 *     units, in any order; empty lets the program choose
 */
public record Join(
    String upper,
    String lower,
    Method method,
    MadeFor madeFor,
    MouthTails tails,
    List<Double> chords,
    Extras extras) {
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

  /** What becomes of the lower roof's overhang inside an upper part that is laid over it. */
  public enum MouthTails {
    /** Trusses are cut at the wall and the deck stops there: the upper part has the room. */
    OFF,
    /** The lower eave is built whole. */
    ON;

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
    Objects.requireNonNull(tails);
    chords = List.copyOf(chords);
    Objects.requireNonNull(extras);
  }

  /** A join with no supplier's list, the tails over the mouth left off. */
  public Join(String upper, String lower, Method method, MadeFor madeFor, Extras extras) {
    this(upper, lower, method, madeFor, MouthTails.OFF, List.of(), extras);
  }

  public Join between(String upper, String lower) {
    return new Join(upper, lower, method, madeFor, tails, chords, extras);
  }

  public Join withMethod(Method method) {
    return new Join(upper, lower, method, madeFor, tails, chords, extras);
  }

  public Join withMadeFor(MadeFor madeFor) {
    return new Join(upper, lower, method, madeFor, tails, chords, extras);
  }

  public Join withTails(MouthTails tails) {
    return new Join(upper, lower, method, madeFor, tails, chords, extras);
  }

  public Join withChords(List<Double> chords) {
    return new Join(upper, lower, method, madeFor, tails, chords, extras);
  }

  public static Join overlay(String upper, String lower) {
    return new Join(upper, lower, Method.OVERLAY, MadeFor.FRAME, Extras.NONE);
  }
}
