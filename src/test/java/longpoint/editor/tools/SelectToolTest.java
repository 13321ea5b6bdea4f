package longpoint.editor.tools;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import longpoint.editor.EnglishWords;
import longpoint.editor.Hand;
import longpoint.editor.Houses;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Picking and dragging, as scripts and what must come of them. Figures worked by hand. */
@ExtendWith(EnglishWords.class)
class SelectToolTest {
  private static Hand on(Plan plan, String script) {
    return new Hand(plan, Tools.SELECT).does(script);
  }

  private static void picked(Hand hand, Ref... refs) {
    assertThat(hand.runner().document().selection().refs()).containsExactly(refs);
  }

  // Picking

  @Test
  void aClickPicksTheNearestCornerThenSideThenPart() {
    picked(on(Houses.house(), "click 478 3"), Ref.corner("main", 1));
    picked(on(Houses.house(), "click 240 3"), Ref.side("main", 0));
    picked(on(Houses.house(), "click 240 30"), Ref.part("main"));
    picked(on(Houses.house(), "click 240 30; click 900 900"));
    // A courtyard is not part of the part, but its walls are.
    picked(on(Houses.courtyard(), "click 240 168"));
    picked(on(Houses.courtyard(), "click 193 168"), Ref.side("main", 7));
  }

  @Test
  void shiftAddsAndTakesAway() {
    Hand hand = on(Houses.house(), "click 240 0; click 240 336 shift; click 0 168 shift");
    picked(hand, Ref.side("main", 0), Ref.side("main", 2), Ref.side("main", 3));
    hand.does("click 240 336 shift");
    picked(hand, Ref.side("main", 0), Ref.side("main", 3));
    hand.does("press 900 900 shift; release 900 900 shift");
    picked(hand, Ref.side("main", 0), Ref.side("main", 3));
  }

  @Test
  void aBoxPicksWhatLiesWhollyInside() {
    picked(on(Houses.winged(), "press 100 -200; drag 300 -9; release 350 5"), Ref.part("wing"));
    picked(
        on(Houses.winged(), "press -20 -10; drag 0 0; release 500 20"),
        Ref.side("main", 0),
        Ref.side("wing", 2));
    picked(
        on(Houses.winged(), "press -20 -200; release 500 400"), Ref.part("main"), Ref.part("wing"));
    Hand hand = on(Houses.winged(), "click 0 168; press 100 -200 shift; release 350 5 shift");
    picked(hand, Ref.side("main", 3), Ref.part("wing"));
  }

  @Test
  void escapeLetsGoOfWhatIsPicked() {
    picked(on(Houses.house(), "click 240 30; escape"));
  }

