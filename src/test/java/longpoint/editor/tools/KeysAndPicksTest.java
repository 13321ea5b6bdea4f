package longpoint.editor.tools;

import static org.assertj.core.api.Assertions.assertThat;

import longpoint.editor.EnglishWords;
import longpoint.editor.GivesWay;
import longpoint.editor.Hand;
import longpoint.editor.Houses;
import longpoint.editor.PlanCommands;
import longpoint.editor.PointerShape;
import longpoint.editor.Ref;
import longpoint.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Keys in the place of a mouse, and picking in every way. Lengths are inches; the grid is 6. */
@ExtendWith(EnglishWords.class)
class KeysAndPicksTest {
  private static Hand on(Plan plan, Tools tool, String script) {
    return new Hand(plan, tool).does(script);
  }

  private static Hand select(String script) {
    return on(Houses.house(), Tools.SELECT, script);
  }

  private static void picked(Hand hand, Ref... refs) {
    assertThat(hand.runner().document().selection().refs()).containsExactly(refs);
  }

  // Drawing without a mouse

  @Test
  void anOutlineIsDrawnByArrowsAndEnterAlone() {
    Hand hand = on(Houses.empty(), Tools.OUTLINE, "enter; right shift; right shift; right; enter");
    hand.does("up shift; up; up; enter; left shift; left shift; left; enter; enter");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 126,0 126,72 0,72 | EEEE");
  }

  @Test
  void theOppositeArrowDrawsTheSideShorterAndEnterAfterALengthCloses() {
    Hand hand =
        on(Houses.empty(), Tools.OUTLINE, "enter; right; right; right; left; type 30'; enter");
    hand.does("up; type 20'; enter; left; type 30'; enter; enter");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 360,0 360,240 0,240 | EEEE");
  }

  @Test
  void pageDownCarriesThePointFromCornerToCornerAndEnterClicks() {
    Hand hand = on(Houses.house(), Tools.RECTANGLE, "next; next; enter");
    hand.does("right shift; down alt; down alt; enter");
    assertThat(Hand.print(hand.plan()).get(1)).startsWith("part 480,334 540,334 540,336 480,336");
  }

  @Test
  void anAdditionIsTypedOntoThePickedSide() {
    Hand hand = select("next; enter");
    picked(hand, Ref.side("main", 0));
    hand.runner().choose(Tools.ADDITION);
    assertThat(hand.runner().status()).contains("the middle of the south wall of House");
    hand.does("type 12' x 8'; enter");
    assertThat(Hand.print(hand.plan()).get(1)).isEqualTo("wing 168,-96 312,-96 312,0 168,0 | GEOE");
  }

  @Test
  void anAdditionIsTypedWhereThePointerIsOnAWall() {
    Hand hand = on(Houses.house(), Tools.ADDITION, "move 120 1; type 8' x 6'; enter");
    assertThat(Hand.print(hand.plan()).get(1)).isEqualTo("wing 72,-72 168,-72 168,0 72,0 | GEOE");
  }

  @Test
  void aCornerIsTypedOntoThePickedSide() {
    Hand hand = select("next; enter");
    hand.runner().choose(Tools.CORNER);
    hand.does("type 10'; enter");
    assertThat(Hand.print(hand.plan()).get(0)).startsWith("main 0,0 120,0 480,0");
  }

  @Test
  void aRectangleTakesItsWidthAndThenItsDepth() {
    Hand hand = on(Houses.empty(), Tools.RECTANGLE, "click 0 0; move 50 50; type 40'; enter");
    assertThat(hand.runner().status()).startsWith("40'-0\" wide.");
    hand.does("type 28'; enter");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 480,0 480,336 0,336 | EGEG");
  }

  @Test
  void aDimensionsSecondEndMayBeTyped() {
    Hand hand = on(Houses.house(), Tools.DIMENSION, "click 0 0; move 60 1; type 10'; enter");
    hand.does("move 60 -40; click 60 -40");
    assertThat(hand.plan().markup().dimensions().get(0).ends(hand.plan()).orElseThrow().length())
        .isEqualTo(120);
  }

  // Picking

  @Test
  void tabGoesDownThroughWhatLiesUnderThePointer() {
    Hand hand = on(Houses.winged(), Tools.SELECT, "move 240 0");
    assertThat(hand.runner().overlay().hover()).contains(Ref.side("main", 0));
    assertThat(hand.runner().status()).endsWith("Tab for what lies beneath.");
    hand.does("tab");
    assertThat(hand.runner().overlay().hover()).contains(Ref.side("wing", 2));
    hand.does("move 241 0; press 241 0; release 241 0");
    picked(hand, Ref.side("wing", 2));
    hand.does("move 240 100; tab; click 240 100");
    picked(hand, Ref.part("main"));
  }

