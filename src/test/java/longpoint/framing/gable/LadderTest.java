package longpoint.framing.gable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.framing.truss.TrussKind;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;

class LadderTest {
  private static List<Ladder> ladders(Part part) {
    return Houses.solve(Houses.plan(part)).ladders();
  }

  /**
   * By hand: 28 ft span, 8 in 12, 16 in eave overhang, 12 in rake; first bay 21 3/4 clear. Rake
   * (168 + 16) × 14.4222 / 12; lookout 21.75 + 1.5 + 12 − 1.5; flat lookouts lower the gable truss
   * 1 1/2 in square to the slope.
   */
  @Test
  void ladderByHand() {
    Ladder ladder = ladders(Houses.box("egeg", 8, 480, 336)).get(0);
    assertThat(ladder.rakeLength()).isEqualTo(184 * 14.4222 / 12, within(0.001));
    assertThat(ladder.lookoutLength()).isEqualTo(33.75);
    assertThat(ladder.drop()).isEqualTo(1.5 * 14.4222 / 12, within(1e-5));
    assertThat(ladder.plumbCut()).isEqualTo(90 - 33.6901, within(1e-4));
    assertThat(ladder.lookouts().subList(0, 3)).containsExactly(20.0, 44.0, 68.0);
    assertThat(ladder.blocks().subList(0, 2)).containsExactly(20.0, 20.5);
    assertThat(ladder.blockBevel()).isEqualTo(45);
    assertThat(ladder.review()).isEmpty();
  }

  @Test
  void fourLaddersOneForEachRake() {
    assertThat(ladders(Houses.box("egeg", 8, 480, 336)))
        .extracting(l -> l.side() + " " + l.rake())
        .containsExactlyInAnyOrder("main/1 LEFT", "main/1 RIGHT", "main/3 LEFT", "main/3 RIGHT");
  }

  /** On edge the gable truss drops 3 1/2 in square to the slope, and lookouts are 1 1/2 wide. */
  @Test
  void lookoutsOnEdge() {
    Part part = Houses.box("egeg", 9, 480, 336);
    Part edge =
        part.withFrame(
            part.frame().withChoices(FrameChoices.NONE.withLookout(FrameChoices.Lookout.EDGE)));
    FramingSet set = Houses.solve(Houses.plan(edge));
    assertThat(set.ladders().get(0).drop()).isEqualTo(3.5 * 1.25, within(1e-5));
    assertThat(set.ladders().get(0).blocks().get(1)).isEqualTo(22.5);
    double dropped =
        set.marks().stream()
            .filter(m -> m.kind() == TrussKind.DROPPED_GABLE_END)
            .findFirst()
            .orElseThrow()
            .height();
    double common =
        set.marks().stream()
            .filter(m -> m.kind() == TrussKind.COMMON)
            .findFirst()
            .orElseThrow()
            .height();
    assertThat(common - dropped).isEqualTo(3.5 * 1.25, within(1e-9));
  }

  /**
   * Under the sheets' long edges, by hand at 8 in 12: sheets start a fascia's thickness, 1.5 ·
   * 1.2019 = 1.803 in up the slope, below the tail, so their edges are 46.197, 94.197 … up from it,
   * and lookouts 3 1/2 wide are centred there and half-way between; the one at 22.197 would have
   * its lower edge at 20.447, past the 20 in that the first keeps from the tail.
   */
  @Test
  void lookoutsUnderTheSheets() {
    Part part = Houses.box("egeg", 8, 480, 336);
    Part matched =
        part.withFrame(
            part.frame()
                .withChoices(
                    FrameChoices.NONE.withLookoutPlaces(FrameChoices.LookoutPlaces.SHEETS)));
    Ladder ladder = ladders(matched).get(0);
    List<Double> middles =
        ladder.lookouts().stream().map(low -> low + ladder.lookoutWidth() / 2).toList();
    assertThat(middles.get(0)).isEqualTo(24 - 1.803, within(0.001));
    assertThat(middles.get(1)).isEqualTo(48 - 1.803, within(0.001));
    assertThat(middles.get(3)).isEqualTo(96 - 1.803, within(0.001));
    double sum = ladder.blocks().stream().mapToDouble(Double::doubleValue).sum();
    assertThat(sum + ladder.lookouts().size() * ladder.lookoutWidth())
        .isEqualTo(ladder.rakeLength(), within(1e-9));
    for (double block : ladder.blocks().subList(1, ladder.blocks().size() - 1)) {
      assertThat(block).isEqualTo(20.5, within(1e-9));
    }
  }

