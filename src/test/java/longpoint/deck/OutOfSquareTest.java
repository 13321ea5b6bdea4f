package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import longpoint.framing.Framing;
import longpoint.geometry.Ring;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;

/** A house whose east wall runs out of square, at 8 in 12. */
class OutOfSquareTest {
  private static DeckPlan lay(double out) {
    List<Edge> edges =
        Stream.of(EdgeKind.EAVE, EdgeKind.GABLE, EdgeKind.EAVE, EdgeKind.GABLE)
            .map(k -> k == EdgeKind.EAVE ? Edge.eave(Slope.inTwelve(8)) : Edge.of(k))
            .toList();
    Part part =
        new Part(
            "a",
            "House",
            false,
            Ring.of(0, 0, 480, 0, 480 + out, 336, 0, 336),
            List.of(),
            96,
            edges,
            Frame.of(LengthUnit.INCH),
            DeckFixture.inches(longpoint.plan.Deck.Start.LEFT),
            Extras.NONE);
    Plan plan = Plan.empty(LengthUnit.INCH).withPart(part);
    RoofSurface surface = Roof.solve(plan);
    return Sheathing.lay(plan, surface, Framing.solve(plan, surface));
  }

  private static List<Problem> tapers(DeckPlan deck) {
    return deck.problems().stream()
        .filter(p -> p.message(Language.ENGLISH).contains("out of square"))
        .toList();
  }

  /** Two inches in 28 ft: 48 x (2/336) / 1.20185 = 0.2377 in, a good 1/4, in a sheet's width. */
  @Test
  void tellsTheTaperAndShowsItInTheLastPiece() {
    DeckPlan deck = lay(2);
    assertThat(tapers(deck)).hasSize(2);
    assertThat(tapers(deck).get(0).message(Language.ENGLISH)).contains("0'-0 1/4\"");
    PlaneDeck plane = deck.plane("a/0").orElseThrow();
    Piece last =
        plane.pieces().stream()
            .filter(p -> p.course() == 1)
            .reduce((a, b) -> a.bounds().maxX() > b.bounds().maxX() ? a : b)
            .orElseThrow();
    assertThat(last.longPoint() - last.shortPoint()).isCloseTo(0.2377, within(0.0001));
    DeckLaws.check(deck);
  }

  @Test
  void saysNothingOfSquareWallsAndOfWallsMeantToRunAskew() {
    assertThat(tapers(lay(0))).isEmpty();
    assertThat(tapers(lay(60))).isEmpty();
  }
}
