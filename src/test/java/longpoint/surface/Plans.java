package longpoint.surface;

import java.util.List;
import java.util.Optional;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Defaults;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/** Plans for the tests of this package, in inches. */
final class Plans {
  static final Edge GABLE = Edge.of(EdgeKind.GABLE);
  static final Edge OPEN = Edge.of(EdgeKind.OPEN);
  static final Edge ABUTMENT = Edge.of(EdgeKind.ABUTMENT);

  private Plans() {}

  static Edge eave(double inTwelve) {
    return Edge.eave(Slope.inTwelve(inTwelve));
  }

  static Part part(String id, double plate, Ring outline, Edge... edges) {
    return part(id, plate, outline, List.of(), edges);
  }

  static Part part(String id, double plate, Ring outline, List<Ring> holes, Edge... edges) {
    return new Part(
        id,
        id,
        false,
        outline,
        holes,
        plate,
        List.of(edges),
        Frame.of(LengthUnit.INCH),
        Deck.of(LengthUnit.INCH),
        Extras.NONE);
  }

  /** Every side an eave of one slope. */
  static Part hip(String id, double plate, double inTwelve, Ring outline) {
    Edge[] edges = new Edge[outline.size()];
    java.util.Arrays.fill(edges, eave(inTwelve));
    return part(id, plate, outline, edges);
  }

  static Plan plan(Part... parts) {
    return Plan.empty(LengthUnit.INCH).withParts(List.of(parts));
  }

  /** No overhang, no heel, no fascia: the roof's figures are those of the bare outline. */
  static Plan bare(Part... parts) {
    Defaults none =
        new Defaults(Slope.inTwelve(8), 0, Optional.of(0.0), 0, 0.0625, 20, 24, Extras.NONE);
    return plan(parts).withDefaults(none);
  }

  /** The garden wing plan of the plan format: a gabled house, a steeper wing on its front. */
  static Plan gardenWing() {
    Part main =
        part(
            "main",
            97.125,
            Ring.of(0, 0, 480, 0, 480, 336, 0, 336),
            eave(8),
            GABLE.withOverhang(12),
            eave(8),
            GABLE.withOverhang(12));
    Part wing =
        part(
            "wing",
            97.125,
            Ring.of(168, -144, 312, -144, 312, 0, 168, 0),
            GABLE.withOverhang(12),
            eave(10),
            OPEN,
            eave(10));
    return plan(main, wing).withJoins(List.of(Join.overlay("wing", "main")));
  }
}
