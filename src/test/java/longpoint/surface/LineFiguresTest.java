package longpoint.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longpoint.geometry.Ring;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines of simple hip roofs against printed figures; feet in the examples stand as units here. */
class LineFiguresTest {
  private static LineFigures hip(RoofSurface roof) {
    return roof.figures(roof.lines(LineKind.HIP).get(0));
  }

  private static RoofSurface hipRoof(double inTwelve, double width, double length) {
    return Roof.solve(
        Plans.bare(Plans.hip("h", 0, inTwelve, Ring.of(0, 0, length, 0, length, width, 0, width))));
  }

  /**
   * NAVEDTRA 14044, Builder 3 &amp; 2 vol. 2: span 30 ft, 8 in 12, hip run 21.21, 23.45 ft long.
   */
  @Test
  void navyRegularHip() {
    RoofSurface roof = hipRoof(8, 30, 50);
    LineFigures hip = hip(roof);
    assertThat(hip.run()).isCloseTo(21.21, within(0.005));
    assertThat(hip.length()).isCloseTo(23.45, within(0.005));
    assertThat(hip.rise()).isCloseTo(10, within(1e-9));
  }

  /** Hodgson, ABC of the Steel Square (1908): runs 12 and 16, rise 10, hip run 20. */
  @Test
  void hodgsonUnequalPitchHip() {
    RoofSurface roof = Roof.solve(unequal(24, 60, 10.0 / 12, 10.0 / 16));
    LineFigures hip = hip(roof);
    assertThat(hip.run()).isCloseTo(20, within(1e-9));
    assertThat(hip.rise()).isCloseTo(10, within(1e-9));
    // By Pythagoras from the printed 20 and 10.
    assertThat(hip.length()).isCloseTo(Math.sqrt(500), within(1e-9));
    // atan(12/16), from the printed runs; the line's other angle is its complement.
    assertThat(hip.sides().stream().mapToDouble(LineFigures.Beside::planAngle).sum())
        .isCloseTo(90, within(1e-9));
    assertThat(hip.sides().stream().mapToDouble(LineFigures.Beside::planAngle).min().orElseThrow())
        .isCloseTo(36.8699, within(1e-4));
  }

  /** Hodgson (1908): building 18 × 28 ft, rise 9 ft: all four hips meet in a point, run 16.64. */
  @Test
  void hodgsonUnequalPitchPyramidHasNoRidge() {
    RoofSurface roof = Roof.solve(unequal(18, 28, 9.0 / 9, 9.0 / 14));
    assertThat(roof.lines(LineKind.RIDGE)).isEmpty();
    assertThat(roof.lines(LineKind.HIP)).hasSize(4);
    LineFigures hip = hip(roof);
    assertThat(hip.run()).isCloseTo(Math.hypot(9, 14), within(1e-9));
    assertThat(hip.length()).isCloseTo(18.9209, within(1e-4));
  }

  /**
   * Heavy Timber Roof Framing, carpenters' union training text, unit 5: 14 in 12 beside 20 in 12,
   * per unit of main run: hip run 1.2207, hip 1.6886.
   */
  @Test
  void timberUnequalPitchUnitLengths() {
    LineFigures hip = hip(Roof.solve(unequal(20, 60, 14.0 / 12, 20.0 / 12)));
    double runs = hip.rise() / (14.0 / 12);
    assertThat(hip.run() / runs).isCloseTo(1.2207, within(1e-4));
    assertThat(hip.length() / runs).isCloseTo(1.6886, within(1e-4));
  }

  /**
   * Two slopes over a square corner, by equal heights on the hip: m1·y = m2·x with y measured from
   * side 1's eave and x along it. Hodgson's runs of 12 and 16 above are the same: the hip lies
   * nearer the eave of the steeper side.
   */
  @ParameterizedTest
  @CsvSource({"8,10", "4,12", "6,6", "3,9", "12,7"})
  void squareCornerClosedForms(double side, double end) {
    double m1 = side / 12;
    double m2 = end / 12;
    LineFigures hip = hip(Roof.solve(unequal(20, 90, m1, m2)));
    assertThat(hip.runPerRise()).isCloseTo(Math.hypot(1 / m1, 1 / m2), within(1e-9));
    double onSide =
        hip.sides().stream()
            .filter(s -> s.plane().equals("h/0"))
            .findFirst()
            .orElseThrow()
            .planAngle();
    assertThat(onSide).isCloseTo(Math.toDegrees(Math.atan(m2 / m1)), within(1e-9));
  }

  /**
   * Drop of 1 1/2 in stock and backing angle by the steel-square rule in NAVEDTRA 14044 and
   * Griffith, Carpentry (1916): half the thickness × rise / 16.97, and tan = rise / hip length per
   * foot.
   */
  @ParameterizedTest
  @CsvSource({
    "3,0.1326,9.875",
    "4,0.1768,12.921",
    "5,0.2210,15.781",
    "6,0.2652,18.435",
    "8,0.3536,23.093",
    "9,0.3977,25.104",
    "10,0.4419,26.916",
    "12,0.5303,30.000"
  })
  void dropAndBackingOfSquareCorners(double rise, double drop, double backing) {
    LineFigures hip = hip(hipRoof(rise, 240, 400));
    assertThat(hip.drop(1.5)).isCloseTo(drop, within(6e-5));
    assertThat(hip.sides())
        .allSatisfy(s -> assertThat(s.backing()).isCloseTo(backing, within(6e-4)));
    assertThat(hip.sides()).allSatisfy(s -> assertThat(s.cross()).isNegative());
    assertThat(hip.dihedral().orElseThrow()).isCloseTo(180 - 2 * backing, within(2e-3));
  }

  @Test
  void bearingIsReadClockwiseFromTheTopOfThePage() {
    RoofSurface roof = hipRoof(8, 240, 400);
    RoofLine fromTheOrigin = line(roof, "hip:h/0+h/3");
    assertThat(roof.figures(fromTheOrigin).bearing()).isCloseTo(45, within(1e-9));
    RoofLine fromTheFarCorner = line(roof, "hip:h/1+h/2");
    assertThat(roof.figures(fromTheFarCorner).bearing()).isCloseTo(225, within(1e-9));
  }

  private static RoofLine line(RoofSurface roof, String id) {
    return roof.lines().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
  }

  private static longpoint.plan.Plan unequal(double width, double length, double side, double end) {
    return Plans.bare(
        Plans.part(
            "h",
            0,
            Ring.of(0, 0, length, 0, length, width, 0, width),
            Plans.eave(side * 12),
            Plans.eave(end * 12),
            Plans.eave(side * 12),
            Plans.eave(end * 12)));
  }
}
