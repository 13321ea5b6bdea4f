package longpoint.editor.tools;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import longpoint.editor.EnglishWords;
import longpoint.editor.Hand;
import longpoint.editor.Houses;
import longpoint.editor.Ref;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What is drawn, as scripts and the plans that must come of them. Figures worked by hand. */
@ExtendWith(EnglishWords.class)
class DrawingToolsTest {
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

  @Test
  void anOutlineIsClosedByClickingItsStart() {
    Hand hand =
        check(
            Houses.empty(),
            Tools.OUTLINE,
            "click 0 0; click 240 0; click 240 120; click 0 120; click 1 1",
            "main 0,0 240,0 240,120 0,120 | EEEE");
    assertThat(hand.runner().document().undoName()).contains("Draw House");
    assertThat(hand.runner().document().selection().refs()).containsExactly(Ref.part("main"));
    assertThat(hand.runner().state()).isEqualTo(new FirstPoint(OutlineDrawing.BEGINNING));
  }

  @Test
  void enterOrADoubleClickCloseAnOutlineToo() {
    String drawn = "main 0,0 240,0 240,120 | EEE";
    check(Houses.empty(), Tools.OUTLINE, "click 0 0; click 240 0; click 240 120; enter", drawn);
    check(
        Houses.empty(),
        Tools.OUTLINE,
        "click 0 0; click 240 0; click 240 120; click 240 120; double 240 120",
        drawn);
  }

  @Test
  void clockwiseOutlinesAreTurnedRound() {
    check(
        Houses.empty(),
        Tools.OUTLINE,
        "click 0 0; click 0 120; click 240 120; click 240 0; enter",
        "main 240,0 240,120 0,120 0,0 | EEEE");
  }

  @Test
  void typedLengthsAreExactToTheLastBit() {
    // 24'3-1/2" is 24 × 12 + 3.5 = 291.5 in.
    check(
        Houses.empty(),
        Tools.OUTLINE,
        "click 0 0; move 100 1; type 24'3-1/2\"; enter;"
            + "move 291 100; type 12' 6\"; enter;"
            + "move 100 150; type 291.5; enter; enter",
        "main 0,0 291.5,0 291.5,150 0,150 | EEEE");
  }

  @Test
  void aTypedLengthAndAngleNeedNoPointing() {
    check(
        Houses.empty(),
        Tools.OUTLINE,
        "click 0 0; type 20' < 0; enter; type 10' < 90; enter; type 20'<180; enter; enter",
        "main 0,0 240,0 240,120 0,120 | EEEE");
  }

  @Test
  void sidesPulledNearlySquareAreSquareAndAltOrShiftLetGo() {
    String rest = "; click 240 %s; click 0 240; enter";
    check(
        Houses.empty(),
        Tools.OUTLINE,
        "click 0 0; click 240 7" + rest.formatted("240"),
        "main 0,0 240,0 240,240 0,240 | EEEE");
    // The next side is in whole steps of 6 from there: 7 + 234.
    check(
        Houses.empty(),
        Tools.OUTLINE,
        "click 0 0; click 240 7 alt" + rest.formatted("240"),
        "main 0,0 240,7 240,241 0,241 | EEEE");
    // Shift leaves the grid: 7 rounds to the 6 in step.
    check(
        Houses.empty(),
        Tools.OUTLINE,
        "click 0 0; click 240 7 shift" + rest.formatted("240"),
        "main 0,0 240,6 240,240 0,240 | EEEE");
  }

  @Test
  void backspaceAndEscapeTakeBackOneCornerAtATime() {
    String start = "click 0 0; click 240 0; click 240 120; click 60 60;";
    check(
        Houses.empty(),
        Tools.OUTLINE,
        start + "backspace; click 0 120; enter",
        "main 0,0 240,0 240,120 0,120 | EEEE");
    check(
        Houses.empty(),
        Tools.OUTLINE,
        start + "escape; click 0 120; enter",
        "main 0,0 240,0 240,120 0,120 | EEEE");
    Hand hand = new Hand(Houses.empty(), Tools.OUTLINE).does(start);
    hand.does("escape; escape; escape; escape");
    assertThat(hand.runner().tool()).isEqualTo(Tools.OUTLINE);
    assertThat(hand.runner().state()).isInstanceOf(FirstPoint.class);
    hand.does("escape");
    assertThat(hand.runner().tool()).isEqualTo(Tools.SELECT);
  }

