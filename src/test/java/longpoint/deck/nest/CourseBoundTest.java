package longpoint.deck.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import longpoint.geometry.Ring;
import org.junit.jupiter.api.Test;

/** A bound is never above the least that can be done, and not far below it. */
class CourseBoundTest {
  private static CourseBound of(double width, double[][] runs) {
    CourseBound bound = new CourseBound(96, width);
    Arrays.stream(runs).forEach(r -> bound.add(96 * r[0], r[1], r[1]));
    return bound;
  }

  /**
   * Widths to be slit from rolls of 100 in: 97 of 45, 610 of 36, 395 of 31, 211 of 14; 453 rolls
   * are the least (Chvatal, Linear Programming, 1983, chapter 13; from memory). The quick bound
   * sees 446, which the area of the strips alone asks for as well.
   */
  @Test
  void knownExampleOfSlitting() {
    CourseBound bound = of(100, new double[][] {{97, 45}, {610, 36}, {395, 31}, {211, 14}});
    double area = (97 * 45 + 610 * 36 + 395 * 31 + 211 * 14) / 100.0;
    assertThat(bound.sheets()).isBetween((int) Math.ceil(area), 453);
    assertThat(bound.best()).isBetween(452, 453);
  }

  /** Strips as long as a sheet: the least is found by trying every way to fill sheets. */
  @Test
  void neverAboveTheLeastForStrips() {
    Random random = new Random(11);
    int tight = 0;
    int better = 0;
    for (int round = 0; round < 400; round++) {
      int count = 3 + random.nextInt(7);
      int[] heights = random.ints(count, 4, 49).toArray();
      CourseBound bound = of(48, runs(heights));
      int least = least(heights);
      int found = found(heights);
      assertThat(bound.sheets()).as(Arrays.toString(heights)).isLessThanOrEqualTo(bound.best());
      assertThat(bound.best()).as(Arrays.toString(heights)).isLessThanOrEqualTo(least);
      assertThat(least).isLessThanOrEqualTo(found);
      tight += bound.best() == least ? 1 : 0;
      better += bound.best() > bound.sheets() ? 1 : 0;
    }
    assertThat(tight).isGreaterThan(380);
    assertThat(better).isPositive();
  }

  private static double[][] runs(int[] heights) {
    return Arrays.stream(heights).mapToObj(h -> new double[] {1, h}).toArray(double[][]::new);
  }

  private static int found(int[] heights) {
    List<Ring> strips =
        Arrays.stream(heights).mapToObj(h -> Ring.of(0, 0, 96, 0, 96, h, 0, h)).toList();
    return Nest.pack(strips, 96, 48, 1e-7, 0, Nest.Effort.THOROUGH).size();
  }

  private static int least(int[] heights) {
    return IntStream.rangeClosed(1, heights.length)
        .filter(n -> fill(heights, 0, new int[n]))
        .findFirst()
        .orElseThrow();
  }

  private static boolean fill(int[] heights, int next, int[] sheets) {
    if (next == heights.length) {
      return true;
    }
    for (int s = 0; s < sheets.length; s++) {
      if (sheets[s] + heights[next] <= 48) {
        sheets[s] += heights[next];
        if (fill(heights, next + 1, sheets)) {
          return true;
        }
        sheets[s] -= heights[next];
      }
      if (sheets[s] == 0) {
        return false;
      }
    }
    return false;
  }

  /** Two triangles make a sheet, whole sheets make themselves: no bound may say more. */
  @Test
  void neverAboveTheLeastForSlants() {
    for (int pairs = 1; pairs <= 30; pairs++) {
      CourseBound bound = new CourseBound(96, 48);
      for (int i = 0; i < pairs; i++) {
        bound.add(96, 0, 48);
        bound.add(96, 48, 0);
        bound.add(96, 48, 48);
      }
      assertThat(bound.best()).isEqualTo(2 * pairs);
    }
    CourseBound pairs = new CourseBound(96, 48);
    for (int i = 0; i < 7; i++) {
      pairs.add(80, 30, 40);
      pairs.add(80, 18, 8);
    }
    // A strip that falls from 40 to 30 beside one that rises from 8 to 18, in 80 in of a sheet.
    assertThat(pairs.best()).isBetween(6, 7);
  }

  /** Steps of height and rounding of heights must not lose a whole sheet, nor win one. */
  @Test
  void wholeSheetsCountWhole() {
    for (double width : new double[] {48, 1220, 1250, 47.999999999}) {
      CourseBound bound = new CourseBound(2 * width, width);
      for (int i = 0; i < 1000; i++) {
        bound.add(2 * width, width, width);
      }
      assertThat(bound.sheets()).isEqualTo(1000);
      assertThat(bound.best()).isEqualTo(1000);
    }
  }
}
