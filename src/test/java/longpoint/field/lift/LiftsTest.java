package longpoint.field.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Segment;
import longpoint.plan.Extras;
import longpoint.plan.Handling;
import longpoint.plan.Join;
import longpoint.plan.Lift;
import longpoint.plan.Part;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import org.junit.jupiter.api.Test;

/** Sections to be hoisted: weights by hand, centres of gravity by their laws and by integration. */
class LiftsTest {
  private static final List<Lift.Also> ALL =
      List.of(Lift.Also.DECK, Lift.Also.LADDERS, Lift.Also.BLOCKS);

  private static Plan house() {
    return Houses.plan(Houses.box("egeg", 8, 480, 288));
  }

  private static Plan with(Plan plan, String part, Lift... lifts) {
    Part p = plan.part(part).orElseThrow();
    Placements places = p.frame().placements().withLifts(List.of(lifts));
    return plan.withPart(p.withFrame(p.frame().withPlacements(places)));
  }

  private static Lifts lifts(Plan plan) {
    RoofSurface surface = Roof.solve(plan);
    return Lifts.of(plan, surface, Framing.solve(plan, surface));
  }

  private static LiftSection only(Plan plan) {
    Lifts lifts = lifts(plan);
    assertThat(lifts.sections()).hasSize(1);
    return lifts.sections().get(0);
  }

  private static Lift stretch(double from, double to, List<Lift.Also> also) {
    return Lift.stretch("five", new Point(from, 144), new Point(to, 144), also);
  }

  /** 2x4 at 35 lb/ft³ weighs 1.276 lb/ft (lumber weight table, exact), so does the truss drawn. */
  @Test
  void aTrussWeighsItsLumber() {
    Plan plan = with(house(), "main", Lift.of("one", List.of(new Point(240, 144))));
    LiftSection section = only(plan);
    RoofSurface surface = Roof.solve(plan);
    TrussMark mark =
        Framing.solve(plan, surface).marks().stream()
            .filter(m -> m.mark().equals("T1"))
            .findFirst()
            .orElseThrow();
    double feet = 0;
    for (List<Segment> sticks : List.of(mark.shape().chords(), mark.shape().webs())) {
      feet += sticks.stream().mapToDouble(Segment::length).sum() / 12;
    }
    assertThat(section.weight()).isCloseTo(1.276 * feet, within(0.0005 * feet));
    assertThat(section.balance().over()).isCloseTo(144, within(1e-9));
    assertThat(section.points()).hasSize(2);
  }

  /** The supplier's weight stands before the estimate; the place it balances stays. */
  @Test
  void theSuppliersWeightRules() {
    Plan plan = with(house(), "main", Lift.of("one", List.of(new Point(240, 144))));
    Plan weighed =
        plan.withHandling(
            Handling.NONE.withWeights(
                new Handling.Weights(
                    Optional.empty(), Optional.empty(), Map.of("T1", 171.5), Extras.NONE)));
    assertThat(only(weighed).weight()).isEqualTo(171.5);
    assertThat(only(weighed).centre()).isEqualTo(only(plan).centre());
  }

  /** True area over five trusses times the panel's weight: by hand. */
  @Test
  void sheathingWeighsItsTrueArea() {
    Plan plan = with(house(), "main", stretch(192, 288, List.of(Lift.Also.DECK)));
    double deck =
        only(plan).pieces().stream()
            .filter(p -> p.kind() == LiftPiece.Kind.DECK)
            .mapToDouble(LiftPiece::weight)
            .sum();
    // 97 1/2 in of five trusses, face to face; 144 + 17 1/2 in up each slope of 8 in 12; 1/2 in
    // boards at 1.7 lb/ft².
    double feet = 97.5 * 2 * 161.5 * Math.sqrt(144 + 64) / 12 / 144;
    assertThat(deck).isCloseTo(1.7 * feet, within(1e-6));
  }

  @Test
  void panelsWeighWhatTheTableSays() {
    assertThat(Densities.psf(7 / 16.0)).isEqualTo(1.4);
    assertThat(Densities.psf(15 / 32.0)).isEqualTo(1.5);
    assertThat(Densities.psf(1 / 2.0)).isEqualTo(1.7);
    assertThat(Densities.psf(19 / 32.0)).isEqualTo(2.0);
    assertThat(Densities.psf(0.55)).isBetween(1.7, 2.0);
  }

  /** Centres add: two sections' pieces together balance where both do, weighed together. */
  @Test
  void centresOfGravityAdd() {
    LiftSection a = only(with(house(), "main", stretch(0, 96, ALL)));
    LiftSection b = only(with(house(), "main", stretch(120, 240, List.of(Lift.Also.DECK))));
    List<LiftPiece> both = new java.util.ArrayList<>(a.pieces());
    both.addAll(b.pieces());
    double weight = a.weight() + b.weight();
    Point3 centre = Lifts.centre(both, weight);
    assertThat(centre.x() * weight)
        .isCloseTo(a.weight() * a.centre().x() + b.weight() * b.centre().x(), within(1e-6));
    assertThat(centre.y() * weight)
        .isCloseTo(a.weight() * a.centre().y() + b.weight() * b.centre().y(), within(1e-6));
    assertThat(centre.z() * weight)
        .isCloseTo(a.weight() * a.centre().z() + b.weight() * b.centre().z(), within(1e-6));
  }