  /** A wider spacing than half a sheet gives lookouts at the sheets' edges alone. */
  @Test
  void lookoutsAtTheSheetsEdgesAlone() {
    Rungs rungs = Rungs.underSheets(200, 20, 48, 3.5, 48, 0);
    assertThat(rungs.lookouts()).containsExactly(46.25, 94.25, 142.25, 190.25);
  }

  /** Back-span at least the overhang: rule of thumb among framers; 24 in and over is reviewed. */
  @Test
  void longOverhangsAreFlagged() {
    Part part = Houses.box("egeg", 8, 480, 336);
    Part far = part.withEdge(1, part.edges().get(1).withOverhang(26));
    assertThat(ladders(far))
        .filteredOn(l -> l.side().equals("main/1"))
        .allSatisfy(
            l -> {
              assertThat(l.review()).hasSize(2);
            });
    assertThat(ladders(far))
        .filteredOn(l -> l.side().equals("main/3"))
        .allMatch(l -> l.review().isEmpty());
  }

  /**
   * A porch of 4 in 12, 72 in deep, open at the back against a house of 8 in 12 with a 1/2 in deck:
   * its roof runs 22.197 in on over the house, and so does its rake.
   */
  @Test
  void rakeOfAPorchRunsOnOverTheHouse() {
    Part porch = Houses.part("porch", 97.125, "egog", 4, 120, -72, 300, -72, 300, 0, 120, 0);
    Part low = porch.withPlateHeight(97.125 - 16);
    FramingSet set =
        Houses.solve(
            Houses.plan(Houses.box("egeg", 8, 480, 336), low)
                .withJoins(List.of(Join.overlay("porch", "main"))));
    Ladder ladder =
        set.ladders().stream().filter(l -> l.part().equals("porch")).findFirst().orElseThrow();
    // Ahead at the wall: 24 in of rise less 16 lower, less the deck's 0.601 plumb, over 1/3.
    double on = (24 - 16 - 0.5 * 14.4222 / 12) * 3;
    assertThat(ladder.rakeLength()).isEqualTo((16 + 72 + on) * 12.6491 / 12, within(0.001));
  }

  private static List<Double> studs(double rise, double spacing) {
    Part part = Houses.box("egeg", rise, 480, 288);
    Part level =
        part.withEdge(0, part.edges().get(0).withHeel(0))
            .withEdge(2, part.edges().get(2).withHeel(0));
    return Houses.solve(Houses.plan(Houses.framed(level, Frame.Method.RAFTER, spacing)))
        .gableWalls()
        .get(0)
        .heights();
  }

  /**
   * US Navy NAVEDTRA 14044 vol. 2: at 6 in 12 studs 24 in apart differ by 12 in, 16 in apart by 8.
   */
  @Test
  void studsOfAGable() {
    List<Double> wide = studs(6, 24);
    assertThat(wide).hasSize(11);
    assertThat(wide.get(1) - wide.get(0)).isEqualTo(12, within(1e-9));
    assertThat(wide.get(5)).isEqualTo(72, within(1e-9));
    assertThat(wide.get(6) - wide.get(5)).isEqualTo(-12, within(1e-9));
    List<Double> narrow = studs(6, 16);
    assertThat(narrow.get(1) - narrow.get(0)).isEqualTo(8, within(1e-9));
  }

  /**
   * Same manual: the common difference of gable studs is the rise over one spacing. Unequal slopes
   * have one each.
   */
  @Test
  void commonDifferenceOfStuds() {
    Part part = Houses.box("egeg", 6, 480, 288);
    Part uneven =
        Houses.framed(
            part.withEdge(2, part.edges().get(2).withSlope(Slope.inTwelve(12))),
            Frame.Method.RAFTER,
            24);
    GableWall wall = Houses.solve(Houses.plan(uneven)).gableWalls().get(0);
    assertThat(wall.low().difference()).isEqualTo(12, within(1e-9));
    assertThat(wall.high().difference()).isEqualTo(24, within(1e-9));
    assertThat(wall.high().bevel()).isEqualTo(45, within(1e-9));
    List<Double> heights = wall.heights();
    int last = heights.size() - 1;
    assertThat(heights.get(1) - heights.get(0)).isEqualTo(12, within(1e-9));
    assertThat(heights.get(last - 1) - heights.get(last)).isEqualTo(24, within(1e-9));
  }

  /** R. Hunter, Basic Carpentry Techniques: 150 in 250: 1200 in is 720 up. */
  @Test
  void studByRunAndRise() {
    assertThat(studs(12 * 150 / 250.0, 24).get(4)).isEqualTo(120 * 720 / 1200.0, within(1e-9));
  }
}
