package longpoint.editor.tools;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longpoint.editor.Hand;
import longpoint.editor.Houses;
import longpoint.editor.PartCommands;
import longpoint.editor.Ref;
import longpoint.editor.SideCommands;
import longpoint.geometry.Ring;
import longpoint.plan.Plan;
import longpoint.plan.Reshape.Neighbours;
import longpoint.units.EntryException;
import longpoint.units.LengthChange;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;

/** Sides are moved with their neighbours stretching or swinging, and plates set by each other. */
class SidesTest {
  /** A house whose west wall leans. */
  private static Plan leaning() {
    Plan house = Houses.house();
    return house.withPart(
        house
            .parts()
            .get(0)
            .withShape(
                Ring.of(0, 0, 480, 0, 480, 336, 96, 336), List.of(), house.parts().get(0).edges()));
  }

  @Test
  void neighboursStretchAlongTheirOwnLines() {
    Hand hand =
        new Hand(leaning(), Tools.SELECT).does("press 240 336; drag 240 360; release 240 372");
    // 36 up the leaning wall, which runs 96 over in 336: 36 · 96 / 336.
    assertThat(hand.plan().parts().get(0).outline().corner(3).x())
        .isCloseTo(96 + 36 * 96 / 336.0, org.assertj.core.api.Assertions.within(1e-9));
  }

  @Test
  void withShiftTheySwing() {
    Hand hand =
        new Hand(leaning(), Tools.SELECT)
            .does("press 240 336; drag 240 360 shift; release 240 372 shift");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 480,0 480,372 96,372 | EGEG");
  }

  @Test
  void whatIsSetHoldsWithoutShift() {
    Hand hand = new Hand(leaning(), Tools.SELECT);
    hand.runner().use(hand.runner().settings().withNeighbours(Neighbours.SWING));
    hand.does("press 240 336; drag 240 360; release 240 372");
    assertThat(Hand.print(hand.plan())).containsExactly("main 0,0 480,0 480,372 96,372 | EGEG");
  }

  @Test
  void aWallPulledByATypedLengthTakesItsWingAlong() {
    Hand hand = new Hand(Houses.winged(), Tools.SELECT);
    hand.runner()
        .apply(SideCommands.pull(hand.plan(), new Ref.OfSide("main", 0), 24, Neighbours.STRETCH));
    assertThat(Hand.print(hand.plan()))
        .containsExactly(
            "main 0,-24 480,-24 480,336 0,336 | EGEG",
            "wing 168,-168 312,-168 312,-24 168,-24 | GEOE");
    assertThat(hand.runner().document().undoName())
        .contains("Move the south wall of House by 2'-0\"");
  }

  @Test
  void aWallPulledTooFarInIsRefusedInWords() {
    Hand hand = new Hand(Houses.house(), Tools.SELECT);
    hand.runner()
        .apply(SideCommands.pull(hand.plan(), new Ref.OfSide("main", 0), -400, Neighbours.STRETCH));
    assertThat(hand.runner().refusal()).isPresent();
    assertThat(hand.plan()).isEqualTo(Houses.house());
  }

  @Test
  void platesAreRaisedEachFromItsOwnHeightOrSetByTheFirst() throws EntryException {
    Plan plan = Houses.winged();
    plan = plan.withPart(plan.parts().get(1).withPlateHeight(85));
    Hand hand = new Hand(plan, Tools.SELECT);
    List<String> both = List.of("main", "wing");
    LengthChange foot = LengthChange.read("+1'", LengthUnit.INCH);
    hand.runner().apply(PartCommands.plateHeight(hand.plan(), both, foot));
    assertThat(hand.plan().parts().get(0).plateHeight()).isEqualTo(109.125);
    assertThat(hand.plan().parts().get(1).plateHeight()).isEqualTo(97);
    hand.runner().apply(PartCommands.platesAbove(hand.plan(), both, -18));
    assertThat(hand.plan().parts().get(0).plateHeight()).isEqualTo(109.125);
    assertThat(hand.plan().parts().get(1).plateHeight()).isEqualTo(91.125);
  }
}
