package longpoint.pipeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import longpoint.geometry.Point3;
import longpoint.plan.Part;
import longpoint.plan.Side;
import longpoint.planfile.PlanFile;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The sample plans against arithmetic done by hand from their dimensions, with nothing but slope =
 * rise over run, the right triangle, and the unit lengths stamped on a framing square (common
 * rafter per foot at 6, 7 and 9 in 12; hip at 6 in 12 is 18 per 12, seen in Radford's Cyclopedia,
 * vol. 3).
 */
class SampleFiguresTest {
  private static final Offset<Double> CLOSE = within(1e-6);

  private static Design solve(String sample) throws IOException {
    Design design = Pipeline.solve(PlanFile.read(Path.of("sample-plans", sample + ".json")).plan());
    assertThat(design.hasErrors()).as(() -> design.problems().toString()).isFalse();
    return design;
  }

  private static List<RoofLine> lines(Design design, LineKind kind) {
    return design.surface().lines().stream().filter(l -> l.kind() == kind).toList();
  }

  private static void lengths(Design design, LineKind kind, double... expected) {
    assertThat(lines(design, kind).stream().mapToDouble(RoofLine::length).sorted().toArray())
        .as(kind.key())
        .containsExactly(expected, CLOSE);
  }

  private static RoofPlane plane(Design design, String id) {
    return design.surface().plane(id).orElseThrow();
  }

  /**
   * 28 by 20 ft, 9 in 12, overhang 16 + fascia 1 1/2, rakes 12, heel 4 1/2 on a plate at 97 1/8.
   */
  @Test
  void gableCabin() throws IOException {
    Design design = solve("tolverby-cabin");
    double run = 120 + 16 + 1.5;
    lengths(design, LineKind.RIDGE, 336 + 2 * 12);
    lengths(design, LineKind.EAVE, 360, 360);
    double rake = run * 15 / 12; // 9 in 12: 15 per foot of run
    lengths(design, LineKind.RAKE, rake, rake, rake, rake);
    RoofLine ridge = lines(design, LineKind.RIDGE).get(0);
    assertThat(ridge.from().z()).isEqualTo(97.125 + 4.5 + 120 * 9 / 12.0, CLOSE);
    assertThat(lines(design, LineKind.EAVE).get(0).from().z()).isEqualTo(88.5, CLOSE);
    assertThat(design.surface().planes())
        .hasSize(2)
        .allSatisfy(p -> assertThat(p.area()).isEqualTo(360 * rake, CLOSE));
  }

  /** 44 by 28 ft, 6 in 12 all round, overhang 18 + 1 1/2, heel 6 1/4. */
  @Test
  void hipBungalow() throws IOException {
    Design design = solve("marrowgate-bungalow");
    double run = 168 + 19.5;
    lengths(design, LineKind.RIDGE, 528 - 336); // length less width
    double hip = run / 12 * 18;
    lengths(design, LineKind.HIP, hip, hip, hip, hip);
    lengths(design, LineKind.EAVE, 375, 375, 567, 567);
    RoofLine ridge = lines(design, LineKind.RIDGE).get(0);
    assertThat(ridge.from().z()).isEqualTo(97.125 + 6.25 + 84, CLOSE);
    double common = Math.hypot(12, 6) / 12;
    assertThat(design.surface().planes().stream().mapToDouble(RoofPlane::area).sum())
        .isEqualTo(567 * 375 * common, CLOSE);
    assertThat(plane(design, "main/1").area()).isEqualTo(375 * run / 2 * common, CLOSE);
  }

  /**
   * House 46 by 30 ft at 7 in 12, wing 14 ft wide at 9 in 12 on its back wall (y = 360), plates and
   * heels equal. The wing's ridge stands 84 × 9/12 = 63 above the heels and meets the house's plane
   * where 7/12 of the way in has risen as much: 108 in from the wall.
   */
  @Test
  void gardenWing() throws IOException {
    Design design = solve("sable-lane-garden-wing");
    lengths(design, LineKind.RIDGE, 156 + 12 + 108, 552 + 24);
    // Down the valley, 19 1/2 past the wall line falls 11.375 and lies 11.375 × 12/9 past the side.
    double side = 19.5 * (7.0 / 12) / (9.0 / 12);
    double valley = Math.sqrt(sq(84 + side) + sq(108 + 19.5) + sq(63 + 11.375));
    lengths(design, LineKind.VALLEY, valley, valley);
    double triangle = (84 + side) * (108 + 19.5) / 2;
    assertThat(plane(design, "main/2").coveredArea())
        .isEqualTo(2 * triangle * Math.hypot(12, 7) / 12, CLOSE);
    assertThat(plane(design, "main/2").planArea()).isEqualTo(576 * 199.5 - 2 * triangle, CLOSE);
    double beyond = (516 + 12 - 360 - 19.5) * (84 + 19.5);
    assertThat(plane(design, "wing/1").planArea()).isEqualTo(beyond + triangle, CLOSE);
    assertThat(plane(design, "wing/3").area()).isEqualTo((beyond + triangle) * 1.25, CLOSE);
    assertThat(plane(design, "main/0").covered()).isEmpty();
  }