  @Test
  void anOutlineThatCannotStandIsRefusedAndNothingIsLost() {
    Hand hand =
        refused(
            Houses.empty(),
            Tools.OUTLINE,
            "click 0 0; click 240 0; click 0 120; click 240 120; enter",
            "cross");
    assertThat(hand.runner().state()).isInstanceOf(OutlineDrawing.class);
    hand.does("backspace; backspace; click 240 120; click 0 120; enter");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 240,0 240,120 0,120 | EEEE");
    refused(Houses.empty(), Tools.OUTLINE, "click 0 0; click 240 0; enter", "three corners");
    refused(
        Houses.empty(), Tools.OUTLINE, "click 0 0; click 240 0; click 120 0; enter", "one line");
  }

  @Test
  void theStatusShowsLengthAndAngleOfTheSideBeingDrawn() {
    Hand hand = new Hand(Houses.empty(), Tools.OUTLINE).does("click 0 0; click 240 0; move 240 90");
    assertThat(hand.runner().status()).contains("7'-6\"").contains("90°");
    assertThat(hand.runner().overlay().dimensions().get(1).text()).isEqualTo("7'-6\"");
  }

  @Test
  void laterPartsAreNumberedAndTakeAfterTheOneBefore() {
    Plan house = Houses.house();
    Plan tall = house.withPart(house.parts().get(0).withPlateHeight(120));
    Hand hand =
        check(
            tall,
            Tools.OUTLINE,
            "click 600 0; click 720 0; click 720 120; enter;"
                + "click 600 600; click 720 600; click 720 720; enter",
            HOUSE,
            "part 600,0 720,0 720,120 | EEE",
            "part-2 600,600 720,600 720,720 | EEE");
    assertThat(hand.plan().parts()).extracting("name").containsExactly("House", "Part", "Part 2");
    assertThat(hand.plan().parts()).extracting("plateHeight").containsOnly(120.0);
  }

  @Test
  void anOutlineCanBeDrawnFromTheKeyboardAlone() {
    check(
        Houses.empty(),
        Tools.OUTLINE,
        "enter; right; type 24'3-1/2\"; enter; up; type 12'6; enter; left; type 24'3-1/2\"; enter;"
            + "enter",
        "main 0,0 291.5,0 291.5,150 0,150 | EEEE");
  }

  @Test
  void theRoofToBeShowsWhileTheOutlineIsDrawn() {
    Hand hand = new Hand(Houses.empty(), Tools.OUTLINE).does("click 0 0; click 240 0");
    assertThat(hand.runner().previewing()).isFalse();
    hand.does("move 240 120");
    assertThat(Hand.print(hand.runner().shown())).containsExactly("main 0,0 240,0 240,120 | EEE");
    hand.does("click 240 120; move 0 120");
    assertThat(hand.runner().shown().parts().get(0).sideCount()).isEqualTo(4);
    // Where it could not close there is nothing to show.
    hand.does("move 120 -60");
    assertThat(hand.runner().previewing()).isFalse();
    assertThat(hand.plan().parts()).isEmpty();
  }

  // Typing

  @Test
  void typedFiguresShowWhatEnterWouldMake() {
    Hand hand = new Hand(Houses.empty(), Tools.RECTANGLE).does("click 0 0; type 20' x 1");
    assertThat(Hand.print(hand.runner().shown()))
        .containsExactly("main 0,0 240,0 240,1 0,1 | EGEG");
    hand.does("type 0'");
    String part = "main 0,0 240,0 240,120 0,120 | EGEG";
    assertThat(Hand.print(hand.runner().shown())).containsExactly(part);
    assertThat(hand.runner().document().done()).isEmpty();
    hand.does("type -");
    assertThat(hand.runner().previewing()).isFalse();
    hand.does("backspace; enter");
    assertThat(Hand.print(hand.plan())).containsExactly(part);
  }

  @Test
  void theStatusSaysHowTypedFiguresAreRead() {
    Hand hand = new Hand(Houses.empty(), Tools.OUTLINE).does("click 0 0; move 90 0");
    assertThat(hand.does("type 24'3-1/2").runner().status()).contains("Enter to take 24'-3 1/2\"");
    hand.does("enter; type 10' < 22.5");
    assertThat(hand.runner().status()).contains("Enter to take 10'-0\" < 22.5°");
  }

