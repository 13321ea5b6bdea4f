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
 */
public record Placements(
    List<PlacedTruss> trusses, List<Point> leftOut, List<CeilingStretch> ceilings) {
  public static final Placements NONE = new Placements(List.of(), List.of(), List.of());

  public Placements {
    trusses = List.copyOf(trusses);
    leftOut = List.copyOf(leftOut);
    ceilings = List.copyOf(ceilings);
  }

  public Placements withTrusses(List<PlacedTruss> trusses) {
    return new Placements(trusses, leftOut, ceilings);
  }

  public Placements withLeftOut(List<Point> leftOut) {
    return new Placements(trusses, leftOut, ceilings);
  }

  public Placements withCeilings(List<CeilingStretch> ceilings) {
    return new Placements(trusses, leftOut, ceilings);
  }

  Placements moved(Motion motion) {
    return new Placements(
        trusses.stream().map(t -> t.moved(motion)).toList(),
        leftOut.stream().map(motion::on).toList(),
        ceilings.stream().map(c -> c.moved(motion)).toList());
  }
}
