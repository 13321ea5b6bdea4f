package longpoint.editor.tools;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import longpoint.editor.Hand;
import longpoint.editor.Houses;
import longpoint.editor.MarkupCommands;
import longpoint.editor.PartCommands;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.editor.SideCommands;
import longpoint.geometry.Point;
import longpoint.plan.Note;
import longpoint.plan.PlanDimension;
import longpoint.plan.PlanDimension.Along;
import longpoint.plan.PlanDimension.Corner;
import longpoint.plan.Reshape;
import org.junit.jupiter.api.Test;

/** Notes and dimensions, written, placed, dragged and deleted by hand. */
class MarkupToolsTest {
  private static PlanDimension only(Hand hand) {
    assertThat(hand.plan().markup().dimensions()).hasSize(1);
    return hand.plan().markup().dimensions().get(0);
  }

  private static double measures(Hand hand) {
    return only(hand).line(hand.plan()).orElseThrow().length();
  }

  private static Note note(Hand hand) {
    assertThat(hand.plan().markup().notes()).hasSize(1);
    return hand.plan().markup().notes().get(0);
  }

  /** A dimension over the south wall of the house, 60 below it. */
  private static Hand dimensioned() {
    return new Hand(Houses.house(), Tools.DIMENSION)
        .does("click 1 1; click 479 1; move 240 -61; click 240 -60");
  }

  @Test
  void aDimensionBetweenCornersHoldsOnToThem() {
    Hand hand = dimensioned();
    assertThat(only(hand).from()).isEqualTo(new Corner("main", 0));
    assertThat(only(hand).to()).isEqualTo(new Corner("main", 1));
    assertThat(only(hand).offset()).isEqualTo(-60);
    assertThat(measures(hand)).isEqualTo(480);
    hand.runner()
        .apply(
            SideCommands.length(hand.plan(), new Ref.OfSide("main", 0), 500, Reshape.End.FINISH));
    assertThat(measures(hand)).isEqualTo(500);
  }

  @Test
  void aDimensionKeepsItsCornersWhenTheirNumbersChange() {
    Hand hand = dimensioned();
    Reshape.insertCorner(hand.plan().parts().get(0), 0, new Point(100, 0))
        .ifPresent(p -> hand.runner().apply(plan -> commit(plan.withPart(p))));
    assertThat(only(hand).to()).isEqualTo(new Corner("main", 2));
    assertThat(measures(hand)).isEqualTo(480);
  }

  @Test
  void aHalfOfAWallPulledOutTakesItsEndOfTheDimensionAlong() {
    Hand hand = dimensioned();
    Reshape.insertCorner(hand.plan().parts().get(0), 0, new Point(100, 0))
        .flatMap(p -> Reshape.moveSide(p, 1, 48))
        .ifPresent(p -> hand.runner().apply(plan -> commit(plan.withPart(p))));
    Point end = only(hand).to().at(hand.plan()).orElseThrow();
    assertThat(end).isEqualTo(new Point(480, -48));
  }

  private static longpoint.editor.Outcome commit(longpoint.plan.Plan plan) {
    return new longpoint.editor.Outcome.Commit("test", plan);
  }

  @Test
  void aDimensionGoesWithItsPartAndUndoBringsItBack() {
    Hand hand = dimensioned();
    hand.runner().apply(PartCommands.delete(hand.plan(), java.util.List.of("main")));
    assertThat(hand.plan().markup().dimensions()).isEmpty();
    hand.runner().undo();
    assertThat(measures(hand)).isEqualTo(480);
  }

  @Test
  void pulledUpBetweenStaggeredEndsItMeasuresAcross() {
    // From the lower left corner to the upper right one: 480 across and 336 up.
    String ends = "click 0 0; click 480 336; ";
    Hand across = new Hand(Houses.house(), Tools.DIMENSION).does(ends + "click 240 396");
    assertThat(only(across).along()).isEqualTo(Along.ACROSS);
    assertThat(measures(across)).isEqualTo(480);
    Hand up = new Hand(Houses.house(), Tools.DIMENSION).does(ends + "click 540 168");
    assertThat(only(up).along()).isEqualTo(Along.UP);
    assertThat(measures(up)).isEqualTo(336);
    Hand straight = new Hand(Houses.house(), Tools.DIMENSION).does(ends + "click 240 240");
    assertThat(only(straight).along()).isEqualTo(Along.STRAIGHT);
    // Pythagoras: 480² + 336² = 343 296.
    assertThat(measures(straight)).isCloseTo(Math.sqrt(343_296), within(1e-9));
  }

