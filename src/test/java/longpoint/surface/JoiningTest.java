package longpoint.surface;

import static longpoint.surface.Plans.GABLE;
import static longpoint.surface.Plans.OPEN;
import static longpoint.surface.Plans.eave;
import static longpoint.surface.Plans.part;
import static longpoint.surface.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.geometry.Ring;
import longpoint.plan.Extras;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import org.junit.jupiter.api.Test;

/** Parts that meet, by hand arithmetic. */
class JoiningTest {
  @Test
  void framedThroughLeavesNothingBeneath() {
    Join through = new Join("wing", "main", Join.Method.THROUGH, Join.MadeFor.FRAME, Extras.NONE);
    RoofSurface overlay = Roof.solve(Plans.gardenWing());
    RoofSurface framed = Roof.solve(Plans.gardenWing().withJoins(List.of(through)));
    assertThat(covered(overlay)).isGreaterThan(11_000);
    assertThat(covered(framed)).isZero();
    assertThat(framed.lines()).isEqualTo(overlay.lines());
  }

  /**
   * Plate 12 in lower: 8/12·y = 10/12·d − 12, so at the top (d = 84) y = 87 and at y = 0 d = 14.4.
   */
  @Test
  void lowerWingPassesBeneathTheMainOverhangToTheWall() {
    Plan plan = plan(Houses.gabled("main"), Houses.wing("wing", 85, 168, 336, 144, eave(10)));
    RoofSurface roof = Roof.solve(plan);
    RoofLine valley = line(roof, "valley:main/0+wing/3");
    assertThat(valley.to().x()).isCloseTo(252, within(1e-9));
    assertThat(valley.to().y()).isCloseTo(87, within(1e-9));
    // At the fascia, y = −17.5: d = (12 − 11.667) ÷ 10/12 = 0.4.
    assertThat(valley.from().x()).isCloseTo(168.4, within(1e-9));
    assertThat(roof.plane("wing/3").orElseThrow().coveredArea()).isPositive();
    // From its fascia, 17.5 outside its wall, to where the planes meet over the main wall: d =
    // 14.4.
    assertThat(roof.lines(LineKind.ABUTMENT))
        .hasSize(2)
        .allSatisfy(l -> assertThat(l.from().y()).isCloseTo(0, within(1e-9)))
        .allSatisfy(l -> assertThat(l.run()).isCloseTo(17.5 + 14.4, within(1e-9)));
  }

  /** A wing a storey below the eave stops at the wall; nobody wants their fascias level. */
  @Test
  void aWingAStoreyLowerStopsAtTheWall() {
    Part tall = Plans.hip("main", 210, 8, Ring.of(0, 0, 480, 0, 480, 336, 0, 336));
    RoofSurface roof = Roof.solve(plan(tall, Houses.wing("wing", 97, 168, 312, 144, eave(8))));
    assertThat(roof.problems()).isEmpty();
    assertThat(roof.lines(LineKind.VALLEY)).isEmpty();
    // From fascia to fascia: 144 of wall and 17.5 beyond each end, rising to the middle.
    assertThat(roof.lines(LineKind.ABUTMENT).stream().mapToDouble(RoofLine::run).sum())
        .isCloseTo(144 + 35, within(1e-6));
  }

  /** A wing in the middle of a gable end, lower than the rakes, stops at that wall too. */
  @Test
  void aWingOnAGableEndStopsUnderTheRakes() {
    Part wing =
        part(
            "w",
            97,
            Ring.of(480, 100, 620, 100, 620, 236, 480, 236),
            eave(8),
            GABLE,
            eave(8),
            OPEN);
    RoofSurface roof = Roof.solve(plan(Houses.gabled("main"), wing));
    assertThat(roof.problems()).isEmpty();
    assertThat(roof.lines(LineKind.ABUTMENT))
        .hasSize(2)
        .allSatisfy(l -> assertThat(l.from().x()).isCloseTo(480, within(1e-9)))
        .allSatisfy(l -> assertThat(l.run()).isCloseTo(68 + 17.5, within(1e-9)));
    // Its ridge runs to the wall and shows up to the edge of the main roof's rake, 16 out.
    RoofLine ridge = line(roof, "ridge:w/0+w/2");
    assertThat(ridge.from().x()).isCloseTo(480, within(1e-9));
    assertThat(roof.seen(ridge)).hasSize(1);
    assertThat(roof.seen(ridge).get(0).from().x()).isCloseTo(496, within(1e-9));
  }

