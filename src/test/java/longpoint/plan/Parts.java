package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Ring;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/** Parts and plans for tests, each side of a part told from the others by its overhang. */
final class Parts {
  private Parts() {}

  /** Every side an eave, side i with an overhang of i. */
  static Part part(String id, Ring outline, Ring... holes) {
    int sides = outline.size();
    for (Ring hole : holes) {
      sides += hole.size();
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      edges.add(Edge.eave(Slope.inTwelve(8)).withOverhang(i));
    }
    return new Part(
        id,
        id,
        false,
        outline,
        List.of(holes),
        97.125,
        edges,
        Frame.of(LengthUnit.INCH),
        Deck.of(LengthUnit.INCH),
        Extras.NONE);
  }

  static Plan plan(Part... parts) {
    return Plan.empty(LengthUnit.INCH).withParts(List.of(parts));
  }

  static List<Double> overhangs(Part part) {
    return part.edges().stream().map(e -> e.overhang().orElse(-1.0)).toList();
  }
}
