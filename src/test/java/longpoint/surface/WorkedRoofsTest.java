package longpoint.surface;

import static longpoint.surface.Plans.GABLE;
import static longpoint.surface.Plans.bare;
import static longpoint.surface.Plans.eave;
import static longpoint.surface.Plans.hip;
import static longpoint.surface.Plans.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longpoint.geometry.Ring;
import longpoint.plan.Problem;
import org.junit.jupiter.api.Test;

/** Whole roofs against printed examples and hand arithmetic. */
class WorkedRoofsTest {
  /** Carpentry Refresher (open textbook), topic 8: ridge of a 24 × 36 ft hip roof is 12 ft. */
  @Test
  void hipRoofRidge() {
    RoofSurface roof = Roof.solve(bare(hip("h", 0, 6, Ring.of(0, 0, 36, 0, 36, 24, 0, 24))));
    assertThat(roof.lines(LineKind.RIDGE)).hasSize(1);
    assertThat(roof.lines(LineKind.RIDGE).get(0).length()).isCloseTo(12, within(1e-9));
  }

  /**
   * Estimating in Building Construction, p. 181: a hip roof has the area of a gable roof of the
   * same span, pitch and length. 36 × 24 ft at 6 in 12: 864 × √1.25 = 965.98 sq ft.
   */
  @Test
  void hipAndGableRoofsHaveEqualAreas() {
    Ring house = Ring.of(0, 0, 36, 0, 36, 24, 0, 24);
    RoofSurface hip = Roof.solve(bare(hip("h", 0, 6, house)));
    RoofSurface gable = Roof.solve(bare(part("g", 0, house, eave(6), GABLE, eave(6), GABLE)));
    assertThat(area(hip)).isCloseTo(965.98, within(0.005));
    assertThat(area(gable)).isCloseTo(area(hip), within(1e-9));
  }

  /**
   * JLC (trade journal), rafter framing with unequal wall heights: walls 2 ft apart in height, 6 in
   * 12, span 24 ft: frame as a 28 ft span from the low plate, so the ridge stands over 14 ft.
   */
  @Test
  void unequalWallHeights() {
    RoofSurface roof =
        Roof.solve(
            bare(
                part(
                    "h",
                    0,
                    Ring.of(0, 0, 480, 0, 480, 288, 0, 288),
                    eave(6),
                    GABLE,
                    eave(6).withHeel(24),
                    GABLE)));
    RoofLine ridge = roof.lines(LineKind.RIDGE).get(0);
    assertThat(ridge.from().y()).isCloseTo(14 * 12, within(1e-9));
    assertThat(ridge.from().z()).isCloseTo(14 * 6, within(1e-9));
  }

  /** 4 in 12 over a depth of 27: a shed rises 9, to a level top that is its ridge. */
  @Test
  void shedRisesOverItsDepth() {
    RoofSurface roof =
        Roof.solve(
            bare(part("s", 10, Ring.of(0, 0, 42, 0, 42, 27, 0, 27), eave(4), GABLE, GABLE, GABLE)));
    assertThat(roof.planes()).hasSize(1);
    assertThat(roof.lines(LineKind.RIDGE))
        .singleElement()
        .satisfies(l -> assertThat(l.from().z()).isCloseTo(10 + 9, within(1e-9)));
    assertThat(roof.lines(LineKind.RAKE)).hasSize(2);
  }

  /** An inside corner of equal slopes: one valley at 45° from the corner to the ridges. */
  @Test
  void ellHasOneValley() {
    RoofSurface roof = Roof.solve(bare(hip("l", 0, 6, Houses.ELL)));
    RoofLine valley = roof.lines(LineKind.VALLEY).get(0);
    assertThat(roof.lines(LineKind.VALLEY)).hasSize(1);
    assertThat(valley.from().plan().distance(new longpoint.geometry.Point(240, 240)))
        .isLessThan(1e-9);
    assertThat(valley.to().plan().distance(new longpoint.geometry.Point(120, 120)))
        .isLessThan(1e-9);
    assertThat(roof.lines(LineKind.HIP)).hasSize(5);
    assertThat(roof.lines(LineKind.RIDGE)).hasSize(2);
  }

  /**
   * A ring of rooms 240 and 200 wide round a court: hips outside, valleys inside, ridges between.
   */
  @Test
  void courtyardHasHipsOutsideAndValleysInside() {
    RoofSurface roof = Roof.solve(Houses.all().get("courtyard"));
    assertThat(roof.lines(LineKind.HIP)).hasSize(8);
    assertThat(roof.lines(LineKind.VALLEY)).hasSize(4);
    assertThat(roof.lines(LineKind.RIDGE)).hasSize(4);
    double ground = (720 + 35) * (600 + 35) - (240 - 35) * (200 - 35);
    assertThat(planArea(roof)).isCloseTo(ground, within(1e-6));
  }

  /**
   * The fascia of the plane that reaches less far ends the other: reaches 17.5 and 41.5 at 8 in 12,
   * so the hip ends where it meets the nearer line, 17.5 out both ways.
   */
  @Test
  void unequalOverhangsEndTheHipOnTheNearerFascia() {
    RoofSurface roof = Roof.solve(Houses.all().get("unequal overhangs"));
    assertThat(roof.lines(LineKind.HIP))
        .anySatisfy(
            h -> {
              assertThat(h.planes()).containsExactly("q/0", "q/1");
              assertThat(h.from().x()).isCloseTo(497.5, within(1e-9));
              assertThat(h.from().y()).isCloseTo(-17.5, within(1e-9));
            });
    assertThat(roof.problems()).allMatch(p -> p.level() == Problem.Level.NOTE).hasSize(4);
  }

  /** A gable at an inside corner stands as a wall over the lower roof. */
  @Test
  void reEntrantGableLeavesAStep() {
    RoofSurface roof = Roof.solve(Houses.all().get("re-entrant gable"));
    assertThat(roof.lines(LineKind.STEP))
        .isNotEmpty()
        .allSatisfy(s -> assertThat(s.from().x()).isCloseTo(240 + 16, within(1e-9)))
        .allSatisfy(s -> assertThat(s.planes()).contains("r/2"));
    assertThat(roof.lines(LineKind.VALLEY)).isEmpty();
  }

  private static double area(RoofSurface roof) {
    return roof.planes().stream().mapToDouble(RoofPlane::area).sum();
  }

  private static double planArea(RoofSurface roof) {
    return roof.planes().stream().mapToDouble(RoofPlane::planArea).sum();
  }
}
