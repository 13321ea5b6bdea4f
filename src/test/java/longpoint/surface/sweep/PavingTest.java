package longpoint.surface.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tiles laid anew before a front that has moved on. */
class PavingTest {
  private static final double SOON = 1e-3;

  @ParameterizedTest
  @ValueSource(strings = {"a_courtyard", "a_house16_rot", "d_holes8_100", "d_gridholes_100"})
  void coverTheUnsweptGroundOnce(String name) {
    Outline outline =
        Outline.weighted(Path.of("src/test/resources/longpoint/surface/sweep", name + ".poly"));
    Sides sides = Sides.of(outline.rings(), outline.speeds());
    Front front = new Front(sides, new Traces(sides));
    Tiles tiles = Paving.of(sides);
    assertThat(Paving.again(tiles, front, SOON)).isTrue();
    double tiled = 0;
    int walls = 0;
    for (int e = 0; e < 3 * tiles.count; e++) {
      if (tiles.across[e] == Tiles.WALL) {
        walls++;
        assertThat(front.next[tiles.from(e)]).isEqualTo(tiles.to(e));
        assertThat(tiles.wallAt(tiles.from(e))).isEqualTo(e);
      } else {
        assertThat(tiles.across[tiles.across[e]]).isEqualTo(e);
      }
      if (e % 3 == 0) {
        double area = area(front, tiles.corner[e], tiles.corner[e + 1], tiles.corner[e + 2]);
        assertThat(area).isPositive();
        tiled += area;
      }
    }
    assertThat(walls).isEqualTo(front.living);
    assertThat(tiled).isCloseTo(ground(front), within(1e-9 * ground(front)));
  }

  /** At a time when the loops cross each other there is nothing to tile. */
  @Test
  void refuseLoopsThatCross() {
    Outline outline =
        Outline.even(Path.of("src/test/resources/longpoint/surface/sweep/a_courtyard.poly"));
    Sides sides = Sides.of(outline.rings(), outline.speeds());
    Front front = new Front(sides, new Traces(sides));
    assertThat(Paving.again(Paving.of(sides), front, 1e3)).isFalse();
  }

  private static double area(Front front, int a, int b, int c) {
    double ax = front.x(a, SOON);
    double ay = front.y(a, SOON);
    return ((front.x(b, SOON) - ax) * (front.y(c, SOON) - ay)
            - (front.x(c, SOON) - ax) * (front.y(b, SOON) - ay))
        / 2;
  }

  private static double ground(Front front) {
    double twice = 0;
    for (int v = 0; v < front.count; v++) {
      int w = front.next[v];
      twice += front.x(v, SOON) * front.y(w, SOON) - front.x(w, SOON) * front.y(v, SOON);
    }
    return twice / 2;
  }
}
