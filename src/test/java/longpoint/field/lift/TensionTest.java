package longpoint.field.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pulls of lines against printed tables and worked examples of riggers, and against statics. */
class TensionTest {
  private static double[] most(double weight, Point3 hook, Point3... places) {
    return Tension.most(weight, hook, List.of(places), 0.01).orElseThrow();
  }

  /**
   * Tension factors by angle from level, as sling makers print them (seen: ashleysling.com,
   * "Calculating sling angles"; to the third decimal, its 65° and 35° rounded up and down).
   */
  @ParameterizedTest
  @CsvSource({
    "90, 1",
    "85, 1.004",
    "80, 1.015",
    "75, 1.035",
    "70, 1.064",
    "65, 1.104",
    "60, 1.155",
    "55, 1.221",
    "50, 1.305",
    "45, 1.414",
    "40, 1.555",
    "35, 1.742",
    "30, 2"
  })
  void twoEvenLinesPullByThePrintedFactor(double degrees, double factor) {
    double out = 10 / Math.tan(Math.toRadians(degrees)) + (degrees == 90 ? 0.02 : 0);
    double[] pulls = most(2, new Point3(0, 0, 10), new Point3(-out, 0, 0), new Point3(out, 0, 0));
    assertThat(pulls[0]).isCloseTo(factor, within(0.0015));
    assertThat(pulls[1]).isCloseTo(pulls[0], within(1e-12));
  }

  /** 1,000 lb on two lines: 500 each upright, 1,000 each at 30° (seen: NAVEDTRA 14080, p. 3-23). */
  @Test
  void theNavysThousandPounds() {
    double out = 10 / Math.tan(Math.toRadians(30));
    double[] flat = most(1000, new Point3(0, 0, 10), new Point3(-out, 0, 0), new Point3(out, 0, 0));
    assertThat(flat[0]).isCloseTo(1000, within(1e-9));
    double[] steep =
        most(1000, new Point3(0, 0, 1e6), new Point3(-0.1, 0, 0), new Point3(0.1, 0, 0));
    assertThat(steep[0]).isCloseTo(500, within(1e-3));
  }

  /**
   * 10,000 lb, its centre 2 ft from one place and 8 ft from the other: 8,000 and 2,000 lb upright
   * (seen: certifiedslings.com, "Center of gravity and sling loading"). The hook is so high that
   * the lines are upright but for a hair.
   */
  @Test
  void offCentreTheNearerLineCarriesMore() {
    double[] pulls = most(10_000, new Point3(0, 0, 1e5), new Point3(2, 0, 0), new Point3(-8, 0, 0));
    assertThat(pulls[0]).isCloseTo(8000, within(0.01));
    assertThat(pulls[1]).isCloseTo(2000, within(0.01));
  }

  /**
   * Four even lines on a rigid load: two across from each other may take it all, so each is
   * reckoned as one of two (seen: NAVEDTRA 14080 and 14081, bridle hitch).
   */
  @Test
  void fourLinesAreReckonedAsTwo() {
    Point3 hook = new Point3(0, 0, 10);
    Point3[] square = {
      new Point3(5, 3, 0), new Point3(-5, 3, 0), new Point3(-5, -3, 0), new Point3(5, -3, 0)
    };
    double line = Math.sqrt(25 + 9 + 100);
    double two = 1200 / 2.0 * line / 10;
    assertThat(most(1200, hook, square))
        .containsExactly(new double[] {two, two, two, two}, within(1e-9));
  }

  /** Pulls add up to the weight plumb up, at any heights and off centre. */
  @Test
  void threeLinesBalanceWhereverTheyHang() {
    Random r = new Random(7);
    int held = 0;
    for (int n = 0; n < 2000; n++) {
      Point3 hook = new Point3(r.nextGaussian(), r.nextGaussian(), 20 + 10 * r.nextDouble());
      Point3[] places = new Point3[3];
      for (int i = 0; i < 3; i++) {
        places[i] = new Point3(10 * r.nextGaussian(), 10 * r.nextGaussian(), 5 * r.nextGaussian());
      }
      var found = Tension.most(900, hook, List.of(places), 0.01);
      if (found.isPresent()) {
        held++;
        balances(900, hook, places, found.get());
        assertThat(inside(places, hook.plan())).isTrue();
      } else {
        assertThat(inside(places, hook.plan())).isFalse();
      }
    }
    assertThat(held).isGreaterThan(200);
  }

  private static boolean inside(Point3[] places, Point p) {
    int left = 0;
    for (int i = 0; i < 3; i++) {
      Point a = places[i].plan();
      Point b = places[(i + 1) % 3].plan();
      left += b.minus(a).cross(p.minus(a)) > 0 ? 1 : 0;
    }
    return left == 0 || left == 3;
  }

  private static void balances(double weight, Point3 hook, Point3[] places, double[] pulls) {
    double x = 0;
    double y = 0;
    double z = 0;
    for (int i = 0; i < places.length; i++) {
      double line = hook.distance(places[i]);
      x += pulls[i] * (hook.x() - places[i].x()) / line;
      y += pulls[i] * (hook.y() - places[i].y()) / line;
      z += pulls[i] * (hook.z() - places[i].z()) / line;
    }
    assertThat(x).isCloseTo(0, within(1e-6));
    assertThat(y).isCloseTo(0, within(1e-6));
    assertThat(z).isCloseTo(weight, within(1e-6));
  }

  /** Two places at unlike heights: the lines' level pulls are equal, their upright ones add up. */
  @Test
  void twoLinesAtUnlikeHeights() {
    Point3 hook = new Point3(0, 0, 12);
    Point3[] places = {new Point3(-4, 0, 0), new Point3(7, 0, 3)};
    balances(500, hook, places, most(500, hook, places));
  }

  @Test
  void whatCannotHangLevelIsNotReckoned() {
    Point3 hook = new Point3(0, 5, 10);
    assertThat(Tension.most(100, hook, List.of(new Point3(-5, 0, 0), new Point3(5, 0, 0)), 0.01))
        .isEmpty();
    assertThat(
            Tension.most(
                100,
                hook,
                List.of(new Point3(-5, 0, 0), new Point3(5, 0, 0), new Point3(0, -5, 0)),
                0.01))
        .isEmpty();
  }
}
