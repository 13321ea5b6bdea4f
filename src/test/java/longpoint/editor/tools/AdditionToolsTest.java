package longpoint.editor.tools;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import longpoint.editor.EnglishWords;
import longpoint.editor.Hand;
import longpoint.editor.Houses;
import longpoint.plan.Join;
import longpoint.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What is drawn, as scripts and the plans that must come of them. Figures worked by hand. */
@ExtendWith(EnglishWords.class)

/** Additions pulled out of walls, and courtyards cut into houses. */
class AdditionToolsTest {
  private static final String HOUSE = "main 0,0 480,0 480,336 0,336 | EGEG";

  private static Hand check(Plan plan, Tools tool, String script, String... parts) {
    Hand hand = new Hand(plan, tool).does(script);
    assertThat(Hand.print(hand.plan())).isEqualTo(Arrays.asList(parts));
    return hand;
  }

  private static Hand refused(Plan plan, Tools tool, String script, String words) {
    Hand hand = new Hand(plan, tool).does(script);
    assertThat(hand.plan()).isSameAs(plan);
    assertThat(hand.runner().status()).contains(words);
    return hand;
  }

  // Outline

  private static final String WING = "wing 168,-144 312,-144 312,0 168,0 | GEOE";

  @Test
  void anAdditionIsPulledOutOfAWallAndRunsOnOverTheHouse() {
    Hand hand =
        check(
            Houses.house(),
            Tools.ADDITION,
            "press 168 1; drag 200 -50; drag 312 -144; release 312 -144",
            HOUSE,
            WING);
    assertThat(hand.plan()).isEqualTo(Houses.winged());
    assertThat(hand.plan().joins()).containsExactly(Join.overlay("wing", "main"));
    assertThat(hand.runner().document().undoName()).contains("Draw Wing");
  }

  @Test
  void anAdditionMayBeClickedOrTyped() {
    check(Houses.house(), Tools.ADDITION, "click 312 0; click 168 -144", HOUSE, WING);
    check(
        Houses.house(),
        Tools.ADDITION,
        "click 168 0; move 200 -30; type 12' x 12'; enter",
        HOUSE,
        WING);
    check(
        Houses.house(), Tools.ADDITION, "click 168 0; move 312 -30; type 12'; enter", HOUSE, WING);
    // Straight out from the middle of the wall, the press is the middle of the wing.
    check(Houses.house(), Tools.ADDITION, "click 241 0; type 12' x 12'; enter", HOUSE, WING);
  }

  @Test
  void anAdditionOnAnyWallTurnsWithIt() {
    check(
        Houses.house(),
        Tools.ADDITION,
        "press 480 96; drag 600 240; release 600 240",
        HOUSE,
        "wing 600,96 600,240 480,240 480,96 | GEOE");
  }

  @Test
  void anAdditionStaysOnItsWall() {
    check(
        Houses.house(),
        Tools.ADDITION,
        "press 360 0; drag 700 -96; release 700 -96",
        HOUSE,
        "wing 360,-96 480,-96 480,0 360,0 | GEOE");
    refused(
        Houses.house(),
        Tools.ADDITION,
        "click 360 0; move 400 -30; type 12' x 12'; enter",
        "This wall is 40'-0\" long");
    refused(Houses.house(), Tools.ADDITION, "click 240 150", "Press on a wall");
    refused(Houses.house(), Tools.ADDITION, "click 168 0; click 300 60", "Pull away");
  }

  // Courtyard

  @Test
  void aCourtyardIsCutBetweenTheWalls() {
    Hand hand =
        check(
            Houses.house(),
            Tools.COURTYARD,
            "click 192 120; click 288 216",
            "main 0,0 480,0 480,336 0,336 | 192,216 288,216 288,120 192,120 | EGEGEEEE");
    assertThat(hand.runner().document().undoName()).contains("Cut courtyard in House");
  }

  @Test
  void aCourtyardOverAWallIsRefused() {
    refused(Houses.house(), Tools.COURTYARD, "click 192 120; click 600 216", "clear of its walls");
    refused(Houses.house(), Tools.COURTYARD, "click 0 0; click 96 96", "clear of its walls");
    refused(Houses.courtyard(), Tools.COURTYARD, "click 96 60; click 384 276", "clear of its");
  }

  // Tape
}
