package longpoint.field.chalk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import longpoint.deck.DeckFixture;
import longpoint.deck.DeckPlan;
import longpoint.deck.PlaneDeck;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Deck;
import longpoint.plan.Extras;
import longpoint.planfile.PlanFile;
import longpoint.wording.Language;
import longpoint.wording.Worded;
import org.junit.jupiter.api.Test;

class ChalkTest {
  private static final double HALF = 0.5;
  private static final double[] CHORDS = {192, 144, 96, 48};
  private static final double[] X = {23.219, 47.219, 71.219, 95.219};

  /**
   * A 10 in 12 main plane 40 ft long with a half-inch deck; its fixture's wall is the line y = 0.
   */
  private static DeckPlan main() {
    return DeckFixture.of(
            10,
            Ring.of(0, 0, 480, 0, 480, 260, 0, 260),
            DeckFixture.every(24, 0, 480),
            new Deck(HALF, 48, 96, Deck.Start.LEFT, Extras.NONE))
        .lay();
  }

  /** A 20 ft wing at 10 in 12 whose ridge comes in at u = 240, trusses 24 in apart. */
  private static Overbuild wing() {
    List<Segment> bearings = new ArrayList<>();
    for (int i = 0; i < X.length; i++) {
      bearings.add(segment(240 - CHORDS[i] / 2, X[i], 240 + CHORDS[i] / 2, X[i]));
    }
    return new Overbuild(
        "a/0",
        "Wing",
        segment(240, -17.5, 240, 119.219),
        List.of(segment(240 - 119.219, 0, 240, 119.219), segment(240 + 119.219, 0, 240, 119.219)),
        bearings,
        List.of(segment(240 - 120, 0, 240, 120), segment(240 + 120, 0, 240, 120)),
        1.5);
  }

  private static Segment segment(double x0, double y0, double x1, double y1) {
    return new Segment(new Point(x0, y0), new Point(x1, y1));
  }

  /**
   * Up the deck from its lower edge: 53.421, 84.662, 115.903, 147.144 and the apex at 178.385,
   * worked by hand with plane trigonometry for 10 in 12, half-inch deck, 16 in overhang and 1 1/2
   * in fascia.
   */
  @Test
  void marksAValleySetUpTheDeck() {
    ChalkSheet sheet = Chalk.sheets(main(), List.of(), List.of(wing())).get(0);
    double[] expected = {53.421, 84.662, 115.903, 147.144};
    List<Double> running = sheet.running(ChalkLine.Kind.BEARING);
    assertThat(running).hasSize(4);
    for (int i = 0; i < 4; i++) {
      assertThat(running.get(i)).isCloseTo(expected[i], within(0.001));
      ChalkLine line = sheet.lines(ChalkLine.Kind.BEARING).get(i);
      assertThat(line.diagonal()).isCloseTo(CHORDS[i], within(1e-9));
      // Stop nails one truss thickness down the deck.
      assertThat(sheet.running(ChalkLine.Kind.STOP).get(i))
          .isCloseTo(expected[i] - 1.5, within(0.001));
    }
    ChalkLine set = sheet.lines(ChalkLine.Kind.SET).get(0);
    assertThat(Math.max(set.from().y(), set.to().y())).isCloseTo(178.385, within(0.001));
    // A 45 degree valley in plan: √(119.219² + (119.219/cos)²) with 1/cos = 1.30171.
    assertThat(set.diagonal()).isCloseTo(Math.hypot(119.219, 119.219 * 1.301708), within(0.001));
  }

  @Test
  void snapsCoursesOnTheFrameBeforeAnythingOnTheDeck() {
    ChalkSheet sheet = Chalk.sheets(main(), List.of(), List.of(wing())).get(0);
    assertThat(sheet.running(ChalkLine.Kind.COURSE))
        .containsExactly(48.0, 96.0, 144.0, 192.0, 240.0);
    List<ChalkLine.Kind> kinds = sheet.lines().stream().map(ChalkLine::kind).toList();
    assertThat(kinds).startsWith(ChalkLine.Kind.COURSE).endsWith(ChalkLine.Kind.SHEET);
    assertThat(kinds.lastIndexOf(ChalkLine.Kind.COURSE))
        .isLessThan(kinds.indexOf(ChalkLine.Kind.CENTRE));
    assertThat(sheet.lines(ChalkLine.Kind.COURSE))
        .allSatisfy(l -> assertThat(l.diagonal()).isCloseTo(480, within(1e-9)));
  }

  /**
   * Corner to corner of a rectangle the tapes read alike, by Pythagoras: 480 x 240 gives 536.656.
   */
  @Test
  void aRectangleIsCheckedByEqualTapes() {
    SquareCheck check = Chalk.sheets(main(), List.of(), List.of()).get(0).square().get(0);
    assertThat(check.head().from().y()).isEqualTo(240);
    assertThat(check.tapes())
        .hasSize(2)
        .allSatisfy(t -> assertThat(t.length()).isCloseTo(536.656, within(0.001)));
    assertThat(check.tapes().get(0).from()).isEqualTo(new Point(0, 0));
    assertThat(check.tapes().get(1).from()).isEqualTo(new Point(480, 0));
  }

