package longpoint.editor.tools;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import longpoint.editor.Hand;
import longpoint.editor.Houses;
import longpoint.geometry.Point;
import longpoint.plan.Backdrop;
import longpoint.plan.EncodedImage;
import longpoint.plan.Extras;
import longpoint.plan.Plan;
import org.junit.jupiter.api.Test;

/** The picture behind the plan is fitted by two points, moved, locked and deleted. */
class PictureToolsTest {
  private static Plan pictured(Backdrop.State state) {
    EncodedImage image = new EncodedImage(EncodedImage.Type.PNG, 400, 300, new byte[] {1});
    Backdrop picture =
        new Backdrop("survey.png", image, new Point(600, 0), 2, 0, 0.5, state, Extras.NONE);
    Plan house = Houses.house();
    return house.withMarkup(house.markup().withBackdrop(Optional.of(picture)));
  }

  private static Hand hand(longpoint.editor.Tool tool) {
    return new Hand(pictured(Backdrop.State.LOOSE), tool);
  }

  private static Backdrop picture(Hand hand) {
    return hand.plan().markup().backdrop().orElseThrow();
  }

  @Test
  void twoPointsAndALengthSetTheScale() {
    // 203 apart on the picture as it lies; truly 20' 3 1/2", typed as a sum.
    Hand hand =
        hand(PictureTools.SCALE).does("click 701 50; click 904 50; type 20' + 3 1/2; enter");
    assertThat(picture(hand).scale()).isCloseTo(2 * 243.5 / 203, within(1e-12));
    // The first point has stayed where it was: it is 101/2 pixels from the left edge.
    assertThat(picture(hand).at().x() + 50.5 * picture(hand).scale()).isCloseTo(701, within(1e-9));
    assertThat(hand.plan().parts()).isEqualTo(Houses.house().parts());
    hand.runner().undo();
    assertThat(picture(hand).scale()).isEqualTo(2);
  }

  @Test
  void pointsOnThePictureAreNotHeldByThePlan() {
    // Right beside a corner of the house, which would hold any other tool.
    Hand hand = hand(PictureTools.SCALE).does("click 481 1; move 700 1");
    assertThat(hand.runner().overlay().lines().get(0).at().from()).isEqualTo(new Point(481, 1));
  }

  @Test
  void aLineIsStraightenedToTheNearerDirection() {
    Hand hand = hand(PictureTools.STRAIGHTEN).does("click 700 100; click 900 110");
    // atan(10/200) clockwise.
    double lies = Math.toDegrees(Math.atan2(10, 200));
    assertThat(picture(hand).degrees()).isCloseTo(360 - lies, within(1e-9));
    Hand upright = hand(PictureTools.STRAIGHTEN).does("click 700 100; click 690 300");
    double leans = Math.toDegrees(Math.atan2(10, 200));
    assertThat(picture(upright).degrees()).isCloseTo(360 - leans, within(1e-9));
  }

  @Test
  void aPointOfThePictureIsLaidOnACornerOfThePlan() {
    Hand hand = hand(PictureTools.PLACE).does("click 711 37; click 478 338");
    Point moved = picture(hand).at().minus(new Point(600, 0));
    assertThat(moved).isEqualTo(new Point(480 - 711, 336 - 37));
  }

  @Test
  void aLoosePictureIsDraggedAndALockedOneIsNot() {
    Hand hand = hand(Tools.SELECT).does("press 900 300; drag 950 320; release 960 330");
    assertThat(picture(hand).at()).isEqualTo(new Point(660, 30));
    Hand locked =
        new Hand(pictured(Backdrop.State.LOCKED), Tools.SELECT)
            .does("press 900 300; drag 950 320; release 960 330");
    assertThat(picture(locked).at()).isEqualTo(new Point(600, 0));
    assertThat(locked.runner().document().undoName()).isEmpty();
  }

  @Test
  void deleteTakesAPickedPictureAndNothingElse() {
    Hand hand = hand(Tools.SELECT).does("click 900 300; delete");
    assertThat(hand.plan().markup().backdrop()).isEmpty();
    assertThat(hand.plan().parts()).hasSize(1);
    hand.runner().undo();
    assertThat(picture(hand).name()).isEqualTo("survey.png");
  }

  @Test
  void escapeBacksOutStepByStep() {
    Hand hand = hand(PictureTools.SCALE).does("click 701 50; click 904 50; type 20; escape");
    assertThat(hand.runner().entry()).isEmpty();
    assertThat(hand.runner().state()).isInstanceOf(PictureLength.class);
    hand.does("escape");
    assertThat(hand.runner().state()).isInstanceOf(PictureLine.class);
    hand.does("escape");
    assertThat(hand.runner().state()).isInstanceOf(FirstPoint.class);
    hand.does("escape");
    assertThat(hand.runner().tool()).isEqualTo(Tools.SELECT);
    assertThat(picture(hand).scale()).isEqualTo(2);
  }

  @Test
  void withoutAPictureTheToolsSayWhatIsMissing() {
    Hand hand = new Hand(Houses.house(), PictureTools.SCALE).does("click 10 10");
    assertThat(hand.runner().refusal()).isPresent();
  }
}
