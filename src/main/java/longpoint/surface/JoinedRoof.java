package longpoint.surface;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.geometry.Bounds;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import org.locationtech.jts.geom.Coordinate;

/**
 * The roofs of a cluster of parts, joined and put together.
 *
 * @param grain how finely places were told apart
 * @param shares the ground of every plane, by its id
 * @param lines in a fixed order
 */
record JoinedRoof(Joining joining, Grain grain, Map<String, Share> shares, List<RoofLine> lines) {

  /** The ground of one plane, in the plan's own coordinates; as in {@link RoofPlane}. */
  record Share(List<Region> visible, List<Region> covered, List<Region> sheltered) {}

  /**
   * Joins the roofs.
   *
   * @param roofs of the spec's parts, in its order, measured from its origin
   * @return nothing when rounding upsets every rung of the ladder
   */
  static Optional<JoinedRoof> of(JoinSpec spec, List<PartRoof> roofs) {
    Grain grain = Grain.of(bounds(roofs));
    return Joining.join(roofs, spec.joins(), grain)
        .map(
            joining -> {
              Assembly assembly = new Assembly(spec.origin(), grain);
              return new JoinedRoof(
                  joining, grain, assembly.shares(joining), assembly.lines(joining.lines()));
            });
  }

  private static Bounds bounds(List<PartRoof> roofs) {
    Bounds box = Bounds.EMPTY;
    for (PartRoof roof : roofs) {
      for (Coordinate c : roof.own().getEnvelope().getCoordinates()) {
        Point p = Jts.point(c);
        box = box.with(Bounds.of(List.of(p)));
      }
    }
    return box;
  }
}