  // Dragging

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # a corner, held square to its walls, then free of everything
          press 480 336; drag 490 340; release 541 337        | main 0,0 480,0 540,336 0,336 / EGEG
          press 480 336; drag 490 340; release 541 400 alt    | main 0,0 480,0 541,400 0,336 / EGEG
          # a whole side, in whole steps; only the pull square to it counts
          press 100 0; drag 100 -20; release 300 -49          | main 0,-48 480,-48 480,336 0,336 / EGEG
          press 480 100; drag 500 100; release 397 250        | main 0,0 396,0 396,336 0,336 / EGEG
          press 480 100; drag 500 100; release 397.5 250 alt  | main 0,0 397.5,0 397.5,336 0,336 / EGEG
          # the whole part, by the corner nearest to the hand
          press 100 100; drag 200 100; release 161 40         | main 60,-60 540,-60 540,276 60,276 / EGEG
          # an unsteady click
          press 480 336; drag 482 337; release 483 338        | main 0,0 480,0 480,336 0,336 / EGEG
          press 480 336; drag 600 400; release 482 337        | main 0,0 480,0 480,336 0,336 / EGEG
          """)
  void whatIsHeldIsDragged(String script, String part) {
    assertThat(Hand.print(on(Houses.house(), script).plan()))
        .containsExactly(part.replace('/', '|'));
  }

  @Test
  void aTypedLengthFinishesADragExactly() {
    Hand hand = on(Houses.house(), "press 480 100; drag 560 100; type 24'3-1/2\"; enter");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 771.5,0 771.5,336 0,336 | EGEG");
    // The button that is still down moves nothing more.
    hand.does("drag 900 100; release 900 100");
    assertThat(hand.runner().document().done()).hasSize(1);
    hand = on(Houses.house(), "press 100 100; drag 200 101; type 10'; enter; release 200 101");
    assertThat(Hand.print(hand.plan())).containsExactly("main 120,0 600,0 600,336 120,336 | EGEG");
    hand = on(Houses.house(), "press 0 0; drag -50 -1; type 30; enter; release -50 0");
    assertThat(Hand.print(hand.plan())).containsExactly("main -30,0 480,0 480,336 0,336 | EGEG");
  }

  @Test
  void aSideStopsInLineWithOtherWalls() {
    // The wing's south wall comes in line with nothing but the main south wall at y = 0.
    Hand hand = on(Houses.winged(), "press 312 -70; drag 330 -70; drag 478 -70");
    assertThat(hand.runner().overlay().snap().orElseThrow().reason())
        .isEqualTo("in line with the east wall of House");
    hand.does("release 478 -70");
    assertThat(Hand.print(hand.plan()).get(1))
        .isEqualTo("wing 168,-144 480,-144 480,0 168,0 | GEOE");
    picked(hand, Ref.side("wing", 1));
  }

  @Test
  void anAdditionGoesAlongWithTheWallItStandsAgainst() {
    Hand hand = on(Houses.winged(), "press 60 0; drag 60 -20; release 60 -36");
    assertThat(Hand.print(hand.plan()))
        .containsExactly(
            "main 0,-36 480,-36 480,336 0,336 | EGEG",
            "wing 168,-180 312,-180 312,-36 168,-36 | GEOE");
    hand.does("press 60 336; drag 60 350; release 60 372");
    assertThat(Hand.print(hand.plan()).get(1))
        .isEqualTo("wing 168,-180 312,-180 312,-36 168,-36 | GEOE");
  }

  @Test
  void anAdditionGoesAlongWithItsHouseButNotTheHouseWithIt() {
    Hand hand = on(Houses.winged(), "press 60 160; drag 80 160; release 120 160");
    assertThat(Hand.print(hand.plan()))
        .containsExactly(
            "main 60,0 540,0 540,336 60,336 | EGEG", "wing 228,-144 372,-144 372,0 228,0 | GEOE");
    hand.does("press 300 -60; drag 280 -60; release 270 -60");
    assertThat(Hand.print(hand.plan()))
        .containsExactly(
            "main 60,0 540,0 540,336 60,336 | EGEG", "wing 198,-144 342,-144 342,0 198,0 | GEOE");
  }

  @Test
  void halfASplitSidePulledOutStaysPicked() {
    Hand hand = new Hand(Houses.house(), Tools.CORNER).does("click 240 0");
    hand.runner().choose(Tools.SELECT);
    hand.does("press 360 0; drag 360 -30; release 360 -48");
    assertThat(Hand.print(hand.plan()))
        .containsExactly("main 0,0 240,0 240,-48 480,-48 480,336 0,336 | EEEGEG");
    picked(hand, Ref.side("main", 2));
  }

  @Test
  void controlDragsACopy() {
    Hand hand = on(Houses.house(), "press 100 100; drag 300 100; release 700 101 control");
    assertThat(Hand.print(hand.plan()))
        .containsExactly(
            "main 0,0 480,0 480,336 0,336 | EGEG", "main-2 600,0 1080,0 1080,336 600,336 | EGEG");
    assertThat(hand.plan().parts().get(1).name()).isEqualTo("House 2");
  }

  @Test
  void partsPickedTogetherAreDraggedTogether() {
    Hand hand = on(Houses.winged(), "press -20 -200; release 500 400; press 100 100");
    hand.does("drag 200 200; release 160 100");
    assertThat(Hand.print(hand.plan()))
        .containsExactly(
            "main 60,0 540,0 540,336 60,336 | EGEG", "wing 228,-144 372,-144 372,0 228,0 | GEOE");
  }

  @Test
  void whereTheHandWentBetweenMakesNoDifference() {
    Random random = new Random(17);
    for (String held : List.of("480 336", "480 100", "100 100", "192 120", "240 216")) {
      for (int i = 0; i < 60; i++) {
        String end = random.nextInt(900) + " " + (random.nextInt(800) - 200);
        String straight = "press " + held + "; release " + end;
        StringBuilder wandering = new StringBuilder("press " + held);
        for (int k = 0; k < 5; k++) {
          wandering.append("; drag " + random.nextInt(900) + " " + (random.nextInt(800) - 200));
        }
        wandering.append("; drag " + end + "; release " + end);
        Plan one = on(Houses.courtyard(), straight).plan();
        Plan other = on(Houses.courtyard(), wandering.toString()).plan();
        assertThat(other).as("%s to %s", held, end).isEqualTo(one);
      }
    }
  }

  @Test
  void thePreviewIsWhatLettingGoCommits() {
    Hand hand = on(Houses.house(), "press 480 100; drag 500 100; drag 530 100");
    Plan preview = hand.runner().shown();
    assertThat(preview).isNotEqualTo(hand.plan());
    hand.does("release 530 100");
    assertThat(hand.plan()).isEqualTo(preview);
  }

  @Test
  void escapePutsADragBack() {
    Plan house = Houses.house();
    Hand hand = on(house, "press 480 100; drag 530 100; escape; drag 560 100; release 560 100");
    assertThat(hand.plan()).isSameAs(house);
    assertThat(hand.runner().shown()).isSameAs(house);
  }

  @Test
  void aSidePushedThroughTheFarWallIsRefused() {
    Plan house = Houses.house();
    Hand hand = on(house, "press 480 100; drag 300 100; release -60 100");
    assertThat(hand.plan()).isSameAs(house);
    assertThat(hand.runner().status()).contains("could not close");
  }

  // Keys

  @Test
  void deleteTakesAwayWhatIsPicked() {
    assertThat(on(Houses.winged(), "click 240 -70; delete").plan()).isEqualTo(Houses.house());
    assertThat(Hand.print(on(Houses.house(), "click 480 336; delete").plan()))
        .containsExactly("main 0,0 480,0 0,336 | EGG");
    assertThat(on(Houses.courtyard(), "click 193 150; delete").plan()).isEqualTo(Houses.house());
    Hand wall = on(Houses.house(), "click 240 0; delete");
    assertThat(wall.plan()).isEqualTo(Houses.house());
    assertThat(wall.runner().status()).contains("A wall cannot go by itself");
  }

  @Test
  void arrowKeysMovePickedPartsByTheGrid() {
    Hand hand = on(Houses.house(), "click 240 150; right; right; up; left; down; down");
    assertThat(Hand.print(hand.plan())).containsExactly("main 6,-6 486,-6 486,330 6,330 | EGEG");
    picked(hand, Ref.part("main"));
  }

  @Test
  void handlesStandAtCornersAndMiddlesOfWhatIsPicked() {
    Hand hand = on(Houses.house(), "");
    assertThat(hand.runner().overlay().handles()).isEmpty();
    hand.runner().select(Selection.of(Ref.part("main")));
    assertThat(hand.runner().overlay().handles()).hasSize(8);
    hand.does("move 240 1");
    assertThat(hand.runner().overlay().hover()).contains(Ref.side("main", 0));
    assertThat(hand.runner().status()).contains("the south wall of House");
  }
}
