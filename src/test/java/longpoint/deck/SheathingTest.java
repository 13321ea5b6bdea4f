package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Extras;
import org.junit.jupiter.api.Test;

class SheathingTest {
  /**
   * A 40 ft by 16 ft gable plane whose rakes stand on the module: nothing to cut but half sheets.
   */
  private static final Ring PLAIN = Ring.of(0, 0, 480, 0, 480, 192, 0, 192);

  private static DeckPlan plain(Deck.Start start) {
    return DeckFixture.of(6, PLAIN, DeckFixture.every(24, 0, 480), DeckFixture.inches(start)).lay();
  }

  @Test
  void laysWholeSheetsWhereTheRoofIsWholeSheets() {
    DeckPlan plan = plain(Deck.Start.LEFT);
    DeckLaws.check(plan);
    PlaneDeck plane = plan.planes().get(0);
    DeckLaws.keepsTheRulesForJoints(plane);
    assertThat(plane.courses()).hasSize(4);
    assertThat(plane.courses().get(0).joints()).containsExactly(96.0, 192.0, 288.0, 384.0);
    assertThat(plane.courses().get(1).joints()).containsExactly(48.0, 144.0, 240.0, 336.0, 432.0);
    // 480 x 192 in is 640 sq ft, 20 sheets of 32 sq ft.
    assertThat(plan.sheetsBought()).isEqualTo(20);
    assertThat(plan.lowerBound()).isEqualTo(20);
    assertThat(plan.problems()).isEmpty();
  }

  @Test
  void startsWhereTold() {
    Ring longer = Ring.of(0, 0, 500, 0, 500, 96, 0, 96);
    double[] stations = DeckFixture.every(24, 10, 490);
    List<Double> left =
        DeckFixture.of(6, longer, stations, DeckFixture.inches(Deck.Start.LEFT))
            .lay()
            .planes()
            .get(0)
            .courses()
            .get(0)
            .joints();
    List<Double> right =
        DeckFixture.of(6, longer, stations, DeckFixture.inches(Deck.Start.RIGHT))
            .lay()
            .planes()
            .get(0)
            .courses()
            .get(0)
            .joints();
    List<Double> centre =
        DeckFixture.of(6, longer, stations, DeckFixture.inches(Deck.Start.CENTRE))
            .lay()
            .planes()
            .get(0)
            .courses()
            .get(0)
            .joints();
    assertThat(left.get(0)).isCloseTo(82, within(1e-9));
    assertThat(right.get(right.size() - 1)).isCloseTo(418, within(1e-9));
    assertThat(centre).anyMatch(u -> Math.abs(u - 250) < 1e-9);
  }

  /** Bays of 24 with one of 19 and a girder of two plies: joints follow the trusses. */
  @Test
  void followsIrregularBays() {
    double[] stations = {
      12, 36, 60, 84, 108, 127, 151, 175, 176.5, 199, 223, 247, 271, 295, 319, 343
    };
    Ring outline = Ring.of(0, 0, 355, 0, 355, 150, 0, 150);
    DeckPlan plan = DeckFixture.of(8, outline, stations, DeckFixture.inches(Deck.Start.LEFT)).lay();
    DeckLaws.check(plan);
    DeckLaws.keepsTheRulesForJoints(plan.planes().get(0));
    assertThat(plan.problems()).isEmpty();
  }

  @Test
  void cutsAHipFromEqualPatterns() {
    // A 6 in 12 hip: 42.933 in of run for each 48 in course, at both ends.
    double per = 48 * Math.cos(Math.atan(0.5));
    Ring trapezoid = Ring.of(0, 0, 480, 0, 480 - 4 * per, 192, 4 * per, 192);
    DeckPlan plan =
        DeckFixture.of(
                6, trapezoid, DeckFixture.every(24, 12, 468), DeckFixture.inches(Deck.Start.LEFT))
            .lay();
    DeckLaws.check(plan);
    PlaneDeck plane = plan.planes().get(0);
    DeckLaws.keepsTheRulesForJoints(plane);
    Piece slanted = plane.pieces().stream().filter(p -> p.number() == 1).findFirst().orElseThrow();
    assertThat(slanted.longPoint() - slanted.shortPoint()).isCloseTo(per, within(1e-6));
    // The saw cut stands off square by the angle whose tangent is the cosine of the slope.
    assertThat(slanted.edges())
        .anyMatch(
            e -> Math.abs(e.angle() - Math.toDegrees(Math.atan(Math.cos(Math.atan(0.5))))) < 1e-9);
    assertThat(plan.sheetsBought()).isLessThanOrEqualTo(plan.lowerBound() + 2);
  }

