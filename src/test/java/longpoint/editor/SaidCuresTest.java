package longpoint.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import longpoint.framing.Houses;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Buying;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.PlacedTruss;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.wording.Phrase;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every cure that a problem's own words lead to takes that problem away, as the engine sees it. */
class SaidCuresTest {
  private static final Part BOX = Houses.box("egeg", 8, 480, 336);

  static Stream<Arguments> faults() {
    Plan plain = Houses.plan(BOX);
    Plan through = Houses.gardenWing(Join.Method.THROUGH);
    Part old = through.parts().get(0).withExisting(true);
    PlacedTruss girder =
        new PlacedTruss(
            new Point(240, 168), Optional.empty(), PlacedTruss.Kind.GIRDER, 2, Extras.NONE);
    Part dormer = Houses.part("d", 170, "egog", 2, 160, 60, 320, 60, 320, 100, 160, 100);
    Plan dormered = Houses.plan(BOX, dormer).withJoins(List.of(Join.overlay("d", "main")));
    Plan overRidge =
        Houses.plan(BOX, Houses.part("d", 240, "egog", 2, 160, 60, 320, 60, 320, 120, 160, 120))
            .withJoins(List.of(Join.overlay("d", "main")));
    return Stream.of(
        Arguments.of("surface.open.cheeks", dormered),
        Arguments.of("surface.open.overRidge", overRidge),
        Arguments.of("plan.run.slopes", Houses.plan(inLine(e -> e.withSlope(Slope.inTwelve(5))))),
        Arguments.of("plan.run.heels", Houses.plan(inLine(e -> e.withHeel(9)))),
        Arguments.of(
            "plan.ceiling",
            framed(f -> f.withChoices(f.choices().withCeiling(Slope.inTwelve(10))))),
        Arguments.of("plan.thick", framed(f -> f.withSpacing(1))),
        Arguments.of(
            "plan.deck.negative", plain.withPart(BOX.withDeck(BOX.deck().withThickness(-1)))),
        Arguments.of(
            "plan.default.level", plain.withDefaults(plain.defaults().withSlope(Slope.ratio(0)))),
        Arguments.of("plan.default.negative", plain.withDefaults(plain.defaults().withHeel(-2))),
        Arguments.of(
            "plan.buying.waste", plain.withBuying(Buying.of(LengthUnit.INCH).withWaste(5))),
        Arguments.of("plan.hole.outside", plain.withPart(holed(600, 60))),
        Arguments.of(
            "framing.hip.setback",
            Houses.plan(Houses.box("eeee", 8, 480, 336).withFrame(setBack(BOX.frame(), 400)))),
        Arguments.of(
            "framing.placed.idle",
            framed(
                f ->
                    f.withMethod(Frame.Method.RAFTER)
                        .withPlacements(Placements.NONE.withTrusses(List.of(girder))))),
        Arguments.of("framing.join.cuts", through.withPart(old)),
        Arguments.of(
            "framing.seat.deep",
            Houses.plan(
                Houses.framed(
                    BOX.withEdge(0, BOX.edges().get(0).withHeel(0.5))
                        .withEdge(2, BOX.edges().get(2).withHeel(0.5)),
                    Frame.Method.RAFTER,
                    16))));
  }

  /** The front wall in two pieces, the second with another figure. */
  private static Part inLine(UnaryOperator<Edge> second) {
    Part part = Houses.part("main", 97.125, "eegeg", 8, 0, 0, 240, 0, 480, 0, 480, 336, 0, 336);
    return part.withEdge(1, second.apply(part.edges().get(1)));
  }

  private static Plan framed(UnaryOperator<Frame> change) {
    return Houses.plan(BOX.withFrame(change.apply(BOX.frame())));
  }

  private static Frame setBack(Frame frame, double by) {
    return frame.withHipSetback(Optional.of(by));
  }

  private static Part holed(double x, double y) {
    Ring hole = Ring.of(x, y, x, y + 60, x + 60, y + 60, x + 60, y);
    List<Edge> edges =
        Stream.concat(
                BOX.edges().stream(),
                Stream.generate(() -> Edge.of(EdgeKind.EAVE)).limit(hole.size()))
            .toList();
    return BOX.withShape(BOX.outline(), List.of(hole), edges);
  }

  private static List<Problem> problems(Plan plan, String key) {
    return Pipeline.solve(plan).problems().stream()
        .filter(p -> p.wrong() instanceof Phrase w && w.key().equals(key))
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("faults")
  void aCureThatIsSaidTakesItsProblemAway(String key, Plan plan) {
    List<Problem> found = problems(plan, key);
    assertThat(found).as("the fault is there").isNotEmpty();
    String where = found.get(0).where();
    List<Problem> there =
        Pipeline.solve(plan).problems().stream().filter(p -> p.where().equals(where)).toList();
    List<Cure> cures = Cures.at(plan, where, there);
    assertThat(cures).isNotEmpty();
    assertThat(cures)
        .anySatisfy(
            cure -> {
              Plan cured = ((Outcome.Commit) cure.command().on(plan)).plan();
              assertThat(problems(cured, key)).as(cure.label()).isEmpty();
            });
  }
}
