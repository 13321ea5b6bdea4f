package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import org.junit.jupiter.api.Test;

class WallCornersTest {
  /**
   * The 3-4-5 rule of the trade: a wall of 480 and one of 336 have a diagonal of √(480² + 336²).
   */
  @Test
  void theDiagonalsOfARectangleAreEqual() {
    WallCorners corners = WallCorners.of(GableHouse.PLAN).get(0);
    List<WallCorners.Tape> tapes = corners.diagonals();
    assertThat(tapes).hasSize(2);
    for (WallCorners.Tape tape : tapes) {
      assertThat(tape.line().length()).isCloseTo(Math.hypot(480, 336), within(1e-9));
    }
  }

  /** Two tapes meet in two points, one to each side of the base: the corner is one of them. */
  @Test
  void twoTapesFixEveryCorner() {
    for (Map.Entry<String, Plan> entry : DrawnPlans.all().entrySet()) {
      for (WallCorners part : WallCorners.of(entry.getValue())) {
        Segment base = part.baseWall();
        for (Point corner : part.corners()) {
          double a = corner.distance(base.from());
          double b = corner.distance(base.to());
          double along = (a * a - b * b + base.length() * base.length()) / (2 * base.length());
          double off = Math.sqrt(Math.max(0, a * a - along * along));
          assertThat(base.along(corner)).as(entry.getKey()).isCloseTo(along, within(1e-6));
          assertThat(Math.abs(base.offset(corner))).isCloseTo(off, within(1e-4));
        }
      }
    }
  }

  @Test
  void cornersAreNumberedThroughThePlan() {
    int next = 1;
    for (WallCorners part : WallCorners.of(DrawnPlans.all().get("sheds"))) {
      assertThat(part.number(0)).isEqualTo(next);
      next += part.corners().size();
    }
  }
}
