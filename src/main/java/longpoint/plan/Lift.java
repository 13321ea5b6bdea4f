package longpoint.plan;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longpoint.geometry.Point;

/**
 * A section that the user means to build on the ground and hoist. Places are plan points, so that
 * they move, turn and are mirrored with the part whose section it is.
 *
 * @param name what the crew calls it, may be empty
 * @param trusses each takes the truss nearest to it
 * @param stretch from one truss to another with all that stand between; may be empty
 * @param also what goes up with the trusses
 * @param rigging how it hangs
 */
public record Lift(
    String name,
    List<Point> trusses,
    Optional<Stretch> stretch,
    List<Also> also,
    Rigging rigging,
    Extras extras) {
  /** Two places: the trusses nearest to them and all between, of one run. */
  public record Stretch(Point from, Point to) {
    public Stretch {
      Objects.requireNonNull(from);
      Objects.requireNonNull(to);
    }
  }

  /** What goes up with the trusses. */
  public enum Also {
    /** The sheathing over them. */
    DECK,
    /** The ladders of a gable end among them. */
    LADDERS,
    /** Ridge blocks between them. */
    BLOCKS;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * How a section hangs.
   *
   * @param lines how many, 2 to 4; empty lets the program choose
   * @param hangAt places to hang it from, on top of the framing; empty lets the program choose
   * @param hook height of the hook above the highest of them, plan units; empty lets the program
   *     choose
   */
  public record Rigging(Optional<Integer> lines, List<Point> hangAt, Optional<Double> hook) {
    public static final Rigging CHOSEN = new Rigging(Optional.empty(), List.of(), Optional.empty());

    public Rigging {
      Objects.requireNonNull(lines);
      Objects.requireNonNull(hook);
      hangAt = List.copyOf(hangAt);
    }

    Rigging moved(Motion motion) {
      return new Rigging(lines, hangAt.stream().map(motion::on).toList(), hook);
    }
  }

  public Lift {
    Objects.requireNonNull(name);
    Objects.requireNonNull(stretch);
    Objects.requireNonNull(rigging);
    Objects.requireNonNull(extras);
    trusses = List.copyOf(trusses);
    also = List.copyOf(also);
  }

  /** Trusses from one place to another, hung as the program chooses. */
  public static Lift stretch(String name, Point from, Point to, List<Also> also) {
    return new Lift(
        name, List.of(), Optional.of(new Stretch(from, to)), also, Rigging.CHOSEN, Extras.NONE);
  }

  /** Single trusses, hung as the program chooses. */
  public static Lift of(String name, List<Point> trusses) {
    return new Lift(name, trusses, Optional.empty(), List.of(), Rigging.CHOSEN, Extras.NONE);
  }

  Lift moved(Motion motion) {
    return new Lift(
        name,
        trusses.stream().map(motion::on).toList(),
        stretch.map(s -> new Stretch(motion.on(s.from()), motion.on(s.to()))),
        also,
        rigging.moved(motion),
        extras);
  }
}