  @Test
  void pageKeysPickThingAfterThingAndEnterGoesIntoAPart() {
    Hand hand = on(Houses.winged(), Tools.SELECT, "next");
    picked(hand, Ref.part("main"));
    picked(hand.does("next"), Ref.part("wing"));
    picked(hand.does("next"), Ref.part("main"));
    picked(hand.does("previous"), Ref.part("wing"));
    picked(hand.does("enter"), Ref.side("wing", 0));
    picked(hand.does("previous"), Ref.side("wing", 3));
    picked(hand.does("enter"), Ref.corner("wing", 3));
    picked(hand.does("enter"), Ref.part("wing"));
  }

  @Test
  void controlAddsWithAClickAndCopiesWithADrag() {
    Hand hand = select("click 240 0; click 240 336 control");
    picked(hand, Ref.side("main", 0), Ref.side("main", 2));
    picked(hand.does("click 240 336 control"), Ref.side("main", 0));
    hand = select("press 240 100 control; drag 900 100 control; release 900 100 control");
    assertThat(Hand.print(hand.plan())).hasSize(2);
    assertThat(hand.runner().document().selection().parts()).doesNotContain("main").hasSize(1);
  }

  @Test
  void aBoxPulledToTheLeftPicksWhatItTouches() {
    Hand hand = select("press 500 100; drag 450 200; release 450 200");
    picked(hand, Ref.side("main", 1));
    picked(select("press 470 -20; drag 500 20; release 500 20"));
  }

  // Moving what is picked

  @Test
  void severalPickedSidesAreDraggedTogether() {
    // The east end of the house, its corner and all, two feet farther.
    Hand hand = select("click 480 100; click 470 336 shift");
    hand = select("click 480 168; press 240 0 shift; release 240 0 shift");
    picked(hand, Ref.side("main", 1), Ref.side("main", 0));
    hand.does("press 480 168; drag 504 192; release 504 192");
    assertThat(Hand.print(hand.plan())).containsExactly("main 24,24 504,24 504,360 0,336 | EGEG");
    hand.runner().undo();
    assertThat(hand.plan()).isEqualTo(Houses.house());
  }

  /** With Shift a click adds; a drag is of that side alone, its neighbours swinging. */
  @Test
  void shiftWhileDraggingASideSwingsItsNeighboursAndAddsNothing() {
    Hand hand =
        select("click 0 168; press 240 336 shift; drag 240 360 shift; release 240 360 shift");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 480,0 480,360 0,360 | EGEG");
    picked(hand, Ref.side("main", 2));
    hand = select("click 0 168; press 480 168 shift; drag 504 190 shift; release 504 190 shift");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 504,0 504,336 0,336 | EGEG");
  }

  @Test
  void aTurnToTheRightIsBelowZero() {
    Hand hand = on(Houses.house(), Tools.TURN, "click 240 168; move 340 68");
    assertThat(hand.runner().overlay().dimensions().get(0).text()).isEqualTo("-45°");
    hand.does("move 340 268");
    assertThat(hand.runner().overlay().dimensions().get(0).text()).isEqualTo("45°");
  }

  @Test
  void howFarThingsAreDraggedIsSaidAcrossAndUp() {
    Hand hand = select("press 240 100; drag 300 40");
    assertThat(hand.runner().status()).startsWith("5'-0\" across, -5'-0\" up.");
  }

  @Test
  void arrowsMoveASideSquareToItselfAndSeveralPressesAreOneUndo() {
    Hand hand = select("click 480 168; right; right; right alt");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 493,0 493,336 0,336 | EGEG");
    hand.does("up");
    assertThat(hand.runner().status()).contains("square to itself");
    assertThat(hand.runner().document().done()).hasSize(1);
    hand.runner().undo();
    assertThat(hand.plan()).isEqualTo(Houses.house());
    hand.runner().redo();
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 493,0 493,336 0,336 | EGEG");
  }

  @Test
  void aWingGoesAlongWithItsWallPushedByKeys() {
    Hand hand = on(Houses.winged(), Tools.SELECT, "click 100 0; down; down");
    assertThat(Hand.print(hand.plan()))
        .containsExactly(
            "main 0,-12 480,-12 480,336 0,336 | EGEG",
            "wing 168,-156 312,-156 312,-12 168,-12 | GEOE");
  }

  @Test
  void stepsOfAnotherThingAreAnUndoOfTheirOwn() {
    Hand hand = select("click 480 168; right; click 240 336; up; up");
    assertThat(hand.runner().document().done()).hasSize(2);
  }

