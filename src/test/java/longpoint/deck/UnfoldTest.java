package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnfoldTest {
  private static Unfold unfold(double inTwelve, double degrees, Point to) {
    DeckFixture f =
        DeckFixture.turned(
            inTwelve,
            Ring.of(0, 0, 480, 0, 480, 200, 0, 200),
            new double[0],
            DeckFixture.inches(Deck.Start.LEFT),
            degrees,
            to);
    return Unfold.of(f.plan().side(f.plan().parts().get(0), 0), f.plane());
  }

  @Test
  void comesBackToWhereItStarted() {
    Random random = new Random(1);
    for (int i = 0; i < 1000; i++) {
      Point to = new Point(random.nextDouble() * 1e5, random.nextDouble() * 1e5);
      Unfold unfold = unfold(random.nextDouble() * 18, random.nextDouble() * 360, to);
      Point plan = to.plus(new Point(random.nextDouble() * 900, random.nextDouble() * 900));
      assertThat(unfold.plan(unfold.flat(plan)).distance(plan)).isLessThan(1e-9);
    }
  }

  /** True distance in space, worked out from coordinates alone, is the distance laid flat. */
  @Test
  void keepsTrueLengths() {
    Unfold unfold = unfold(10, 30, new Point(5, 7));
    Point a = new Point(3, 4);
    Point b = new Point(120, 77);
    assertThat(unfold.flat(b).distance(unfold.flat(a)))
        .isCloseTo(
            unfold.space(unfold.flat(a), 0).distance(unfold.space(unfold.flat(b), 0)),
            within(1e-9));
    assertThat(unfold.space(new Point(20, 30), 0.5).distance(unfold.space(new Point(20, 30), 0)))
        .isCloseTo(0.5, within(1e-12));
  }

  /**
   * Up the slope on the deck to each truss of a valley set: 10 in 12, half-inch deck, 16 in
   * overhang and 1 1/2 in fascia. Worked by hand with plane trigonometry.
   */
  @ParameterizedTest
  @CsvSource({
    "23.219, 53.421",
    "47.219, 84.662",
    "71.219, 115.903",
    "95.219, 147.144",
    "119.219, 178.385"
  })
  void measuresUpTheDeck(double x, double v) {
    Unfold unfold = unfold(10, 0, new Point(0, 0));
    assertThat(unfold.flatOnDeck(new Point(100, x), 0.5).y()).isCloseTo(v, within(0.001));
  }

  @Test
  void standsTheDeckTopPlumbOverThePlan() {
    Unfold unfold = unfold(8, 15, new Point(9, 1));
    Point plan = new Point(40, 60);
    Point3 top = unfold.space(unfold.flatOnDeck(plan, 0.75), 0.75);
    assertThat(top.plan().distance(plan)).isLessThan(1e-9);
  }

  /** Facing the plane from the ground, u grows to the right. */
  @Test
  void growsToTheRight() {
    Unfold unfold = unfold(8, 0, new Point(0, 0));
    assertThat(unfold.flat(new Point(10, 0)).x()).isGreaterThan(unfold.flat(new Point(0, 0)).x());
    assertThat(unfold.flat(new Point(0, -17.5)).y()).isCloseTo(0, within(1e-12));
  }
}
