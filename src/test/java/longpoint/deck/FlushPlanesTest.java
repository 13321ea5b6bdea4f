package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longpoint.geometry.Ring;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;

class FlushPlanesTest {
  /** A house with a wing in front, drawn as one outline: left and right of it one plane. */
  private static Plan winged() {
    Ring walls = Ring.of(0, 0, 144, 0, 144, -96, 288, -96, 288, 0, 432, 0, 432, 288, 0, 288);
    List<Edge> edges =
        Stream.of(
                EdgeKind.EAVE,
                EdgeKind.EAVE,
                EdgeKind.GABLE,
                EdgeKind.EAVE,
                EdgeKind.EAVE,
                EdgeKind.GABLE,
                EdgeKind.EAVE,
                EdgeKind.GABLE)
            .map(k -> Edge.of(k).withSlope(Slope.inTwelve(6)))
            .toList();
    Part part =
        new Part(
            "a",
            "House",
            false,
            walls,
            List.of(),
            96,
            edges,
            Frame.of(LengthUnit.INCH),
            longpoint.plan.Deck.of(LengthUnit.INCH),
            Extras.NONE);
    return Plan.empty(LengthUnit.INCH).withPart(part);
  }

  @Test
  void runOnAcrossTheirSeams() {
    Plan plan = winged();
    RoofSurface surface = Roof.solve(plan);
    DeckPlan deck = Sheathing.lay(plan, surface, Map.of());
    DeckLaws.check(deck);
    assertThat(deck.planes().stream().flatMap(p -> p.planes().stream()).sorted())
        .isEqualTo(surface.planes().stream().map(RoofPlane::id).sorted().toList());
    double roof = surface.planes().stream().mapToDouble(RoofPlane::area).sum();
    assertThat(deck.planes().stream().mapToDouble(PlaneDeck::area).sum())
        .isCloseTo(roof, within(1e-9 * roof));
    assertThat(deck.plane("a/0").orElseThrow().planes()).containsExactly("a/0", "a/4");
  }
}
