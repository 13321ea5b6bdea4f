package longpoint.desktop.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Set;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.drawing.Ink;
import longpoint.geometry.Point3;
import longpoint.sheets.solid.SolidEdge;
import longpoint.sheets.solid.SolidFace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The nearest wins, from every side and in every order; what is painted has its true size. */
class SolidPainterTest {
  private static final int SIZE = 200;
  private static final CanvasColours COLOURS = CanvasColours.light();
  private static final int GROUND = COLOURS.ground().getRGB();

  private static SolidScene picking(SolidScene scene, String subject) {
    return new SolidScene(scene.house(), scene.shown(), Set.of(subject));
  }

  private static BufferedImage paint(SolidScene scene, Stand stand, int fine) {
    DepthImage image = new DepthImage(SIZE, SIZE, fine);
    SolidPainter.paint(image, scene, stand, COLOURS);
    return image.shown();
  }

  /** Whether a pixel is the colour of picked things rather than of walls. */
  private static boolean amber(int rgb) {
    return (rgb >> 16 & 255) - (rgb & 255) > 80;
  }

  @ParameterizedTest
  @EnumSource(
      value = Stand.Named.class,
      names = {"FRONT", "RIGHT", "BACK", "LEFT"})
  void theNearerBoardHidesTheFartherFromEverySideWhicheverIsPaintedFirst(Stand.Named from) {
    String near = TinyScene.BOARDS.get(from.ordinal() - Stand.Named.FRONT.ordinal());
    for (int[] order : new int[][] {{0, 1, 2, 3}, {3, 2, 1, 0}, {2, 0, 3, 1}}) {
      SolidScene scene = TinyScene.of(order);
      for (String board : TinyScene.BOARDS) {
        BufferedImage seen = paint(picking(scene, board), TinyScene.from(from), 2);
        assertThat(amber(seen.getRGB(100, 100))).as(board).isEqualTo(board.equals(near));
        assertThat(seen.getRGB(40, 100)).isEqualTo(GROUND);
      }
      Projection screen = new Projection(TinyScene.from(from), 1, SIZE, SIZE);
      assertThat(SolidPick.at(scene, screen, 100, 100)).contains(near);
      assertThat(SolidPick.at(scene, screen, 40, 100)).isEmpty();
    }
  }

  @Test
  void aPickedLineStandsOut() {
    SolidEdge valley =
        new SolidEdge(
            SolidEdge.Kind.ROOF,
            "valley",
            Ink.VALLEY,
            new Point3(-40, 0, 50),
            new Point3(40, 0, 50));
    SolidScene scene = TinyScene.scene(List.of(), List.of(valley));
    Stand front = TinyScene.from(Stand.Named.FRONT);
    assertThat(amber(paint(picking(scene, "ridge"), front, 2).getRGB(100, 100))).isFalse();
    BufferedImage seen = paint(picking(scene, "valley"), front, 2);
    assertThat(amber(seen.getRGB(100, 100)) && amber(seen.getRGB(100, 99))).isTrue();
  }

  @Test
  void facesThatCrossAreCutWhereTheyCross() {
    // Seen from the front, the slanting board is nearer on its left half, farther on its right.
    SolidScene scene =
        TinyScene.scene(
            List.of(
                TinyScene.board("level", -50, 0, 50, 0),
                TinyScene.board("slanting", -50, -20, 50, 20)),
            List.of());
    Stand front = TinyScene.from(Stand.Named.FRONT);
    BufferedImage seen = paint(picking(scene, "slanting"), front, 2);
    assertThat(amber(seen.getRGB(75, 100))).isTrue();
    assertThat(amber(seen.getRGB(125, 100))).isFalse();
    Projection screen = new Projection(front, 1, SIZE, SIZE);
    assertThat(SolidPick.at(scene, screen, 75, 100)).contains("slanting");
    assertThat(SolidPick.at(scene, screen, 125, 100)).contains("level");
  }

  @Test
  void aHoleShowsWhatIsBehindIt() {
    SolidFace whole = TinyScene.board("frame", -50, -10, 50, -10);
    List<Point3> hole =
        List.of(
            new Point3(-20, -10, 30),
            new Point3(-20, -10, 70),
            new Point3(20, -10, 70),
            new Point3(20, -10, 30));
    SolidFace frame =
        new SolidFace(SolidFace.Kind.WALL, "frame", List.of(whole.rings().get(0), hole));
    SolidScene scene =
        TinyScene.scene(List.of(frame, TinyScene.board("behind", -50, 10, 50, 10)), List.of());
    Projection screen = new Projection(TinyScene.from(Stand.Named.FRONT), 1, SIZE, SIZE);
    assertThat(SolidPick.at(scene, screen, 100, 100)).contains("behind");
    assertThat(SolidPick.at(scene, screen, 70, 100)).contains("frame");
    BufferedImage seen = paint(picking(scene, "behind"), TinyScene.from(Stand.Named.FRONT), 1);
    assertThat(amber(seen.getRGB(100, 100))).isTrue();
    assertThat(amber(seen.getRGB(70, 100))).isFalse();
  }