  @Test
  void aLengthTypedWithOneSidePickedIsThatSides() {
    Hand hand = select("click 240 0; type 44'; enter");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 528,0 528,336 0,336 | EGEG");
    hand.runner().use(hand.runner().settings().withGivesWay(GivesWay.START));
    hand.does("type 40' + 3 1/2; enter");
    assertThat(Hand.print(hand.plan()))
        .containsExactly("main 44.5,0 528,0 528,336 44.5,336 | EGEG");
    hand.does("move 900 900");
    assertThat(hand.runner().status()).contains("the end that moves: left");
  }

  @Test
  void figuresTypedWithNoSidePickedSayWhereTheyGo() {
    Hand hand = select("click 240 100; type 4");
    assertThat(hand.runner().status()).contains("Pick one side");
    assertThat(hand.runner().entry()).isEmpty();
  }

  // Ending and taking back

  @Test
  void undoInAGestureTakesItsLastStepBack() {
    Hand hand = on(Houses.house(), Tools.OUTLINE, "click 600 0; click 700 0; click 700 100");
    hand.runner().undo();
    assertThat(hand.runner().engaged()).isTrue();
    hand.does("click 720 60; enter");
    assertThat(Hand.print(hand.plan()).get(1)).startsWith("part 600,0 702,0 720,60");
    hand.runner().undo();
    assertThat(hand.plan()).isEqualTo(Houses.house());
  }

  @Test
  void anOutlineLeftForAnotherToolIsTakenUpAgainByUndo() {
    Hand hand = on(Houses.house(), Tools.OUTLINE, "click 600 0; click 702 0; click 702 102");
    hand.runner().choose(Tools.SELECT);
    assertThat(hand.runner().interrupted()).isTrue();
    hand.does("move 100 100");
    hand.runner().undo();
    assertThat(hand.runner().tool()).isEqualTo(Tools.OUTLINE);
    hand.does("move 600 102; click 600 102; enter");
    assertThat(Hand.print(hand.plan()).get(1)).startsWith("part 600,0 702,0 702,102 600,102");
    // What was done since then goes before it.
    hand.runner().choose(Tools.OUTLINE);
    hand.does("click 600 300; click 702 300");
    hand.runner().choose(Tools.SELECT);
    hand.does("click 240 100; right");
    hand.runner().undo();
    assertThat(hand.runner().tool()).isEqualTo(Tools.SELECT);
  }

  @Test
  void anEditInAPanelLeavesTheOutlineInHand() {
    Hand hand = on(Houses.empty(), Tools.OUTLINE, "click 0 0; click 102 0; click 102 102");
    hand.runner().apply(PlanCommands.title("Orchard Row"));
    assertThat(hand.runner().engaged()).isTrue();
    hand.does("enter");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 102,0 102,102 | EEE");
    assertThat(hand.plan().title()).isEqualTo("Orchard Row");
  }

  @Test
  void redoDropsNothingThatIsBeingDrawn() {
    Hand hand = select("click 240 100; right");
    hand.runner().undo();
    hand.runner().choose(Tools.OUTLINE);
    hand.does("click 600 0; click 700 0");
    hand.runner().redo();
    assertThat(hand.runner().engaged()).isTrue();
    assertThat(hand.plan()).isEqualTo(Houses.house());
  }

  @Test
  void deleteTakesWhatIsPickedWithAnyToolAtRest() {
    Hand hand = on(Houses.house(), Tools.RECTANGLE, "click 600 0; click 700 100; delete");
    assertThat(hand.plan()).isEqualTo(Houses.house());
    hand.does("click 600 0; move 700 100; delete");
    assertThat(hand.runner().engaged()).isTrue();
  }

  // The pointer's shape says what a press would do

  @Test
  void thePointerShowsWhatItIsOver() {
    Hand hand = select("");
    shape(hand, "move 900 900", PointerShape.ARROW);
    shape(hand, "move 240 100", PointerShape.HAND);
    shape(hand, "move 240 0", PointerShape.UP);
    shape(hand, "move 480 100", PointerShape.ACROSS);
    shape(hand, "move 480 336", PointerShape.MOVE);
    hand.runner().choose(Tools.RECTANGLE);
    shape(hand, "move 240 0", PointerShape.CROSS);
    hand.runner().choose(Tools.EDGE);
    shape(hand, "move 240 0", PointerShape.HAND);
  }

  private static void shape(Hand hand, String script, PointerShape shape) {
    assertThat(hand.does(script).runner().shape()).as(script).isEqualTo(shape);
  }
}
