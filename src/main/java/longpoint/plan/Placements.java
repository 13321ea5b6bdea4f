package longpoint.plan;

import java.util.List;
import longpoint.geometry.Point;

/**
 * What the user puts into a part's frame, or takes out of it, at places of their own. Places are
 * plan points, so that they move, turn and are mirrored with the part.
 *
 * @param trusses put there besides those of the layout
 * @param leftOut each leaves out the truss nearest to it
 * @param ceilings stretches with a ceiling slope of their own
 * @param lifts sections to be built on the ground and hoisted
 */
public record Placements(
    List<PlacedTruss> trusses,
    List<Point> leftOut,
    List<CeilingStretch> ceilings,
    List<Lift> lifts) {
  public static final Placements NONE = new Placements(List.of(), List.of(), List.of());

  public Placements {
    trusses = List.copyOf(trusses);
    leftOut = List.copyOf(leftOut);
    ceilings = List.copyOf(ceilings);
    lifts = List.copyOf(lifts);
  }

  /** With nothing to hoist. */
  public Placements(List<PlacedTruss> trusses, List<Point> leftOut, List<CeilingStretch> ceilings) {
    this(trusses, leftOut, ceilings, List.of());
  }

  public Placements withTrusses(List<PlacedTruss> trusses) {
    return new Placements(trusses, leftOut, ceilings, lifts);
  }

  public Placements withLeftOut(List<Point> leftOut) {
    return new Placements(trusses, leftOut, ceilings, lifts);
  }

  public Placements withCeilings(List<CeilingStretch> ceilings) {
    return new Placements(trusses, leftOut, ceilings, lifts);
  }

  public Placements withLifts(List<Lift> lifts) {
    return new Placements(trusses, leftOut, ceilings, lifts);
  }

  Placements moved(Motion motion) {
    return new Placements(
        trusses.stream().map(t -> t.moved(motion)).toList(),
        leftOut.stream().map(motion::on).toList(),
        ceilings.stream().map(c -> c.moved(motion)).toList(),
        lifts.stream().map(l -> l.moved(motion)).toList());
  }
}
