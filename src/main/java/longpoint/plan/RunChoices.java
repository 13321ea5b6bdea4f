package longpoint.plan;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import longpoint.geometry.Point;

/**
 * What the user says about the straight runs of a part. Places are plan points, so that they move,
 * turn and are mirrored with the part.
 *
 * @param layoutFrom each names the end of a run that its layout starts from: the run it lies in or
 *     nearest to, and of that run the nearer end
 * @param through a point of the leg whose ridge goes through in an outline with several legs; empty
 *     leaves the choice to the program
 * @param legs whether such an outline is split into runs at all; empty for split
 */
public record RunChoices(List<Point> layoutFrom, Optional<Point> through, Optional<Legs> legs) {
  public static final RunChoices NONE =
      new RunChoices(List.of(), Optional.empty(), Optional.empty());

  /** What is done with an outline of several legs. */
  public enum Legs {
    /** A main run and wings, each with trusses or rafters of its own. */
    SPLIT,
    /** One roof framed with rafters from wall to ridge. */
    WHOLE;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public RunChoices {
    layoutFrom = List.copyOf(layoutFrom);
    Objects.requireNonNull(through);
    Objects.requireNonNull(legs);
  }

  public boolean whole() {
    return legs.equals(Optional.of(Legs.WHOLE));
  }

  public RunChoices withLayoutFrom(List<Point> ends) {
    return new RunChoices(ends, through, legs);
  }

  /** With the leg at a point going through, the outline split. */
  public RunChoices withThrough(Point leg) {
    return new RunChoices(layoutFrom, Optional.of(leg), Optional.empty());
  }

  public RunChoices withLegs(Legs legs) {
    return new RunChoices(layoutFrom, Optional.empty(), Optional.of(legs));
  }
}
