package longpoint.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;

class PipelineTest {
  private static Part part(String id, Ring outline) {
    LengthUnit in = LengthUnit.INCH;
    List<Edge> eaves = outline.points().stream().map(p -> Edge.of(EdgeKind.EAVE)).toList();
    return new Part(
        id, id, false, outline, List.of(), 97, eaves, Frame.of(in), Deck.of(in), Extras.NONE);
  }

  private static Plan plan(Part... parts) {
    return Plan.empty(LengthUnit.INCH).withParts(List.of(parts));
  }

  /** The check of the plan and the solving of the roof both notice; the user hears of it once. */
  @Test
  void aMistakeIsToldOnce() {
    Part bowTie = part("tie", Ring.of(0, 0, 480, 336, 480, 0, 0, 336));
    Part level = part("level", Ring.of(900, 0, 1200, 0, 1200, 300, 900, 300));
    Design design = Pipeline.solve(plan(bowTie, level.withEdge(1, Edge.eave(Slope.ratio(0)))));
    assertThat(design.problems())
        .extracting(Problem::where)
        .containsExactlyInAnyOrder("tie/0", "level/1");
    assertThat(design.surface().planes()).isEmpty();
  }

  @Test
  void soundPartsAreSolvedBesideASpoiltOne() {
    Part bowTie = part("tie", Ring.of(0, 0, 480, 336, 480, 0, 0, 336));
    Part sound = part("sound", Ring.of(900, 0, 1200, 0, 1200, 300, 900, 300));
    Design design = Pipeline.solve(plan(bowTie, sound));
    assertThat(design.surface().planes()).hasSize(4).allMatch(p -> p.part().equals("sound"));
  }
}