  /**
   * A wing on a wing: 8 in 12 on 8 in 12, so its ridge runs its own half width, 60, past the wall.
   */
  @Test
  void aWingOnAWingRunsBackByItsHalfWidth() {
    Part second =
        part(
            "w2",
            97,
            Ring.of(340, -200, 460, -200, 460, -80, 340, -80),
            eave(8),
            GABLE,
            eave(8),
            OPEN);
    RoofSurface roof =
        Roof.solve(
            plan(Houses.gabled("main"), Houses.wing("w1", 97, 100, 340, 240, eave(8)), second));
    assertThat(roof.problems()).isEmpty();
    assertThat(line(roof, "ridge:w2/0+w2/2").from().x()).isCloseTo(340 - 60, within(1e-9));
    assertThat(line(roof, "ridge:w1/1+w1/3").to().y()).isCloseTo(120, within(1e-9));
  }

  /** The wing's fascia reaches 17.5 out and the valley's foot lies 14 out: 3.5 in pass beneath. */
  @Test
  void aLowerFasciaStopsUnderTheHigherOne() {
    assertThat(Roof.solve(Plans.gardenWing()).lines(LineKind.STEP))
        .hasSize(2)
        .allSatisfy(s -> assertThat(s.run()).isCloseTo(3.5, within(1e-9)));
  }

  @Test
  void abutmentLineIsThereThoughAnOverhangHidesIt() {
    RoofSurface roof = Roof.solve(Houses.leanTo());
    List<RoofLine> against = roof.lines(LineKind.ABUTMENT);
    assertThat(against).allSatisfy(l -> assertThat(l.from().y()).isCloseTo(0, within(1e-9)));
    // From rake to rake: 280 of wall and 17.5 beyond each end.
    assertThat(against.stream().mapToDouble(RoofLine::run).sum()).isCloseTo(315, within(1e-6));
    assertThat(roof.plane("porch/0").orElseThrow().covered()).isNotEmpty();
    assertThat(roof.lines(LineKind.STEP)).isEmpty();
  }