  /** Hips: the longest course line at least half the fascia long, and tapes that differ. */
  @Test
  void aHipEndIsCheckedByWhatEachTapeReads() {
    DeckPlan plan =
        DeckFixture.of(
                6,
                Ring.of(0, 0, 480, 0, 300, 180, 60, 180),
                DeckFixture.every(24, 0, 480),
                DeckFixture.inches(Deck.Start.LEFT))
            .lay();
    SquareCheck check = Chalk.sheets(plan, List.of(), List.of()).get(0).square().get(0);
    // At 144 up the left edge is 144 x 60/180 = 48 in, the right 480 - 144 = 336.
    assertThat(check.head().from().y()).isEqualTo(144);
    assertThat(check.tapes().get(0).length()).isCloseTo(Math.hypot(336, 144), within(1e-6));
    assertThat(check.tapes().get(1).length()).isCloseTo(Math.hypot(480 - 48, 144), within(1e-6));
    DeckPlan low =
        DeckFixture.of(
                6,
                Ring.of(0, 0, 480, 0, 480, 40, 0, 40),
                DeckFixture.every(24, 0, 480),
                DeckFixture.inches(Deck.Start.LEFT))
            .lay();
    assertThat(Chalk.sheets(low, List.of(), List.of())).isEmpty();
  }

  /**
   * A valley set is checked from the feet of its set lines to its lowest truss: both tapes read
   * alike, by Pythagoras. The feet stand 119.219 out, 23.219 of level run below the first truss,
   * whose half chord is 96.
   */
  @Test
  void aValleySetIsCheckedAcross() {
    List<SquareCheck> checks = Chalk.sheets(main(), List.of(), List.of(wing())).get(0).square();
    assertThat(checks).hasSize(2);
    SquareCheck set = checks.get(1);
    double up = 23.219 * 1.301708;
    assertThat(set.tapes())
        .allSatisfy(
            t -> assertThat(t.length()).isCloseTo(Math.hypot(119.219 + 96, up), within(0.001)));
  }

  @Test
  void marksLookoutsOnTheirOwnRake() {
    Lookouts right = new Lookouts("a/0", segment(480, 0, 480, 260), List.of(20.0, 44.0), 12, 36);
    ChalkSheet sheet = Chalk.sheets(main(), List.of(right), List.of()).get(0);
    ChalkLine first = sheet.lines(ChalkLine.Kind.LOOKOUT).get(0);
    assertThat(List.of(first.from().x(), first.to().x())).containsExactly(444.0, 468.0);
    assertThat(sheet.running(ChalkLine.Kind.LOOKOUT)).containsExactly(20.0, 44.0);
    assertThat(sheet.lines().get(0)).isEqualTo(first);
  }

  /**
   * The garden wing worked by hand: 9 in 12 with a span of 168 on 7 in 12, deck 15/32, overhang 18,
   * fascia 1 1/2, heels 5. The set lines meet at x = (68 - 5.5427)/(7/12) = 107.070, 146.805 up the
   * deck; on the arris half their width is (68 + 5.8323)/0.75 = 98.443, and 98.626 on the deck's
   * lower edge, 0.273 farther down. The gable truss stands 12 in from the rake.
   */
  @Test
  void gardenWingByHand() throws Exception {
    Design design =
        Pipeline.solve(PlanFile.read(Path.of("sample-plans/sable-lane-garden-wing.json")).plan());
    ChalkSheet main =
        design.chalk().stream().filter(s -> s.plane().equals("main/2")).findFirst().orElseThrow();
    ChalkLine left =
        main.lines(ChalkLine.Kind.SET).stream()
            .filter(l -> l.label().in(Language.ENGLISH).endsWith("left"))
            .findFirst()
            .orElseThrow();
    assertThat(left.from().y()).isCloseTo(0, within(1e-9));
    assertThat(left.from().x()).isCloseTo(384 - 98.626, within(0.002));
    assertThat(left.to().x()).isCloseTo(384, within(1e-6));
    assertThat(left.to().y()).isCloseTo(146.805, within(0.002));
    // (24 - 0.930 + 19.5)/0.86378 + 0.273 up; 2 x (68 - 5.5427 - 13.457)/0.75 long.
    ChalkLine first = main.lines(ChalkLine.Kind.BEARING).get(0);
    assertThat(first.from().y()).isCloseTo(49.556, within(0.002));
    assertThat(first.diagonal()).isCloseTo(130.666, within(0.005));
    ChalkSheet wing =
        design.chalk().stream().filter(s -> s.plane().equals("wing/1")).findFirst().orElseThrow();
    ChalkLine lookout = wing.lines(ChalkLine.Kind.LOOKOUT).get(0);
    assertThat(lookout.from().x()).isCloseTo(12, within(1e-9));
    assertThat(lookout.to().x()).isCloseTo(12 + 23.25, within(1e-9));
    assertThat(lookout.from().y()).isCloseTo(20 + 1.5 * 1.25, within(1e-9));
  }

  @Test
  void tapesFromACornerAndBack() {
    PlaneDeck deck = main().planes().get(0);
    for (Datum datum :
        List.of(Datum.of(deck), new Datum(Worded.plain("right rake"), Datum.End.RIGHT, 480))) {
      Point p = new Point(100, 50);
      assertThat(datum.onPlane(datum.taped(p))).isEqualTo(p);
    }
    assertThat(new Datum(Worded.plain("right rake"), Datum.End.RIGHT, 480).taped(new Point(470, 5)))
        .isEqualTo(new Point(10, 5));
  }
}
