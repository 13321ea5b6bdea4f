package longpoint.framing.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.framing.edge.EdgeBoard.Joint;
import longpoint.plan.Part;
import longpoint.surface.LineKind;
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
    assertThat(pair.overhang()).isEqualTo(17.5 * 2 / 3 - 1.5, within(1e-9));
    assertThat(pair.heel()).isEqualTo(4.5 + 17.5 / 3, within(1e-9));
    Part shorter = steep.withEdge(1, steep.edges().get(1).withOverhang(pair.overhang()));
    assertThat(Houses.solve(Houses.plan(shorter)).levelFascias()).isEmpty();
    Part taller = steep.withEdge(1, steep.edges().get(1).withHeel(pair.heel()));
    assertThat(Houses.solve(Houses.plan(taller)).levelFascias()).isEmpty();
  }
}