  @Test
  void openSideThatMeetsNothingSaysHowFarItIs() {
    Part wing =
        part(
            "wing",
            97,
            Ring.of(168, -200, 312, -200, 312, -50, 168, -50),
            GABLE,
            eave(10),
            OPEN,
            eave(10));
    RoofSurface roof = Roof.solve(plan(Houses.gabled("main"), wing));
    assertThat(roof.problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.level()).isEqualTo(Problem.Level.ERROR);
              assertThat(p.where()).isEqualTo("wing/2");
              // The main roof's edge lies 17.5 out from the wall at y = 0.
              assertThat(p.cure()).contains("2'-8 1/2\"");
            });
    assertThat(roof.plane("wing/1")).isPresent();
  }

  @Test
  void anOpenSideOnAPlanOfOnePartMeetsNothing() {
    Part alone =
        part("w", 97, Ring.of(0, 0, 144, 0, 144, 100, 0, 100), GABLE, eave(8), OPEN, eave(8));
    assertThat(Roof.solve(plan(alone)).problems())
        .singleElement()
        .satisfies(p -> assertThat(p.where()).isEqualTo("w/2"));
  }

  /**
   * Main ridge 168 × ⅔ = 112 over the heel; wing ridge 140 × 10/12 = 116.7 and 73 more of plate.
   */
  @Test
  void wingHigherThanTheMainRidgeIsRefusedWithAFigure() {
    Plan plan = plan(Houses.gabled("main"), Houses.wing("wing", 170, 100, 380, 144, eave(10)));
    RoofSurface roof = Roof.solve(plan);
    assertThat(roof.problems())
        .filteredOn(p -> p.level() == Problem.Level.ERROR)
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.where()).isEqualTo("wing/2");
              assertThat(p.message()).contains("6'-5 11/16\"");
            });
    assertThat(roof.plane("wing/1").orElseThrow().visible())
        .allSatisfy(r -> assertThat(r.shell().bounds().maxY()).isLessThanOrEqualTo(1e-9));
  }

  @Test
  void overhangsThatRunIntoEachOtherMeetInAValleyAndAreReported() {
    Ring notched = Ring.of(0, 0, 480, 0, 480, 240, 260, 240, 260, 160, 232, 160, 232, 240, 0, 240);
    RoofSurface roof = Roof.solve(plan(Plans.hip("n", 97, 8, notched)));
    assertThat(roof.problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.level()).isEqualTo(Problem.Level.WARNING);
              // 28 in between the walls, less a 1 1/2 in fascia on each side: 12 1/2 in each.
              assertThat(p.cure()).contains("1'-0 1/2\"");
            });
    assertThat(roof.lines(LineKind.VALLEY))
        .anySatisfy(v -> assertThat(v.rise()).isCloseTo(0, within(1e-9)));
  }

  /**
   * A hipped wing of the main's own width on its hipped end: both ridges are 112 over the heel, so
   * neither passes over the other, turned or not.
   */
  @Test
  void aRidgeAsHighAsTheOneItMeetsDoesNotPassOverIt() {
    Part main = Plans.hip("main", 97, 8, Ring.of(0, 0, 480, 0, 480, 336, 0, 336));
    Part wing =
        part("w", 97, Ring.of(480, 0, 800, 0, 800, 336, 480, 336), eave(8), GABLE, eave(8), OPEN);
    for (int turn = 0; turn < 360; turn += 7) {
      RoofSurface roof = Roof.solve(RandomPlans.turned(plan(main, wing), turn));
      assertThat(roof.problems())
          .describedAs("turned " + turn)
          .noneMatch(p -> p.level() == Problem.Level.ERROR);
    }
  }

  @Test
  void nothingButGablesIsRefused() {
    Part part = part("g", 97, Ring.of(0, 0, 9, 0, 9, 9, 0, 9), GABLE, GABLE, GABLE, GABLE);
    RoofSurface roof = Roof.solve(plan(part));
    assertThat(roof.planes()).isEmpty();
    assertThat(roof.problems())
        .singleElement()
        .satisfies(p -> assertThat(p.where()).isEqualTo("g"));
  }

  @Test
  void onePartThatCannotBeSolvedLeavesTheOthers() {
    Part crossed =
        part(
            "x",
            97,
            Ring.of(600, 0, 700, 0, 600, 100, 700, 120),
            eave(8),
            eave(8),
            eave(8),
            eave(8));
    RoofSurface roof = Roof.solve(plan(crossed, Houses.gabled("main")));
    assertThat(roof.planes()).extracting(RoofPlane::part).containsOnly("main");
    assertThat(roof.problems()).anySatisfy(p -> assertThat(p.where()).startsWith("x"));
  }

  @Test
  void partsThatDidNotChangeAreNotSolvedAgain() {
    RoofMemory memory = new RoofMemory();
    Plan before = Plans.gardenWing();
    Plan after = before.withPart(before.part("wing").orElseThrow().withPlateHeight(99));
    RoofSurface first = Roof.solve(before, memory);
    assertThat(memory.solved()).isEqualTo(2);
    assertThat(Roof.solve(after, memory)).isEqualTo(Roof.solve(after));
    assertThat(memory.solved()).isEqualTo(3);
    assertThat(Roof.solve(before, memory)).isEqualTo(first);
    assertThat(memory.solved()).isEqualTo(3);
  }

  /** A shed in the yard has nothing to do with the house: neither is joined again for the other. */
  @Test
  void onlyWhatHangsTogetherIsJoinedAgain() {
    RoofMemory memory = new RoofMemory();
    Part shed = Plans.hip("shed", 97, 6, Ring.of(900, 600, 1100, 600, 1100, 760, 900, 760));
    Plan before = Plans.gardenWing().withPart(shed);
    Plan moved = before.withPart(shed.withPlateHeight(90));
    Roof.solve(before, memory);
    assertThat(memory.joinings()).isEqualTo(2);
    assertThat(Roof.solve(moved, memory)).isEqualTo(Roof.solve(moved));
    assertThat(memory.joinings()).isEqualTo(3);
    Plan dragged = moved.withPart(moved.part("wing").orElseThrow().withPlateHeight(99));
    assertThat(Roof.solve(dragged, memory)).isEqualTo(Roof.solve(dragged));
    assertThat(memory.joinings()).isEqualTo(4);
    assertThat(memory.solved()).isEqualTo(5);
  }

  /** However far off: what stands nearest may be in another cluster. */
  @Test
  void anOpenSideIsToldOfTheNearestRoofOfAll() {
    Part shed =
        part(
            "shed",
            97,
            Ring.of(300, 0, 400, 0, 400, 90, 300, 90),
            eave(6),
            eave(6),
            eave(6),
            eave(6));
    Part wing = part("w", 97, Ring.of(0, 0, 144, 0, 144, 90, 0, 90), eave(8), OPEN, eave(8), GABLE);
    assertThat(Roof.solve(plan(shed, wing)).problems())
        .filteredOn(p -> p.level() == Problem.Level.ERROR)
        .singleElement()
        // 300 − 144 of yard, less the shed's eave of 16 and fascia of 1 1/2.
        .satisfies(p -> assertThat(p.cure()).contains("11'-6 1/2\""));
  }

  private static double covered(RoofSurface roof) {
    return roof.planes().stream().mapToDouble(RoofPlane::coveredArea).sum();
  }

  private static RoofLine line(RoofSurface roof, String id) {
    return roof.lines().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
  }
}
