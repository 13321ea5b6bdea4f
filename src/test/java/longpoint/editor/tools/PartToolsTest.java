package longpoint.editor.tools;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import longpoint.editor.EnglishWords;
import longpoint.editor.Hand;
import longpoint.editor.Houses;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.plan.EdgeKind;
import longpoint.plan.Join;
import longpoint.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tools that change sides and whole parts. Figures worked by hand. */
@ExtendWith(EnglishWords.class)
class PartToolsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          MOVE   | click 0 0; click 100 1                       | 102,0 582,0 582,336 102,336
          MOVE   | click 0 0; move 90 1; type 24'3-1/2\\"; enter | 291.5,0 771.5,0 771.5,336 291.5,336
          MOVE   | click 0 0; type 5' < 90; enter               | 0,60 480,60 480,396 0,396
          MOVE   | press 0 0; drag 9 9; release 102 0           | 102,0 582,0 582,336 102,336
          TURN   | click 0 0; click 0 60                        | 0,0 0,480 -336,480 -336,0
          TURN   | click 0 0; type 90; enter                    | 0,0 0,480 -336,480 -336,0
          TURN   | click 480 0; type -90°; enter                | 480,480 480,0 816,0 816,480
          TURN   | click 240 168; type 180; enter               | 480,336 0,336 0,0 480,0
          MIRROR | click 480 0; click 480 60                    | 960,336 480,336 480,0 960,0
          MIRROR | click 480 0; type 90; enter                  | 960,336 480,336 480,0 960,0
          CORNER | click 240 1                                  | 0,0 240,0 480,0 480,336 0,336
          CORNER | move 100 1; type 8' 1/2\\"; enter             | 0,0 96.5,0 480,0 480,336 0,336
          CORNER | move 400 1; type 8' 1/2\\"; enter             | 0,0 383.5,0 480,0 480,336 0,336
          """)
  void oneHouseIsChanged(Tools tool, String script, String corners) {
    Hand hand = new Hand(Houses.house(), tool).does(script.replace("\\\"", "\""));
    assertThat(Hand.print(hand.plan())).hasSize(1);
    assertThat(Hand.print(hand.plan()).get(0)).startsWith("main " + corners + " |");
    assertThat(hand.runner().document().done()).hasSize(1);
  }

  @Test
  void bothHalvesOfASplitSideKeepItsEdge() {
    Hand hand = new Hand(Houses.house(), Tools.CORNER).does("click 480 100");
    assertThat(Hand.print(hand.plan()))
        .containsExactly("main 0,0 480,0 480,102 480,336 0,336 | EGGEG");
    assertThat(hand.runner().document().undoName()).contains("Split the east wall of House");
  }

  @Test
  void aSplitBeyondTheSideIsRefused() {
    Hand hand = new Hand(Houses.house(), Tools.CORNER).does("move 100 1; type 41'; enter");
    assertThat(hand.runner().status()).contains("only 40'-0\" long");
    assertThat(hand.plan().parts().get(0).sideCount()).isEqualTo(4);
    hand.does("click 1 1");
    assertThat(hand.runner().status()).contains("corner here already");
  }

  @Test
  void aCopyHasItsOwnIdAndNameAndItsJoins() {
    Hand hand = new Hand(Houses.winged(), Tools.COPY);
    hand.runner().select(Selection.of(Ref.part("main"), Ref.part("wing")));
    hand.does("click 0 0; move 90 0; type 60'; enter");
    Plan plan = hand.plan();
    assertThat(plan.parts()).extracting("id").containsExactly("main", "wing", "main-2", "wing-2");
    assertThat(plan.parts()).extracting("name").endsWith("House 2", "Wing 2");
    assertThat(plan.joins())
        .containsExactly(Join.overlay("wing", "main"), Join.overlay("wing-2", "main-2"));
    assertThat(plan.part("wing-2").orElseThrow().outline().corner(0).x()).isEqualTo(168 + 720);
  }

  @Test
  void withNothingPickedAGestureAsksForAPart() {
    Hand hand = new Hand(Houses.winged(), Tools.MOVE).does("click 900 900");
    assertThat(hand.runner().status()).contains("Point at a part");
    hand.does("click 240 -70; click 300 -70");
    assertThat(hand.plan().part("wing").orElseThrow().outline().corner(0).x()).isNotEqualTo(168);
    assertThat(hand.plan().part("main")).isEqualTo(Houses.winged().part("main"));
  }

  // Edge kinds

  @Test
  void clicksGoRoundTheKinds() {
    Hand hand = new Hand(Houses.house(), Tools.EDGE);
    String corners = "main 0,0 480,0 480,336 0,336 | ";
    for (String kinds : new String[] {"GGEG", "AGEG", "EGEG"}) {
      hand.does("click 240 1");
      assertThat(Hand.print(hand.plan())).containsExactly(corners + kinds);
    }
    assertThat(hand.runner().document().done())
        .first()
        .isEqualTo("Make the south wall of House gable");
  }

  @Test
  void aChosenKindIsSetAndNothingIsDoneTwice() {
    Hand hand = new Hand(Houses.house(), Tools.EDGE);
    hand.runner().use(hand.runner().settings().withEdgeKind(Optional.of(EdgeKind.GABLE)));
    hand.does("click 240 1; click 240 1; click 480 168");
    assertThat(hand.runner().document().done()).hasSize(1);
    assertThat(Hand.print(hand.plan()).get(0)).endsWith("GGEG");
  }

  @Test
  void pickedSidesAreSetTogether() {
    Hand hand = new Hand(Houses.house(), Tools.EDGE);
    hand.runner().select(Selection.of(Ref.side("main", 1), Ref.side("main", 3)));
    hand.does("move 480 168");
    assertThat(hand.runner().status()).contains("the east wall of House", "abutment");
    hand.does("click 480 168");
    assertThat(Hand.print(hand.plan()).get(0)).endsWith("EAEA");
    hand.does("click 240 0");
    assertThat(Hand.print(hand.plan()).get(0)).endsWith("GAEA");
  }
}