  @Test
  void aTypedSideShowsBeforeItIsDrawn() {
    Hand hand = new Hand(Houses.empty(), Tools.OUTLINE).does("click 0 0; move 90 0; type 20'");
    assertThat(hand.runner().overlay().lines())
        .anyMatch(l -> l.at().to().equals(new Point(240, 0)));
    hand.does("escape");
    assertThat(hand.runner().overlay().lines())
        .noneMatch(l -> l.at().to().equals(new Point(240, 0)));
  }

  @Test
  void aSizeTypedStraightAwayStartsAtThePointerOrAtZero() {
    check(
        Houses.empty(),
        Tools.RECTANGLE,
        "type 40' x 28'; enter",
        "main 0,0 480,0 480,336 0,336 | EGEG");
    check(
        Houses.empty(),
        Tools.RECTANGLE,
        "move 60 61; type 40' x 28'; enter",
        "main 60,60 540,60 540,396 60,396 | EGEG");
  }

  // Rectangle

  @Test
  void aRectangleHasEavesAlongItsLongerSides() {
    String wide = "main 0,0 360,0 360,240 0,240 | EGEG";
    check(Houses.empty(), Tools.RECTANGLE, "click 0 0; click 361 239", wide);
    check(Houses.empty(), Tools.RECTANGLE, "click 360 240; click 0 0", wide);
    check(Houses.empty(), Tools.RECTANGLE, "press 0 0; drag 100 100; release 360 240", wide);
    check(
        Houses.empty(),
        Tools.RECTANGLE,
        "click 0 0; click 240 360",
        "main 0,0 240,0 240,360 0,360 | GEGE");
  }

  @Test
  void aTypedSizeLiesTowardThePointer() {
    check(
        Houses.empty(),
        Tools.RECTANGLE,
        "click 0 0; move -50 30; type 24'3-1/2\" x 30'; enter",
        "main -291.5,0 0,0 0,360 -291.5,360 | GEGE");
    check(
        Houses.empty(),
        Tools.RECTANGLE,
        "click 0 0; type 40' x 28'; enter",
        "main 0,0 480,0 480,336 0,336 | EGEG");
  }

  @Test
  void badTextIsKeptAndExplained() {
    Hand hand = new Hand(Houses.empty(), Tools.RECTANGLE);
    hand.does("click 0 0; move 10 10; type 24' x fish; enter");
    assertThat(hand.runner().entry()).isEqualTo("24' x fish");
    assertThat(hand.runner().entryProblem()).isPresent();
    assertThat(hand.runner().status()).isEqualTo(hand.runner().entryProblem().get());
    hand.does("backspace; backspace; backspace; backspace; type 30'; enter");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 288,0 288,360 0,360 | GEGE");
    assertThat(hand.runner().entry()).isEmpty();
  }

  @Test
  void aFlatRectangleIsRefused() {
    refused(Houses.empty(), Tools.RECTANGLE, "click 0 0; click 240 1", "width and a depth");
  }

  @Test
  void thePreviewShowsThePartBeforeItIsThere() {
    Hand hand = new Hand(Houses.empty(), Tools.RECTANGLE).does("click 0 0; move 240 120");
    assertThat(hand.plan().parts()).isEmpty();
    assertThat(hand.runner().previewing()).isTrue();
    assertThat(hand.runner().shown().parts()).hasSize(1);
    hand.does("escape");
    assertThat(hand.runner().shown().parts()).isEmpty();
  }

  // Addition

  @Test
  void theTapeReadsBetweenTwoPointsAndLeavesThePlanAlone() {
    Hand hand = new Hand(Houses.house(), Tools.MEASURE).does("click 1 1; click 480 335");
    // 480 by 336 is 585.92 in on the diagonal: 48'-9 15/16".
    assertThat(hand.runner().status()).contains("48'-9 15/16\"", "40'-0\"", "28'-0\"", "35°");
    assertThat(hand.runner().overlay().dimensions()).hasSize(1);
    assertThat(hand.runner().document().done()).isEmpty();
    assertThat(hand.runner().overlay().lines())
        .anyMatch(l -> l.at().to().equals(new Point(480, 336)));
  }
}