  @Test
  void aBoardIsPaintedInItsTrueSize() {
    for (int fine : new int[] {1, 2}) {
      BufferedImage seen = paint(TinyScene.of(0), TinyScene.from(Stand.Named.FRONT), fine);
      int painted = 0;
      for (int y = 0; y < SIZE; y++) {
        for (int x = 0; x < SIZE; x++) {
          painted += seen.getRGB(x, y) == GROUND ? 0 : 1;
        }
      }
      assertThat(painted).isEqualTo(100 * 100);
    }
  }

  @Test
  void aLineShowsOnItsFaceAndHidesBehindOne() {
    SolidEdge on =
        new SolidEdge(
            SolidEdge.Kind.ROOF,
            "on",
            Ink.VALLEY,
            new Point3(-40, -10, 80),
            new Point3(40, -10, 80));
    SolidEdge behind =
        new SolidEdge(
            SolidEdge.Kind.ROOF,
            "behind",
            Ink.VALLEY,
            new Point3(-40, 10, 20),
            new Point3(40, 10, 20));
    SolidScene scene =
        TinyScene.scene(List.of(TinyScene.board("wall", -50, -10, 50, -10)), List.of(on, behind));
    BufferedImage seen = paint(scene, TinyScene.from(Stand.Named.FRONT), 2);
    // 80 units up of 100 is 20 pixels under the top, which is at 50.
    assertThat(blue(seen, 100, 66, 74)).isTrue();
    assertThat(blue(seen, 100, 126, 134)).isFalse();
  }

  private static boolean blue(BufferedImage seen, int x, int from, int to) {
    for (int y = from; y <= to; y++) {
      int rgb = seen.getRGB(x, y);
      if ((rgb & 255) - (rgb >> 16 & 255) > 60) {
        return true;
      }
    }
    return false;
  }

  @Test
  void whatIsHiddenByChoiceIsNeitherSeenNorPicked() {
    SolidScene walls = TinyScene.of(0, 1, 2, 3);
    SolidScene bare = new SolidScene(walls.house(), Set.of(SolidLayer.ROOF), Set.of());
    Stand front = TinyScene.from(Stand.Named.FRONT);
    assertThat(paint(bare, front, 1).getRGB(100, 100)).isEqualTo(GROUND);
    assertThat(SolidPick.at(bare, new Projection(front, 1, SIZE, SIZE), 100, 100)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Stand.Named.class)
  void panningAndZoomingKeepAPlaceUnderThePointer(Stand.Named view) {
    Stand stand = TinyScene.from(view).turned(13, 7);
    Point3 place = new Point3(20, -30, 40);
    double[] before = new Projection(stand, 1, SIZE, SIZE).of(place);
    double[] panned = new Projection(stand.panned(17, -9), 1, SIZE, SIZE).of(place);
    assertThat(panned[0] - before[0]).isCloseTo(17, within(1e-9));
    assertThat(panned[1] - before[1]).isCloseTo(-9, within(1e-9));
    Stand near = stand.zoomed(2.5, before[0] - SIZE / 2.0, before[1] - SIZE / 2.0);
    double[] zoomed = new Projection(near, 1, SIZE, SIZE).of(place);
    assertThat(zoomed[0]).isCloseTo(before[0], within(1e-9));
    assertThat(zoomed[1]).isCloseTo(before[1], within(1e-9));
  }

  @Test
  void anElevationShowsHeightsAndWidthsInScale() {
    Projection front = new Projection(TinyScene.from(Stand.Named.FRONT), 1, SIZE, SIZE);
    double[] foot = front.of(new Point3(-50, -50, 0));
    double[] top = front.of(new Point3(50, -50, 100));
    assertThat(top[0] - foot[0]).isCloseTo(100, within(1e-9));
    assertThat(foot[1] - top[1]).isCloseTo(100, within(1e-9));
    // The right side: what is farther up the sheet stands farther right.
    Projection right = new Projection(TinyScene.from(Stand.Named.RIGHT), 1, SIZE, SIZE);
    assertThat(right.of(new Point3(50, 50, 0))[0] - right.of(new Point3(50, -50, 0))[0])
        .isCloseTo(100, within(1e-9));
  }
}