  @Test
  void leastIsNeverMoreThanAPlainStart() {
    Ring outline = Ring.of(0, 0, 437, 0, 437 - 120, 171, 90, 171);
    double[] stations = DeckFixture.every(16, 8, 430);
    int least = bought(outline, stations, Deck.Start.LEAST);
    for (Deck.Start start : List.of(Deck.Start.LEFT, Deck.Start.RIGHT, Deck.Start.CENTRE)) {
      assertThat(least).isLessThanOrEqualTo(bought(outline, stations, start));
    }
  }

  private static int bought(Ring outline, double[] stations, Deck.Start start) {
    return DeckFixture.of(8, outline, stations, DeckFixture.inches(start)).lay().sheetsBought();
  }

  @Test
  void saysWhenNothingCarriesTheJoints() {
    DeckPlan none =
        DeckFixture.of(6, PLAIN, new double[0], DeckFixture.inches(Deck.Start.LEFT)).lay();
    DeckLaws.check(none);
    assertThat(none.problems()).singleElement().matches(p -> p.message().contains("module"));
    DeckPlan wide =
        DeckFixture.of(6, PLAIN, new double[] {0, 130, 480}, DeckFixture.inches(Deck.Start.LEFT))
            .lay();
    DeckLaws.check(wide);
    assertThat(wide.problems()).singleElement().matches(p -> p.message().contains("supports"));
  }

  @Test
  void giveTheSameFiguresTurnedAndMovedFarAway() {
    Ring outline = Ring.of(0, 0, 431, 0, 300, 177, 60, 177);
    double[] stations = DeckFixture.every(24, 12, 420);
    Deck deck = DeckFixture.inches(Deck.Start.LEFT);
    DeckPlan plain = DeckFixture.of(9, outline, stations, deck).lay();
    for (double degrees : new double[] {17, 90, 211.5}) {
      DeckPlan turned =
          DeckFixture.turned(9, outline, stations, deck, degrees, new Point(41000, -73000)).lay();
      List<Piece> a = plain.planes().get(0).pieces();
      List<Piece> b = turned.planes().get(0).pieces();
      assertThat(b).hasSameSizeAs(a);
      for (int i = 0; i < a.size(); i++) {
        assertThat(b.get(i).area()).isCloseTo(a.get(i).area(), within(1e-6));
        assertThat(b.get(i).cut()).isEqualTo(a.get(i).cut());
        assertThat(b.get(i).bounds().middle().distance(a.get(i).bounds().middle()))
            .isLessThan(1e-7);
      }
      assertThat(turned.sheetsBought()).isEqualTo(plain.sheetsBought());
    }
  }

  @Test
  void isTheSameEveryTime() {
    assertThat(plain(Deck.Start.LEAST)).isEqualTo(plain(Deck.Start.LEAST));
  }

  /** Sizes a slip of the keys can leave in a plan. */
  @Test
  void saysWhenSheetsCannotBeLaid() {
    for (Deck deck :
        List.of(
            new Deck(0.5, 0, 96, Deck.Start.LEFT, Extras.NONE),
            new Deck(0.5, 48, -96, Deck.Start.LEFT, Extras.NONE),
            new Deck(-1, 48, 96, Deck.Start.LEFT, Extras.NONE),
            new Deck(0.5, 0.01, 96, Deck.Start.LEFT, Extras.NONE),
            new Deck(0.5, 48, Double.NaN, Deck.Start.LEFT, Extras.NONE))) {
      DeckPlan plan = DeckFixture.of(6, PLAIN, DeckFixture.every(24, 0, 480), deck).lay();
      assertThat(plan.planes()).isEmpty();
      assertThat(plan.problems()).singleElement().matches(p -> p.message().contains("sheets"));
    }
  }

  @Test
  void keepsTheMetricModule() {
    Deck deck = new Deck(12, 1220, 2440, Deck.Start.LEFT, Extras.NONE);
    Ring outline = Ring.of(0, 0, 9760, 0, 9760, 3660, 0, 3660);
    DeckPlan plan = DeckFixture.of(8, outline, DeckFixture.every(610, 0, 9760), deck).lay();
    DeckLaws.check(plan);
    DeckLaws.keepsTheRulesForJoints(plan.planes().get(0));
    assertThat(plan.planes().get(0).courses().get(0).to()).isEqualTo(1220);
    // Area 9760 x 3660 over 1220 x 2440 is 12.
    assertThat(plan.sheetsBought()).isEqualTo(12);
  }
}
