package longpoint.framing.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.framing.Shop;
import longpoint.framing.edge.EdgeBoard.Joint;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.LineKind;
import longpoint.surface.Roof;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofSurface;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;

class EdgeBoardsTest {
  /** 40 × 28 ft hip, 16 in overhang, 1 1/2 in fascia: 35 in longer than its wall, mitred. */
  @Test
  void fasciaOfAHipRoof() {
    FramingSet set = Houses.solve(Houses.plan(Houses.box("eeee", 8, 480, 336)));
    assertThat(set.fascia())
        .extracting(EdgeBoard::length)
        .allMatch(l -> Math.abs(l - 515) < 1e-6 || Math.abs(l - 371) < 1e-6)
        .hasSize(4);
    for (EdgeBoard b : set.fascia()) {
      assertThat(b.from().joint()).isEqualTo(Joint.OUTSIDE_MITRE);
      assertThat(b.to().degrees()).isEqualTo(45, within(1e-9));
      // Arris: plate + heel − slope × (overhang + fascia).
      assertThat(b.height()).isEqualTo(97.125 + 4.5 - 17.5 * 2 / 3, within(1e-9));
    }
  }

  /** A corner of 135 degrees takes a mitre of 22 1/2 (common practice). */
  @Test
  void octagonMitre() {
    double a = 120;
    double b = a * Math.sqrt(0.5);
    Part octagon =
        Houses.part(
            "bay",
            97.125,
            "eeeeeeee",
            8,
            0,
            0,
            a,
            0,
            a + b,
            b,
            a + b,
            a + b,
            a,
            a + 2 * b,
            0,
            a + 2 * b,
            -b,
            a + b,
            -b,
            b);
    List<EdgeBoard> boards = Houses.solve(Houses.plan(octagon)).fascia();
    assertThat(boards).hasSize(8);
    assertThat(boards)
        .allSatisfy(f -> assertThat(f.from().degrees()).isEqualTo(22.5, within(1e-6)));
  }

  @Test
  void rakeBoards() {
    FramingSet set = Houses.solve(Houses.plan(Houses.box("egeg", 8, 480, 336)));
    List<EdgeBoard> rakes = set.fascia().stream().filter(b -> b.kind() == LineKind.RAKE).toList();
    assertThat(rakes).hasSize(4);
    for (EdgeBoard rake : rakes) {
      assertThat(rake.length()).isEqualTo((168 + 17.5) * 14.4222 / 12, within(0.001));
      assertThat(rake.to().joint()).isEqualTo(Joint.PLUMB);
      assertThat(rake.to().degrees()).isEqualTo(90 - 33.6901, within(1e-4));
      assertThat(rake.from().joint()).isEqualTo(Joint.OUTSIDE_MITRE);
    }
  }

  @Test
  void insideCornerOfAnL() {
    Part part =
        Houses.part(
            "main", 97.125, "eeeeee", 8, 0, 0, 480, 0, 480, 288, 240, 288, 240, 520, 0, 520);
    long inside =
        Houses.solve(Houses.plan(part)).fascia().stream()
            .flatMap(f -> java.util.stream.Stream.of(f.from(), f.to()))
            .filter(e -> e.joint() == Joint.INSIDE_MITRE)
            .count();
    assertThat(inside).isEqualTo(2);
  }

  /**
   * By hand: 8 in 12 beside 12 in 12, both 16 + 1 1/2 in out, heels 4 1/2: fascias 17.5 × 1/3 =
   * 5.833 apart. Cure: 17.5 × 2/3 − 1 1/2 = 10.167 overhang, or a heel 5.833 higher. Applying
   * either cure leaves no difference.
   */
  @Test
  void levelFasciaAndItsCures() {
    Part part = Houses.box("eege", 8, 480, 336);
    Part steep = part.withEdge(1, part.edges().get(1).withSlope(Slope.inTwelve(12)));
    LevelFascia pair = Houses.solve(Houses.plan(steep)).levelFascias().get(0);
    assertThat(pair.first()).isEqualTo("main/0");
    assertThat(pair.second()).isEqualTo("main/1");
    assertThat(pair.difference()).isEqualTo(-17.5 / 3, within(1e-9));
    assertThat(pair.overhang().orElseThrow()).isEqualTo(17.5 * 2 / 3 - 1.5, within(1e-9));
    assertThat(pair.heel().orElseThrow()).isEqualTo(4.5 + 17.5 / 3, within(1e-9));
    Part shorter =
        steep.withEdge(1, steep.edges().get(1).withOverhang(pair.overhang().orElseThrow()));
    assertThat(Houses.solve(Houses.plan(shorter)).levelFascias()).isEmpty();
    Part taller = steep.withEdge(1, steep.edges().get(1).withHeel(pair.heel().orElseThrow()));
    assertThat(Houses.solve(Houses.plan(taller)).levelFascias()).isEmpty();
  }