  /** Figures do not change when house and lift are turned a quarter and carried far away. */
  @Test
  void figuresStayWhenTheHouseIsTurned() {
    LiftSection here = only(with(house(), "main", stretch(0, 96, ALL)));
    Plan turned = Houses.moved(house(), p -> turn(p));
    Lift there = Lift.stretch("five", turn(new Point(0, 144)), turn(new Point(96, 144)), ALL);
    LiftSection moved = only(with(turned, "main", there));
    assertThat(moved.weight()).isCloseTo(here.weight(), within(1e-6));
    assertThat(moved.balance().over()).isCloseTo(here.balance().over(), within(1e-6));
    assertThat(moved.balance().up()).isCloseTo(here.balance().up(), within(1e-6));
    double across = here.balance().across();
    double other = 97.5 - across;
    assertThat(moved.balance().across())
        .satisfiesAnyOf(
            v -> assertThat(v).isCloseTo(across, within(1e-6)),
            v -> assertThat(v).isCloseTo(other - 0.75, within(1e-6)));
    assertThat(moved.mostTension()).isCloseTo(here.mostTension(), within(1e-6));
  }

  private static Point turn(Point p) {
    return new Point(-p.y() + 5000, p.x() - 70_000);
  }

  /** The deck's balance against a sum over small squares of the roof it covers. */
  @Test
  void theDecksCentreEqualsNumericIntegration() {
    LiftSection section = only(with(house(), "main", stretch(192, 288, List.of(Lift.Also.DECK))));
    double x = 0;
    double z = 0;
    double all = 0;
    double step = 0.25;
    for (double y = -17.5 + step / 2; y < 288 + 17.5; y += step) {
      double up = Math.min(y, 288 - y);
      double height = 97.125 + 4.5 + up * 8 / 12 + 0.25 * Math.sqrt(208) / 12;
      z += height;
      x += y;
      all++;
    }
    double weight = 0;
    double moment = 0;
    double over = 0;
    for (LiftPiece p : section.pieces()) {
      if (p.kind() == LiftPiece.Kind.DECK) {
        weight += p.weight();
        moment += p.weight() * p.centre().z();
        over += p.weight() * p.centre().y();
      }
    }
    assertThat(moment / weight).isCloseTo(z / all, within(0.01));
    assertThat(over / weight).isCloseTo(x / all, within(0.01));
  }

  /** The hook is so high that no line is flatter than 60°, and plumb over the centre. */
  @Test
  void theHookIsChosenSteep() {
    LiftSection section = only(with(house(), "main", stretch(0, 96, ALL)));
    assertThat(section.flattest()).isGreaterThanOrEqualTo(60 - 1e-9);
    assertThat(section.hook().plan().distance(section.centre().plan())).isLessThan(1e-9);
    assertThat(section.points()).hasSize(4);
    assertThat(section.lines()).isEqualTo(LiftSection.Lines.ANY_TWO_OR_THREE);
  }

  @Test
  void aLowHookIsWarnedOf() {
    Lift low =
        new Lift(
            "low",
            List.of(new Point(240, 144)),
            Optional.empty(),
            List.of(),
            new Lift.Rigging(Optional.empty(), List.of(), Optional.of(36.0)),
            Extras.NONE);
    Lifts lifts = lifts(with(house(), "main", low));
    assertThat(lifts.problems())
        .extracting(p -> p.message())
        .anyMatch(m -> m.contains("under 45°"));
    assertThat(lifts.sections().get(0).flattest()).isLessThan(45);
  }

  @Test
  void placesThatCannotHoldItAreTold() {
    Lift aside =
        new Lift(
            "aside",
            List.of(new Point(240, 144)),
            Optional.empty(),
            List.of(),
            new Lift.Rigging(
                Optional.empty(),
                List.of(new Point(240, 20), new Point(240, 60)),
                Optional.empty()),
            Extras.NONE);
    LiftSection section = only(with(house(), "main", aside));
    assertThat(section.lines()).isEqualTo(LiftSection.Lines.CANNOT);
    assertThat(lifts(with(house(), "main", aside)).problems()).isNotEmpty();
  }

  @Test
  void aLadderIsWeighedWithItsGableEnd() {
    LiftSection bare = only(with(house(), "main", stretch(0, 96, List.of())));
    LiftSection laddered = only(with(house(), "main", stretch(0, 96, List.of(Lift.Also.LADDERS))));
    assertThat(laddered.weight()).isGreaterThan(bare.weight());
    // It hangs out past the gable end, so the centre moves toward it.
    assertThat(laddered.centre().x()).isLessThan(bare.centre().x());
    assertThat(laddered.pieces())
        .filteredOn(p -> p.kind() == LiftPiece.Kind.FLY_RAFTER)
        .hasSize(2)
        .allSatisfy(p -> assertThat(p.centre().x()).isCloseTo(-12 + 0.75, within(1e-9)));
  }

  @Test
  void aValleySetIsHoistedToo() {
    Plan plan = Houses.gardenWing(Join.Method.OVERLAY);
    RoofSurface surface = Roof.solve(plan);
    FramingSet framing = Framing.solve(plan, surface);
    List<Point> valley =
        framing.trusses().stream()
            .filter(t -> t.kind() == longpoint.framing.truss.TrussKind.VALLEY)
            .map(t -> t.from().toward(t.to(), 0.5))
            .toList();
    LiftSection section = only(with(plan, "wing", Lift.of("valleys", valley)));
    assertThat(section.trusses()).hasSameSizeAs(valley);
  }

  @Test
  void aLiftOfNothingIsTold() {
    Plan plan = with(house(), "main", Lift.of("empty", List.of()));
    assertThat(lifts(plan).sections()).isEmpty();
    assertThat(lifts(plan).problems()).hasSize(1);
  }
}
