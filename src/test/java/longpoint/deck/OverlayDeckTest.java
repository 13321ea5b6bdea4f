package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.framing.valley.ValleyLine;
import longpoint.framing.valley.ValleySet;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;

/** A wing at 10 in 12 set on the deck of a house at 8 in 12. */
class OverlayDeckTest {
  private static final double THICKNESS = 0.46875;
  private static final Plan PLAN = plan();
  private static final RoofSurface SURFACE = Roof.solve(PLAN);
  private static final FramingSet FRAMING = Framing.solve(PLAN, SURFACE);

  private static Plan plan() {
    Part main = part("main", Ring.of(0, 0, 480, 0, 480, 336, 0, 336), 8, "EGEG");
    Part wing = part("wing", Ring.of(168, -144, 312, -144, 312, 0, 168, 0), 10, "GEOE");
    return Plan.empty(LengthUnit.INCH)
        .withPart(main)
        .withPart(wing)
        .withJoins(List.of(Join.overlay("wing", "main").withTails(Join.MouthTails.ON)));
  }

  private static Part part(String id, Ring walls, double inTwelve, String kinds) {
    List<Edge> edges =
        kinds
            .chars()
            .mapToObj(
                c ->
                    switch (c) {
                      case 'E' -> Edge.eave(Slope.inTwelve(inTwelve));
                      case 'G' -> Edge.of(EdgeKind.GABLE);
                      default -> Edge.of(EdgeKind.OPEN);
                    })
            .toList();
    Deck deck = new Deck(THICKNESS, 48, 96, Deck.Start.LEFT, Extras.NONE);
    return new Part(
        id,
        id,
        false,
        walls,
        List.of(),
        97.125,
        edges,
        Frame.of(LengthUnit.INCH),
        deck,
        Extras.NONE);
  }

  private static DeckPlan lay(Optional<Double> walkway) {
    Part main = PLAN.part("main").orElseThrow();
    Plan plan = PLAN.withPart(main.withDeck(main.deck().withWalkway(walkway)));
    return Sheathing.lay(plan, SURFACE, FRAMING);
  }

  @Test
  void keepsTheLaws() {
    DeckPlan deck = lay(Optional.empty());
    DeckLaws.check(deck);
    assertThat(deck.problems()).isEmpty();
    deck.planes().forEach(DeckLaws::keepsTheRulesForJoints);
  }

  /** The ends of the wing's sheets, at their face, lie on top of the main deck, in space. */
  @Test
  void endsTheWingOnTheMainDeck() {
    Plane main = SURFACE.plane("main/0").orElseThrow().plane();
    List<PlaneDeck> wings = wings();
    assertThat(wings).hasSize(2);
    for (PlaneDeck wing : wings) {
      List<PieceEdge> ends = sheetLines(wing);
      assertThat(ends).isNotEmpty();
      for (PieceEdge end : ends) {
        for (Point uv : List.of(end.line().from(), end.line().to())) {
          Point3 face = wing.unfold().space(uv, THICKNESS);
          double deck = main.heightAt(face.plan()) + THICKNESS * main.areaFactor();
          assertThat(face.z()).isCloseTo(deck, within(1e-6));
        }
      }
    }
  }

  /** The underside ends on the set line, where chord ends land: one square gap from the face. */
  @Test
  void endsTheUndersideOnTheSetLine() {
    ValleySet set = FRAMING.valleySets().get(0);
    for (PlaneDeck wing : wings()) {
      PieceEdge end = sheetLines(wing).get(0);
      double nearest = Double.POSITIVE_INFINITY;
      for (ValleyLine line : set.setLines()) {
        Segment flat = wing.unfold().flat(new Segment(set.foot(line), set.top(line)));
        if (Math.abs(flat.direction().cross(end.line().direction())) < 1e-6) {
          nearest = Math.min(nearest, Math.abs(flat.offset(end.line().middle())));
        }
      }
      assertThat(nearest).isCloseTo(end.squareGap(THICKNESS), within(1e-6));
      // The angle between the planes from their slopes: cos = 1 / (√(1+m²) √(1+n²)).
      double cos = 1 / Math.sqrt((1 + 64 / 144.0) * (1 + 100 / 144.0));
      assertThat(end.bevel()).isCloseTo(90 - Math.toDegrees(Math.acos(cos)), within(1e-9));
    }
  }

  /** 48 × sin 33.690° ÷ (10/12) on the house, 48 × sin 39.806° ÷ (8/12) on the wing. */
  @Test
  void cutsBothSidesOfTheValleyByTheirOwnDifference() {
    DeckPlan deck = lay(Optional.empty());
    assertThat(deck.plane("main/0").orElseThrow().cutDifferences())
        .hasSize(2)
        .allSatisfy(d -> assertThat(d.per()).isCloseTo(31.951, within(0.0005)));
    assertThat(wings().get(0).cutDifferences())
        .singleElement()
        .satisfies(d -> assertThat(d.per()).isCloseTo(48 * 0.640184 / (8 / 12.0), within(0.001)));
  }

  @Test
  void sheathesTheHouseWholeUnlessToldOtherwise() {
    RoofPlane front = SURFACE.plane("main/0").orElseThrow();
    double whole = front.area() + front.coveredArea();
    assertThat(front.coveredArea()).isGreaterThan(0);
    assertThat(area(Optional.empty())).isCloseTo(whole, within(1e-6 * whole));
    assertThat(area(Optional.of(0.0))).isCloseTo(front.area(), within(1e-6 * whole));
    double walkway = area(Optional.of(24.0));
    assertThat(walkway).isBetween(front.area() + 1, whole - 1);
    assertThat(area(Optional.of(1000.0))).isCloseTo(whole, within(1e-6 * whole));
    DeckLaws.check(lay(Optional.of(24.0)));
  }

  private static double area(Optional<Double> walkway) {
    return lay(walkway).plane("main/0").orElseThrow().area();
  }

  @Test
  void buysNothingForAHouseThatStands() {
    Plan standing = PLAN.withPart(PLAN.part("main").orElseThrow().withExisting(true));
    DeckPlan deck = Sheathing.lay(standing, SURFACE, FRAMING);
    assertThat(deck.plane("main/0").orElseThrow().pieces()).isEmpty();
    double wings = wings().stream().mapToDouble(PlaneDeck::area).sum();
    assertThat(deck.areaUsed()).isCloseTo(wings, within(1e-6 * wings));
  }

  private static List<PlaneDeck> wings() {
    DeckPlan deck = lay(Optional.empty());
    return Stream.of("wing/1", "wing/3").map(id -> deck.plane(id).orElseThrow()).toList();
  }

  private static List<PieceEdge> sheetLines(PlaneDeck deck) {
    return deck.rims().stream().filter(e -> e.use() == PieceEdge.Use.SHEET_LINE).toList();
  }
}
