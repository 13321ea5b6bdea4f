package longpoint.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.deck.PlaneDeck;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Buying;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.SpanRating;
import longpoint.planfile.PlanFile;
import longpoint.planfile.PlanFileException;
import longpoint.surface.RoofPlane;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;

/** What the user decides about what is bought reaches the figures. */
class BuyingChoicesTest {
  private static Plan bungalow() throws PlanFileException {
    return PlanFile.read(Path.of("sample-plans", "marrowgate-bungalow.json")).plan();
  }

  private static Design with(Plan plan, Buying buying) {
    return Pipeline.solve(plan.withBuying(buying));
  }

  @Test
  void figuresFollowTheChoices() throws PlanFileException {
    Plan plan = bungalow();
    Buying usual = plan.buying();
    Design before = with(plan, usual);
    double area = before.takeOff().covering().area();
    assertThat(with(plan, usual.withWaste(0.15)).takeOff().covering().withWaste())
        .isCloseTo(area * 1.15, within(1e-9 * area));
    assertThat(with(plan, usual.withBundles(4)).takeOff().covering().bundles())
        .isEqualTo((long) Math.ceil(area * 1.08 / 14400 * 4));
    double attic = before.takeOff().vents().attic();
    assertThat(before.takeOff().vents().needed()).isEqualTo(attic / 150);
    assertThat(with(plan, usual.withVent(Buying.Vent.ONE_IN_300)).takeOff().vents().needed())
        .isEqualTo(attic / 300);
    assertThat(with(plan, usual.withNails(new Buying.Nails(4, 6))).takeOff().fixings().nails())
        .isGreaterThan(before.takeOff().fixings().nails());
    assertThat(with(plan, usual.withRating(SpanRating.S24_0)).takeOff().fixings().clips())
        .isGreaterThan(0);
    Buying.Boards b = usual.boards();
    Buying.Boards one =
        new Buying.Boards(
            b.kerf(),
            List.of(144.0),
            b.blocking(),
            b.rafter(),
            b.hip(),
            b.ridge(),
            b.fascia(),
            b.rake(),
            b.rakeThickness());
    assertThat(with(plan, usual.withBoards(one)).lumber().stock())
        .isNotEmpty()
        .allSatisfy(s -> assertThat(s.boards()).allMatch(k -> k.length() == 144));
  }

  /** Whatever stands in a file, the design is worked out and the slip is named. */
  @Test
  void whatCannotBeMeantIsNamedAndPassedOver() throws PlanFileException {
    Plan plan = bungalow();
    Buying.Boards none = new Buying.Boards(-1, List.of(0.0, -5.0), -1, 0, -2, 0, -1, 0, -1);
    Buying nonsense =
        new Buying(
            -1,
            0,
            -5,
            new Buying.Nails(0, -1),
            SpanRating.S16_0,
            Buying.Vent.ONE_IN_150,
            none,
            plan.buying().extras());
    Design design = with(plan, nonsense);
    assertThat(design.problems().stream().filter(p -> p.level() == Problem.Level.WARNING))
        .hasSizeGreaterThanOrEqualTo(7);
    assertThat(design.lumber()).isEqualTo(Pipeline.solve(plan).lumber());
    assertThat(design.takeOff().covering()).isEqualTo(Pipeline.solve(plan).takeOff().covering());
  }

  @Test
  void aPlaneMayStartAtItsOwnEdge() throws PlanFileException {
    Plan plan = PlanFile.read(Path.of("sample-plans", "fernholt-garage.json")).plan();
    Part part = plan.parts().get(0);
    List<String> sides =
        Pipeline.solve(plan).surface().planes().stream()
            .filter(p -> p.part().equals(part.id()))
            .map(RoofPlane::id)
            .toList();
    int side = plan.parts().get(0).edges().indexOf(firstEave(part));
    String first = part.id() + "/" + side;
    List<Edge> edges = new ArrayList<>(part.edges());
    edges.set(side, edges.get(side).withStart(Optional.of(Deck.Start.CENTRE)));
    Plan own = plan.withPart(part.withShape(part.outline(), part.holes(), edges));
    Plan all = plan.withPart(part.withDeck(centred(part)));
    assertThat(joints(own, first)).isEqualTo(joints(all, first)).isNotEqualTo(joints(plan, first));
    sides.stream()
        .filter(s -> !s.equals(first))
        .forEach(s -> assertThat(joints(own, s)).isEqualTo(joints(plan, s)));
  }

  private static Edge firstEave(Part part) {
    return part.edges().stream().filter(e -> e.kind() == EdgeKind.EAVE).findFirst().orElseThrow();
  }

  private static Deck centred(Part part) {
    return part.deck().withStart(Deck.Start.CENTRE);
  }

  private static List<Double> joints(Plan plan, String side) {
    PlaneDeck deck = Pipeline.solve(plan).deck().plane(side).orElseThrow();
    return deck.courses().get(0).joints();
  }

  @Test
  void aPlanInAnotherUnitTakesThatUnitsUsualFigures() {
    assertThat(Plan.empty(LengthUnit.INCH).withUnit(LengthUnit.MILLIMETRE).buying())
        .isEqualTo(Buying.of(LengthUnit.MILLIMETRE));
  }
}