  /**
   * The clinic: outer walls in turn 6, 6, 9, 6 and 9 in 12, the courtyard's 6 in 12. Its ridges run
   * where the planes from outside and from the courtyard are level with each other.
   */
  @Test
  void irregularHipWithCourtyard() throws IOException {
    Design design = solve("quennel-court");
    double heel = 109.125 + 4.5;
    ridgeBetween(design, "main/0", "main/8", heel + 96 * 0.5); // 192 in across, equal slopes
    ridgeBetween(design, "main/3", "main/6", heel + 84 * 0.5); // 168 in across, equal slopes
    ridgeBetween(design, "main/4", "main/5", heel + 252 * 0.3); // 9 against 6: 0.75×0.5/1.25 = 0.3
    // Square corner of a 9 and a 6: per unit of rise the hip runs √((12/9)² + (12/6)²) in plan.
    RoofLine hip = between(design, LineKind.HIP, "main/0", "main/4");
    assertThat(hip.run() / hip.rise()).isEqualTo(Math.hypot(12 / 9.0, 2), CLOSE);
    // Inward corner of two 6s: 17-line, √2 × 2 of run to a unit of rise.
    RoofLine valley = between(design, LineKind.VALLEY, "main/5", "main/6");
    assertThat(valley.run() / valley.rise()).isEqualTo(2 * Math.sqrt(2), CLOSE);
    // The bent corner of two 6s: half the angle between the walls.
    RoofLine bent = between(design, LineKind.HIP, "main/0", "main/1");
    double corner = Math.PI - Math.atan2(180, 120);
    assertThat(bent.run() / bent.rise()).isEqualTo(2 / Math.sin(corner / 2), CLOSE);
  }

  /**
   * Whatever the shape: both ends of every line lie on the planes it parts, by their own figures.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "tolverby-cabin",
        "marrowgate-bungalow",
        "sable-lane-garden-wing",
        "quennel-court",
        "fernholt-garage",
        "heronsmere-lodge"
      })
  void everyLineLiesOnItsPlanes(String sample) throws IOException {
    Design design = solve(sample);
    assertThat(design.surface().lines()).isNotEmpty();
    for (RoofLine line : design.surface().lines()) {
      if (line.kind() == LineKind.STEP || line.kind() == LineKind.ABUTMENT) {
        continue; // these stand on one plane and against a wall
      }
      for (String id : line.planes()) {
        assertThat(heightOver(design, id, line.from()))
            .as(line.id())
            .isEqualTo(line.from().z(), CLOSE);
        assertThat(heightOver(design, id, line.to())).as(line.id()).isEqualTo(line.to().z(), CLOSE);
      }
    }
  }

  private static void ridgeBetween(Design design, String a, String b, double height) {
    RoofLine ridge = between(design, LineKind.RIDGE, a, b);
    assertThat(ridge.from().z()).isEqualTo(height, CLOSE);
    assertThat(ridge.to().z()).isEqualTo(height, CLOSE);
  }

  private static RoofLine between(Design design, LineKind kind, String a, String b) {
    return lines(design, kind).stream()
        .filter(l -> l.planes().contains(a) && l.planes().contains(b))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + kind.key() + " between " + a + " and " + b));
  }

  /** Plate + heel + slope × distance in from the wall, from the plan alone. */
  private static double heightOver(Design design, String planeId, Point3 p) {
    String part = planeId.substring(0, planeId.indexOf('/'));
    Part owner = design.plan().part(part).orElseThrow();
    int index = Integer.parseInt(planeId.substring(part.length() + 1));
    Side side = design.plan().side(owner, index);
    return side.plateHeight() + side.heel() + side.slope().ratio() * side.wall().offset(p.plan());
  }

  private static double sq(double x) {
    return x * x;
  }
}
