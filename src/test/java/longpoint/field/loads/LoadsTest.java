package longpoint.field.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.framing.Houses;
import longpoint.geometry.Point;
import longpoint.plan.Defaults;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Handling;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.RandomRun;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Loads to pass on, against hand arithmetic, a printed example, and the laws of statics. */
class LoadsTest {
  private static Plan with(Plan plan, double dead, double snow, double ceiling) {
    return plan.withHandling(
        Handling.NONE.withLoads(
            Handling.Loads.NONE
                .withDead(Optional.of(dead))
                .withSnow(Optional.of(snow))
                .withCeiling(Optional.of(ceiling))));
  }

  /**
   * Two supports share a uniform load half and half: 100 lb/ft² on a span of 14 ft gives the wall 7
   * ft of tributary width and 700 lb/ft (a trade article on tributary width, seen in a scraped
   * copy). Here a gable roof 14 ft wide without overhang, mid-wall, away from the ends.
   */
  @Test
  void theTradesExampleOfTributaryWidth() {
    Plan plan = with(bare(Houses.plan(Houses.box("egeg", 6, 480, 168))), 0, 100, 0);
    WallLoad longest = longest(LoadLaws.loads(plan), "main/0");
    assertThat(longest.width() / 12).isCloseTo(7, within(1e-9));
    assertThat(longest.line().snow().orElseThrow()).isCloseTo(700, within(1e-6));
  }

  /**
   * By hand: 28 ft wide, 16 in overhangs and 1 1/2 in fascia, so 14 ft and 17 1/2 in to each wall:
   * 15.4583 ft. Snow 40: 618.33 lb/ft; dead 15 on level ground: 231.875; ceiling 10 between the
   * walls: 140.
   */
  @Test
  void aGableRoofByHand() {
    Plan plan = with(Houses.plan(Houses.box("egeg", 8, 480, 336)), 15, 40, 10);
    WallLoad wall = longest(LoadLaws.loads(plan), "main/0");
    assertThat(wall.line().snow().orElseThrow()).isCloseTo(40 * 185.5 / 12, within(1e-6));
    assertThat(wall.line().dead().orElseThrow()).isCloseTo(15 * 185.5 / 12, within(1e-6));
    assertThat(wall.line().ceiling().orElseThrow()).isCloseTo(140, within(1e-6));
    assertThat(wall.marks()).containsExactly("T1");
  }

  /** Dead load measured on the slope is the level one times √(1 + m²); 8 in 12: 1.2019. */
  @Test
  void deadLoadOnTheSlope() {
    Plan plan = Houses.plan(Houses.box("egeg", 8, 480, 336));
    Handling.Loads level = Handling.Loads.NONE.withDead(Optional.of(15.0));
    double on = force(plan, level);
    double sloped = force(plan, level.withDeadOn(Handling.Loads.DeadOn.SLOPE));
    assertThat(sloped / on).isCloseTo(Math.sqrt(144 + 64) / 12, within(1e-12));
  }

  private static double force(Plan plan, Handling.Loads loads) {
    return LoadLaws.loads(plan.withHandling(Handling.NONE.withLoads(loads)))
        .force()
        .dead()
        .orElseThrow();
  }

  /** A rake of 12 in is a lever over the gable end and the first truss inside, 23 1/4 in apart. */
  @Test
  void theRakeLightensTheFirstTrussInside() {
    Plan plan = bare(Houses.plan(Houses.box("egeg", 8, 480, 336)));
    Loads loads = LoadLaws.loads(plan);
    double width = 336.0 / 2;
    BearingLoad inside =
        loads.bearings().stream()
            .filter(b -> b.on() == BearingLoad.On.WALL && Math.abs(b.at().x() - 24) < 1e-9)
            .findFirst()
            .orElseThrow();
    // From the gable truss's centre at 3/4: the rake reaches 12 3/4 in beyond, its middle 6 3/8.
    double bays = (24 - 0.75) / 2 + 12;
    double lever = 12.75 * 6.375 / (24 - 0.75);
    assertThat(inside.reaction().level()).isCloseTo((bays - lever) * width, within(1e-6));
  }

  /**
   * Two equal trusses' ends hung in the middle of a girder bring each of its bearings half: a wing
   * framed through, its girder carrying what the main trusses bring.
   */
  @Test
  void girdersPassOnWhatHangsOnThem() {
    Plan plan = Houses.gardenWing(Join.Method.THROUGH);
    Loads loads = LoadLaws.loads(plan);
    assertThat(loads.girders()).isNotEmpty();
    for (GirderLoad girder : loads.girders()) {
      double hung = girder.hangers().stream().mapToDouble(h -> h.reaction().level()).sum();
      double ends =
          loads.points().stream()
              .filter(p -> p.member().equals(girder.member()))
              .mapToDouble(p -> p.reaction().level())
              .sum();
      assertThat(ends).isCloseTo(girder.reaction().level(), within(1e-6));
      assertThat(hung).isGreaterThan(0).isLessThanOrEqualTo(ends + 1e-6);
    }
  }

  /** What stands on the deck of another roof presses on the trusses beneath it. */
  @Test
  void anOverlayIsCarriedByTheRoofBeneath() {
    Loads alone = LoadLaws.loads(Houses.plan(Houses.box("egeg", 8, 480, 336)));
    Loads overlaid = LoadLaws.loads(Houses.gardenWing(Join.Method.OVERLAY));
    assertThat(overlaid.others()).isEmpty();
    // The covered roof's ground and the wing's over it are the same ground: back wall unchanged.
    assertThat(onWall(overlaid, "main/2"))
        .isCloseTo(onWall(alone, "main/2"), within(0.02 * onWall(alone, "main/2")));
  }