  @Test
  void aTypedLengthSetsTheLineOff() {
    Hand hand =
        new Hand(Houses.house(), Tools.DIMENSION)
            .does("click 0 0; click 480 0; move 240 -30; type 4' + 6; enter");
    assertThat(only(hand).offset()).isEqualTo(-54);
  }

  @Test
  void theLineOfADimensionIsDraggedAndEscapePutsItBack() {
    Hand hand = dimensioned().does("escape; escape; escape");
    hand.does("move 100 -60; press 100 -60; drag 100 -90; release 100 -96");
    assertThat(only(hand).offset()).isEqualTo(-96);
    hand.does("press 100 -96; drag 100 -190; escape; release 100 -190");
    assertThat(only(hand).offset()).isEqualTo(-96);
  }

  @Test
  void anEndOfAPickedDimensionIsDraggedToAnotherCorner() {
    Hand hand = dimensioned().does("escape; escape; escape");
    hand.does("click 100 -60; press 480 0; drag 480 200; release 480 335");
    assertThat(only(hand).to()).isEqualTo(new Corner("main", 2));
    assertThat(hand.plan().parts()).isEqualTo(Houses.house().parts());
  }

  @Test
  void aPickedDimensionIsDeletedAlone() {
    Hand hand = dimensioned().does("escape; escape; escape; click 100 -60; delete");
    assertThat(hand.plan().markup().dimensions()).isEmpty();
    assertThat(hand.plan().parts()).hasSize(1);
  }

  @Test
  void aMovedTurnedOrMirroredHouseTakesItsDimensionAlong() {
    Hand hand = dimensioned();
    java.util.List<String> main = java.util.List.of("main");
    hand.runner().apply(PartCommands.move(hand.plan(), main, new Point(30, 12)));
    assertThat(only(hand).line(hand.plan()).orElseThrow().from()).isEqualTo(new Point(30, -48));
    hand.runner().apply(PartCommands.mirrorAcross(hand.plan(), main));
    // Below the house as before, and still between the ends of its south wall.
    assertThat(only(hand).line(hand.plan()).orElseThrow().middle()).isEqualTo(new Point(270, -48));
    assertThat(measures(hand)).isEqualTo(480);
  }

  @Test
  void aNoteIsPointedPlacedAndWritten() {
    Hand hand =
        new Hand(Houses.house(), Tools.NOTE)
            .does("click 102 0; click 162 -60; type Match existing eave, enter");
    // "enter" above is part of the words: every character is.
    assertThat(hand.plan().markup().notes()).isEmpty();
    hand.does("enter");
    assertThat(note(hand).text()).isEqualTo("Match existing eave, enter");
    assertThat(note(hand).pointsAt()).contains(new Point(102, 0));
    assertThat(note(hand).at()).isEqualTo(new Point(162, -60));
  }

  @Test
  void aNoteOnTheSpotHasNoLeader() {
    Hand hand =
        new Hand(Houses.house(), Tools.NOTE)
            .does("click 96 96; click 96 96; type Attic hatch; enter");
    assertThat(note(hand).pointsAt()).isEmpty();
  }

  @Test
  void aNoteIsRewordedAndWithoutWordsItGoes() {
    Hand hand =
        new Hand(Houses.house(), Tools.NOTE).does("click 96 96; click 96 96; type Hatch; enter");
    String id = note(hand).id();
    hand.runner().apply(MarkupCommands.words(id, "Attic hatch\n22 x 30"));
    assertThat(note(hand).lines()).containsExactly("Attic hatch", "22 x 30");
    hand.runner().apply(MarkupCommands.words(id, "  "));
    assertThat(hand.plan().markup().notes()).isEmpty();
    hand.runner().undo();
    assertThat(note(hand).lines()).hasSize(2);
  }

  @Test
  void theWordsOfANoteAreDraggedAndItsTipStays() {
    Hand hand =
        new Hand(Houses.house(), Tools.NOTE)
            .does("click 102 0; click 162 -60; type Vent; enter; escape; escape");
    hand.runner().select(Selection.NONE);
    hand.does("press 168 -60; drag 190 -80; release 198 -90");
    assertThat(note(hand).at()).isEqualTo(new Point(192, -90));
    assertThat(note(hand).pointsAt()).isEqualTo(Optional.of(new Point(102, 0)));
  }

  @Test
  void wordsThatStandOnAMovedPartGoAlong() {
    Hand hand =
        new Hand(Houses.house(), Tools.NOTE).does("click 96 96; click 96 96; type Hatch; enter");
    hand.runner()
        .apply(PartCommands.move(hand.plan(), java.util.List.of("main"), new Point(12, 0)));
    assertThat(note(hand).at()).isEqualTo(new Point(108, 96));
  }
}
