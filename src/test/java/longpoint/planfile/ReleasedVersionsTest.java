package longpoint.planfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
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
import org.junit.jupiter.api.Test;

/**
 * A file of every released version stays readable and keeps its meaning. Never change a file here:
 * a new version adds one.
 */
class ReleasedVersionsTest {
  @Test
  void versionOne() throws IOException {
    Plan expected =
        new Plan(
            LengthUnit.MILLIMETRE,
            "Wendle Ford store",
            List.of(store(), porch()),
            List.of(
                new Join("porch", "store", Join.Method.THROUGH, Join.MadeFor.DECK, Extras.NONE)),
            new Defaults(
                Slope.degrees(30), 350, Optional.of(110.0), 25, 1.5, 480, 550, Extras.NONE),
            new Extras(Map.of("client", "\"Ada Tarn\"")));
    try (InputStream file = getClass().getResourceAsStream("version-1.json")) {
      assertThat(PlanFile.read(file).plan()).isEqualTo(expected);
    }
  }

  private static Part store() {
    Edge eave = Edge.of(EdgeKind.EAVE);
    return new Part(
        "store",
        "Store",
        true,
        Ring.of(0, 0, 6000, 0, 6000, 4800, 0, 4800),
        List.of(Ring.of(2000, 1500, 2000, 2500, 3000, 2500, 3000, 1500)),
        2435.5,
        List.of(
            Edge.eave(Slope.degrees(35)).withOverhang(450).withHeel(150),
            Edge.of(EdgeKind.GABLE).withOverhang(300),
            Edge.eave(Slope.inTwelve(8)),
            Edge.of(EdgeKind.ABUTMENT),
            Edge.eave(Slope.ratio(0.5)),
            Edge.eave(Slope.percent(50)),
            eave,
            new Edge(
                EdgeKind.EAVE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new Extras(Map.of("gutter", "\"half round\"")))),
        new Frame(Frame.Method.RAFTER, 400, 45, Optional.of(1800.0), Extras.NONE),
        new Deck(18, 1250, 2500, Deck.Start.CENTRE, Extras.NONE),
        Extras.NONE);
  }

  private static Part porch() {
    Edge eave = Edge.of(EdgeKind.EAVE);
    return new Part(
        "porch",
        "porch",
        false,
        Ring.of(2000, -1500, 4000, -1500, 4000, 0, 2000, 0),
        List.of(),
        2300,
        List.of(Edge.of(EdgeKind.GABLE), eave, Edge.of(EdgeKind.OPEN), eave),
        new Frame(Frame.Method.TRUSS, 610, 38, Optional.empty(), Extras.NONE),
        new Deck(12, 1220, 2440, Deck.Start.LEFT, Extras.NONE),
        Extras.NONE);
  }
}
