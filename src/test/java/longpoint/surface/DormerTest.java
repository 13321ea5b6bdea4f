package longpoint.surface;

import static longpoint.surface.Plans.GABLE;
import static longpoint.surface.Plans.OPEN;
import static longpoint.surface.Plans.eave;
import static longpoint.surface.Plans.part;
import static longpoint.surface.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longpoint.geometry.Ring;
import longpoint.plan.Part;
import org.junit.jupiter.api.Test;

/** Dormers: where their roofs end, and where their walls stand. */
class DormerTest {
  /**
   * A shed dormer of 2 in 12 with walls back to y = 100. There the top of its cheek, under the
   * heel, is 170 + 40 ÷ 6 = 176.67; the main slope has come to 101.5 + 66.67 = 168.17. The gap of
   * 8.5 closes at 8 − 2 in 12: 17 further up.
   */
  @Test
  void cheeksThatStopShortOfTheSlopeAreToldHowFar() {
    assertThat(Roof.solve(plan(Houses.gabled("main"), shedDormer(100))).problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.where()).isEqualTo("d/2");
              assertThat(p.message()).contains("1'-5\"");
            });
    assertThat(Roof.solve(plan(Houses.gabled("main"), shedDormer(117))).problems()).isEmpty();
  }

  /** The low roof meets the steep one in a level break at 101.5 + ⅔y = 174.5 + (y − 60) ÷ 6. */
  @Test
  void aShedDormerEndsInALevelBreak() {
    RoofSurface roof = Roof.solve(plan(Houses.gabled("main"), shedDormer(117)));
    RoofLine end = line(roof, "break:d/0+main/0");
    assertThat(end.from().y()).isCloseTo(126, within(1e-9));
    assertThat(end.from().z()).isCloseTo(185.5, within(1e-9));
    assertThat(end.run()).isCloseTo(160 + 2 * 4, within(1e-9));
  }

  private static Part shedDormer(double back) {
    return part(
        "d",
        170,
        Ring.of(160, 60, 320, 60, 320, back, 160, back),
        eave(2).withOverhang(8),
        GABLE.withOverhang(4),
        OPEN,
        GABLE.withOverhang(4));
  }

  /** The dormer's planes at 8 in 12 meet the main's 8 in 12 where 97 + ⅔y = 150 + ⅔d. */
  @Test
  void dormerRunsBackToTheMainSlope() {
    RoofSurface roof = Roof.solve(plan(Houses.gabled("main"), Houses.dormer(150)));
    RoofLine valley = line(roof, "valley:dormer/3+main/0");
    assertThat(valley.to().x()).isCloseTo(240, within(1e-9));
    assertThat(valley.to().y()).isCloseTo((53 + 40 * 2 / 3.0) * 1.5, within(1e-9));
    assertThat(roof.problems()).isEmpty();
  }

  /** Its walls stand on the main slope: the front, and the sides back to 97 + ⅔y = 150. */
  @Test
  void dormerWallsStandOnTheMainSlope() {
    RoofSurface roof = Roof.solve(plan(Houses.gabled("main"), Houses.dormer(150)));
    assertThat(roof.lines(LineKind.STEP))
        .allSatisfy(s -> assertThat(s.planes()).contains("main/0"))
        .extracting(RoofLine::run)
        .satisfiesExactlyInAnyOrder(
            // The front wall, in two where the dormer's planes change above it.
            r -> assertThat(r).isCloseTo(40, within(1e-9)),
            r -> assertThat(r).isCloseTo(40, within(1e-9)),
            r -> assertThat(r).isCloseTo(79.5 - 40, within(1e-9)),
            r -> assertThat(r).isCloseTo(79.5 - 40, within(1e-9)));
  }

  private static RoofLine line(RoofSurface roof, String id) {
    return roof.lines().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
  }
}
