package longpoint.framing.square;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SquareFiguresTest {
  /** A square shows two decimals. */
  private static final double STAMPED = 0.006;

  /** The line of common lengths for rises 2 to 18 as a how-to page lists it. */
  @Test
  void commonLineOfAPrintedSquare() {
    double[] printed = {
      12.17, 12.37, 12.65, 13.00, 13.42, 13.89, 14.42, 15.00, 15.62, 16.28, 16.97, 17.69, 18.44,
      19.21, 20.00, 20.81, 21.63
    };
    List<SquareFigures> rows = SquareFigures.table();
    assertThat(rows).hasSize(printed.length);
    for (int i = 0; i < printed.length; i++) {
      assertThat(rows.get(i).common()).isEqualTo(printed[i], within(STAMPED));
    }
  }

  /** US Navy NAVEDTRA 14044 vol. 2 (rises 8, 9); Griffith, Carpentry (12); Radford vol. 3 (6). */
  @ParameterizedTest
  @CsvSource({"6, 18", "8, 18.76", "9, 19.21", "12, 20.78"})
  void hipCellsSeenInPrint(double rise, double printed) {
    assertThat(SquareFigures.inTwelve(rise).hip()).isEqualTo(printed, within(STAMPED));
  }

  /** NAVEDTRA 14044 p. 2-31 (rise 8, 16 in); Audel vol. 3 p. 975 (rise 10, 16 and 20 in). */
  @ParameterizedTest
  @CsvSource({"8, 16, 19.23, 0.005", "10, 16, 20.83, 0.005", "10, 20, 26, 0.05"})
  void jackDifferencesSeenInPrint(double rise, double spacing, double printed, double half) {
    assertThat(SquareFigures.inTwelve(rise).jackDifference(spacing))
        .isEqualTo(printed, within(half));
  }

  /** NAVEDTRA 14044 p. 2-33: 10 with 12 for a rise of 8; squares round to 1/16. */
  @Test
  void jackSideCutSeenInPrint() {
    assertThat(SquareFigures.inTwelve(8).jackSideCut()).isEqualTo(10, within(1.0 / 16));
  }

  /** Griffith and NAVEDTRA 14044: 16.97 for the run of the hip. */
  @Test
  void hipRunSeenInPrint() {
    assertThat(SquareFigures.inTwelve(5).hipRun()).isEqualTo(16.97, within(STAMPED));
  }

  /** Every column of every row, each from its definition in space and not from the formula. */
  @Test
  void everyColumnOfEveryRowAgreesWithVectorsInSpace() {
    for (SquareFigures row : SquareFigures.table()) {
      double[] common = {0, 12, row.rise()};
      double[] hip = {12, 12, row.rise()};
      double[] across = {12, 0, 0};
      assertThat(row.common()).isEqualTo(norm(common), within(1e-12));
      assertThat(row.hip()).isEqualTo(norm(hip), within(1e-12));
      assertThat(row.degrees()).isEqualTo(angle(common, 0, 12, 0), within(1e-9));
      assertThat(row.hipDegrees()).isEqualTo(angle(hip, 12, 12, 0), within(1e-9));
      // The cheek of a jack on its roof plane lies along the hip: its angle with the jack.
      double cheek = angle(common, hip);
      assertThat(Math.toDegrees(Math.atan2(row.jackSideCut(), 12))).isEqualTo(cheek, within(1e-9));
      // The top of a hip tilts about the level line square to it; a cheek at 45 degrees in plan.
      double[] ridge = {24, 0, row.rise()};
      assertThat(Math.toDegrees(Math.atan2(row.hipSideCut(), 12)))
          .isEqualTo(angle(hip, ridge), within(1e-9));
      assertThat(row.jackDifference(24)).isEqualTo(2 * norm(common), within(1e-12));
      assertThat(row.areaFactor()).isEqualTo(norm(cross(across, common)) / 144, within(1e-12));
      assertThat(row.hipFactor()).isEqualTo(norm(hip) / 12, within(1e-12));
      assertThat(row.hipFactorOnHipRun())
          .isEqualTo(1 / Math.cos(Math.toRadians(row.hipDegrees())), within(1e-12));
    }
  }

  /**
   * The rule of NAVEDTRA 14044 (hip seat, fig. 2-34): square on 17 and the rise, half the thickness
   * along the 17 leg; values worked out from that rule.
   */
  @ParameterizedTest
  @CsvSource({
    "3, 0.1326, 9.875",
    "4, 0.1768, 12.921",
    "6, 0.2652, 18.435",
    "8, 0.3536, 23.093",
    "10, 0.4419, 26.916",
    "12, 0.5303, 30.000"
  })
  void dropAndBacking(double rise, double drop, double backing) {
    assertThat(SquareFigures.inTwelve(rise).hipDrop(1.5)).isEqualTo(drop, within(5e-5));
    assertThat(SquareFigures.inTwelve(rise).backingDegrees()).isEqualTo(backing, within(5e-4));
  }

  /** Hodgson, Steel Square (1908): hip of a 10 in 12 roof is 7 1/17 in 12 (17 for 16.97). */
  @Test
  void hipSlopePerTwelve() {
    SquareFigures ten = SquareFigures.inTwelve(10);
    assertThat(ten.rise() / ten.hipRun() * 12).isEqualTo(7 + 1.0 / 17, within(0.0125));
  }

  /** The trade's three-decimal list of area factors, rises 2 to 12 (from memory of print). */
  @Test
  void areaFactors() {
    double[] printed = {
      1.014, 1.031, 1.054, 1.083, 1.118, 1.158, 1.202, 1.250, 1.302, 1.357, 1.414
    };
    IntStream.range(0, printed.length)
        .forEach(
            i ->
                assertThat(SquareFigures.inTwelve(i + 2).areaFactor())
                    .isEqualTo(printed[i], within(0.00051)));
  }

  /**
   * Griffith, Carpentry (1916), arts. 38 and 42: octagon hip run 13, tangent 4.97 (5 for layout),
   * jack growth 12/5 of the square corner's.
   */
  @Test
  void octagonConstants() {
    PolygonFigures octagon = PolygonFigures.regular(SquareFigures.inTwelve(10), 8);
    assertThat(octagon.corner()).isEqualTo(135);
    assertThat(octagon.hipRun()).isEqualTo(13, within(0.012));
    assertThat(octagon.tangent()).isEqualTo(4.97, within(0.001));
    assertThat(octagon.jackDifference(16) / SquareFigures.inTwelve(10).jackDifference(16))
        .isEqualTo(2.4, within(0.015));
  }

  /** Worked out from the hip run above: octagon hip per foot of run. */
  @ParameterizedTest
  @CsvSource({"8, 15.2547", "10, 16.3923", "12, 17.6835"})
  void octagonHips(double rise, double exact) {
    assertThat(PolygonFigures.regular(SquareFigures.inTwelve(rise), 8).hip())
        .isEqualTo(exact, within(5e-5));
  }

  private static double norm(double[] a) {
    return Math.sqrt(DoubleStream.of(a).map(x -> x * x).sum());
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double angle(double[] a, double... b) {
    double dot = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    return Math.toDegrees(Math.acos(dot / norm(a) / norm(b)));
  }
}