  /**
   * A wing of 10 in 12 laid over 8 in 12, plates and heels level, walls from 168 to 312, by hand:
   * the main arris lies at 101.625 − 17.5 × 2/3 = 89.958, where the wing's plane is 11.667 × 12/10
   * = 14 out from its wall; the main fascia runs from the rake, 12 out, to there: 12 + 168 − 14.
   * Over the mouth there is none, for the tails are left off. The wing's, 17.5 × 1/6 = 2.917 lower,
   * runs from its own rake to the main arris: 144 + 12 − 17.5. Cures for the wing: 11.667 × 12/10 −
   * 1.5 = 12.5 out, or a heel 2.917 higher.
   */
  @Test
  void fasciaBesideAMouth() {
    Plan plan = Houses.gardenWing(Join.Method.OVERLAY);
    Part wing = plan.part("wing").orElseThrow();
    for (int i : new int[] {1, 3}) {
      wing = wing.withEdge(i, wing.edges().get(i).withSlope(Slope.inTwelve(10)));
    }
    FramingSet set = Houses.solve(plan.withPart(wing));
    List<Double> main =
        set.fascia().stream()
            .filter(f -> f.kind() == LineKind.EAVE && f.line().startsWith("eave:main/0"))
            .map(EdgeBoard::length)
            .toList();
    assertThat(main).hasSize(2).allMatch(l -> Math.abs(l - 166) < 1e-6);
    List<EdgeBoard> own =
        set.fascia().stream()
            .filter(f -> f.kind() == LineKind.EAVE && f.part().equals("wing"))
            .toList();
    assertThat(own).hasSize(2).allMatch(f -> Math.abs(f.length() - 138.5) < 1e-6);
    assertThat(own.get(0).height()).isEqualTo(101.625 - 17.5 * 10 / 12, within(1e-9));
    LevelFascia pair = set.levelFascias().get(0);
    assertThat(pair.difference()).isEqualTo(-17.5 / 6, within(1e-9));
    assertThat(pair.overhang().orElseThrow()).isEqualTo(12.5, within(1e-9));
    assertThat(pair.heel().orElseThrow()).isEqualTo(4.5 + 17.5 / 6, within(1e-9));
  }

  /** A wing 12 in lower: no overhang brings its fascia up to the main one, a heel does. */
  @Test
  void onlyTheCureThatCanBeBuilt() {
    Plan plan = Houses.gardenWing(Join.Method.OVERLAY);
    Part low = plan.part("wing").orElseThrow().withPlateHeight(97.125 - 12);
    LevelFascia pair = Houses.solve(plan.withPart(low)).levelFascias().get(0);
    assertThat(pair.difference()).isEqualTo(-12, within(1e-9));
    assertThat(pair.overhang()).isEmpty();
    assertThat(pair.heel().orElseThrow()).isEqualTo(16.5, within(1e-9));
  }

  /** A shed has a fascia along its high edge as well, as long as the low one. */
  @Test
  void highEdgeOfAShed() {
    List<EdgeBoard> boards = Houses.solve(Houses.plan(Houses.box("eggg", 4, 240, 144))).fascia();
    List<EdgeBoard> level = boards.stream().filter(b -> b.kind() == LineKind.EAVE).toList();
    assertThat(level).hasSize(2);
    assertThat(level.get(0).length()).isEqualTo(level.get(1).length());
    assertThat(Math.abs(level.get(0).height() - level.get(1).height()))
        .isEqualTo((144 + 17.5 + 12) / 3, within(1e-6));
    assertThat(boards)
        .allSatisfy(
            b -> {
              assertThat(b.from().joint()).isEqualTo(EdgeBoard.Joint.OUTSIDE_MITRE);
              assertThat(b.to().joint()).isEqualTo(EdgeBoard.Joint.OUTSIDE_MITRE);
            });
  }

  /** A line no tape can read is no board, and leaves its neighbours' joints as they are. */
  @Test
  void aSpeckOfALineIsNoBoard() {
    Plan plan = Houses.plan(Houses.box("eeee", 8, 480, 336));
    RoofSurface roof = Roof.solve(plan);
    RoofLine eave = roof.lines(LineKind.EAVE).get(0);
    RoofLine speck =
        new RoofLine("eave:speck", LineKind.EAVE, eave.from(), eave.from(), eave.planes());
    List<RoofLine> lines = new ArrayList<>(List.of(speck));
    lines.addAll(roof.lines());
    RoofSurface specked = new RoofSurface(roof.planes(), lines, List.of());
    Set<String> parts = Set.of(plan.parts().get(0).id());
    Shop shop = Shop.of(plan.unit());
    assertThat(EdgeBoards.of(parts, specked, shop)).isEqualTo(EdgeBoards.of(parts, roof, shop));
  }
}
