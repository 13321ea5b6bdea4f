package longpoint.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.units.LengthUnit;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaceNameTest {
  /** Its first side is at the foot of the page, the others follow to the left. */
  private static final Part HOUSE =
      Part.fresh(
          "main",
          "House",
          new Region(
              new Ring(
                  List.of(
                      new Point(0, 0), new Point(360, 0), new Point(360, 240), new Point(0, 240)))),
          List.of(EdgeKind.EAVE, EdgeKind.EAVE, EdgeKind.EAVE, EdgeKind.EAVE),
          LengthUnit.INCH);

  private static Plan plan(Optional<Double> north) {
    return Plan.empty(LengthUnit.INCH)
        .withParts(List.of(HOUSE))
        .withParticulars(Particulars.NONE.withNorth(north));
  }

  /**
   * By a compass laid on the drawing: what faces up lies as far left of north as north is right.
   */
  @ParameterizedTest
  @CsvSource({
    "0, north, nord", "12, north, nord", "-30, northeast, nord-est", "90, west, ouest",
    "180, south, sud", "270, east, est", "45, northwest, nord-ouest", "-135, southeast, sud-est"
  })
  void theWallUpThePageIsNamedByTheNorthOfThePlan(double north, String english, String french) {
    PlaceName wall = PlaceName.of(plan(Optional.of(north)), HOUSE, 2);
    assertThat(wall.in(Language.ENGLISH)).isEqualTo("the " + english + " wall of House");
    assertThat(wall.in(Language.FRENCH)).isEqualTo("le mur " + french + " de House");
    assertThat(PlaceName.of(HOUSE, 2).in(plan(Optional.of(north)))).isEqualTo(wall);
  }

  @Test
  void withoutANorthItIsUpThePage() {
    assertThat(PlaceName.of(plan(Optional.empty()), HOUSE, 1).in(Language.ENGLISH))
        .isEqualTo("the east wall of House");
  }

  /** Two walls that no longer face the same wind need no numbers. */
  @Test
  void numbersFollowTheWindsToo() {
    Part turned =
        Part.fresh(
            "main",
            "House",
            new Region(
                new Ring(
                    List.of(
                        new Point(0, 0),
                        new Point(100, 0),
                        new Point(100, 40),
                        new Point(50, 60)))),
            List.of(EdgeKind.EAVE, EdgeKind.EAVE, EdgeKind.EAVE, EdgeKind.EAVE),
            LengthUnit.INCH);
    // The third side faces 68.2 degrees from right, the fourth 129.8.
    assertThat(PlaceName.of(plan(Optional.of(0.0)), turned, 2).in(Language.ENGLISH))
        .isEqualTo("the north wall of House");
    assertThat(PlaceName.of(plan(Optional.of(-10.0)), turned, 2).in(Language.ENGLISH))
        .isEqualTo("the northeast wall of House");
  }
}