  private static double onWall(Loads loads, String wall) {
    return loads.bearings().stream()
        .filter(b -> b.subject().equals(wall))
        .mapToDouble(b -> b.reaction().level())
        .sum();
  }

  /** Ceilings hang between walls: all the ground inside every part's walls, and no more. */
  @Test
  void ceilingsFillTheWalls() {
    for (Join.Method method : Join.Method.values()) {
      Loads loads = LoadLaws.loads(Houses.gardenWing(method));
      assertThat(loads.roof().ceiling()).isCloseTo(480 * 336 + 144 * 144, within(1e-3));
    }
    Loads hip = LoadLaws.loads(Houses.plan(Houses.box("eeee", 6, 528, 336)));
    assertThat(hip.roof().ceiling()).isCloseTo(528 * 336, within(1e-3));
  }

  /** Rafters press half on the wall and half on what stands under the ridge. */
  @Test
  void raftersBringHalfToTheRidge() {
    Part box =
        Houses.framed(Houses.box("egeg", 8, 480, 336), longpoint.plan.Frame.Method.RAFTER, 24);
    Loads loads = LoadLaws.loads(bare(Houses.plan(box)));
    double ridge =
        loads.others().stream()
            .filter(o -> o.on() == BearingLoad.On.RIDGE)
            .mapToDouble(o -> o.reaction().level())
            .sum();
    assertThat(ridge / loads.roof().level()).isCloseTo(0.5, within(0.01));
  }

  @TestFactory
  Stream<DynamicTest> everySampleIsTiledAndBalances() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sample-plans"))) {
      List<Path> plans = files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
      return plans.stream()
          .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> sample(f)));
    }
  }

  private static void sample(Path file) throws IOException {
    Plan plan = PlanFile.read(file).plan();
    assertThat(LoadLaws.broken(plan)).isEmpty();
    LoadLaws.Sums sums = LoadLaws.sums(plan);
    // Jacks shorter than their tails, and valley chords past the last truss, are taken by the
    // sheathing beside them, which moves the whole by less than a thousandth of its size.
    assertThat(sums.off()).isLessThan(1e-3 * Math.sqrt(sums.roof()));
  }

  /** Moments about both axes balance to rounding where every roof lies on trusses side by side. */
  @Test
  void momentsBalanceAboutBothAxes() {
    List<Plan> plans =
        List.of(
            Houses.plan(Houses.box("egeg", 8, 480, 336)),
            Houses.plan(Houses.box("egag", 5, 311, 203)),
            Houses.plan(Houses.box("eeee", 6, 528, 336)),
            Houses.gardenWing(Join.Method.THROUGH));
    for (Plan plan : plans) {
      LoadLaws.Sums sums = LoadLaws.sums(plan);
      assertThat(LoadLaws.broken(plan)).isEmpty();
      assertThat(sums.off()).isLessThan(1e-6);
    }
  }

  @Test
  void turnedAndMovedAndFarAwayTheyAreTheSame() {
    Plan plan = Houses.gardenWing(Join.Method.THROUGH);
    Loads here = LoadLaws.loads(plan);
    Loads there =
        LoadLaws.loads(
            Houses.moved(plan, p -> new Point(-p.y(), p.x()).plus(new Point(1e5, -3e5))));
    assertThat(there.bearings()).hasSameSizeAs(here.bearings());
    for (int i = 0; i < here.bearings().size(); i++) {
      assertThat(there.bearings().get(i).reaction().level())
          .isCloseTo(here.bearings().get(i).reaction().level(), within(1e-3));
    }
  }

  /** Areas tile the roof and reactions add up to it on whatever can be drawn. */
  @Test
  void anyHouseIsTiled() {
    for (long seed = 5000; seed < 5150; seed++) {
      assertThat(LoadLaws.broken(RandomRun.plan(seed))).as("seed %s", seed).isEmpty();
    }
  }

  @Test
  void aMetricPlanTakesKilonewtons() {
    Plan inches = with(Houses.plan(Houses.box("egeg", 8, 480, 336)), 0, 20.8854342, 0);
    double pounds = LoadLaws.loads(inches).force().snow().orElseThrow();
    // 1 kN/m² is 20.885 lb/ft²; the roof's area in m² times 1 kN/m².
    double kilonewtons = LoadLaws.loads(inches).roof().level() * 645.16 * 1e-6;
    assertThat(pounds * 4.4482216e-3).isCloseTo(kilonewtons, within(1e-3));
  }

  private static Plan bare(Plan plan) {
    Part part = plan.parts().get(0);
    for (int i = 0; i < part.sideCount(); i++) {
      Edge edge = part.edges().get(i);
      if (edge.kind() == EdgeKind.EAVE) {
        part = part.withEdge(i, edge.withOverhang(0));
      }
    }
    Defaults d = plan.defaults();
    return plan.withPart(part)
        .withDefaults(
            new Defaults(
                d.slope(),
                d.overhang(),
                d.heel(),
                0,
                d.ridgeBlockRelief(),
                d.lookoutFirst(),
                d.lookoutSpacing(),
                d.extras()));
  }

  private static WallLoad longest(Loads loads, String wall) {
    return loads.walls().stream()
        .filter(w -> w.wall().equals(wall))
        .max(java.util.Comparator.comparingDouble(w -> w.to() - w.from()))
        .orElseThrow();
  }
}
