package longpoint.desktop.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.List;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.geometry.Point3;
import longpoint.geometry.Ring;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;

/** A gabled house of 40 by 28 ft at 8 in 12, its figures worked out by hand. */
class SolidSceneTest {
  private static final double PLATE = 97.125;
  private static final double HEEL = 4.5;

  private static final Design HOUSE = house();

  private static Design house() {
    Edge eave = Edge.eave(Slope.inTwelve(8)).withHeel(HEEL);
    Edge gable = Edge.of(EdgeKind.GABLE);
    Part part =
        new Part(
            "main",
            "House",
            false,
            Ring.of(0, 0, 480, 0, 480, 336, 0, 336),
            List.of(),
            PLATE,
            List.of(eave, gable, eave, gable),
            Frame.of(LengthUnit.INCH),
            Deck.of(LengthUnit.INCH),
            Extras.NONE);
    return Pipeline.solve(Plan.empty(LengthUnit.INCH).withPart(part));
  }

  @Test
  void aGableWallReachesTheRidgeAndAnEaveWallTheHeel() {
    List<Face> walls =
        SolidScene.of(HOUSE).faces().stream().filter(f -> f.kind() == Face.Kind.WALL).toList();
    assertThat(walls).hasSize(4);
    // Half of 28 ft is 168 in; 8 in 12 rises 112 in over it. Read a hair inside of the wall.
    assertThat(top(walls.get(0))).isCloseTo(PLATE + HEEL, within(0.1));
    assertThat(top(walls.get(1))).isCloseTo(PLATE + HEEL + 112, within(0.1));
  }

  @Test
  void theNearestFaceIsSeen() {
    CanvasColours colours = CanvasColours.light();
    Point3 centre = new Point3(240, 168, 100);
    BufferedImage above =
        SolidPainter.paint(
            SolidScene.of(HOUSE), 200, 200, new Stand(0, 90, 0.3, centre, 100, 100), colours);
    // A quarter of the way up the screen lies a roof plane, and the corner of the screen is empty.
    assertThat(browner(above.getRGB(100, 75))).isTrue();
    assertThat(above.getRGB(2, 2)).isEqualTo(colours.ground().getRGB());
    BufferedImage level =
        SolidPainter.paint(
            SolidScene.of(HOUSE), 200, 200, new Stand(0, 0, 0.3, centre, 100, 100), colours);
    // From the south, 50 in above the ground: the eave wall, which is nearer than anything else.
    int wall = level.getRGB(100, 100 + 15);
    assertThat(browner(wall)).isFalse();
    assertThat(wall).isNotEqualTo(colours.ground().getRGB());
    // 60 in above the plate's height: the roof plane over it.
    assertThat(browner(level.getRGB(100, 100 - 18))).isTrue();
  }

  private static double top(Face wall) {
    return wall.rings().get(0).stream().mapToDouble(Point3::z).max().orElseThrow();
  }

  /** The roof's colour is brown, the wall's nearly white. */
  private static boolean browner(int rgb) {
    int red = rgb >> 16 & 255;
    int blue = rgb & 255;
    return red - blue > 25;
  }
}
