package longpoint.surface.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import longpoint.geometry.Ring;
import org.junit.jupiter.api.Test;

/** Small roofs whose figures follow from the definition with a pencil. */
class SweepTest {
  private static final Ring RECTANGLE = Ring.of(0, 0, 12, 0, 12, 8, 0, 8);

  private static SweepResult solve(Ring ring, double... speeds) {
    return Sweep.solve(List.of(ring), speeds);
  }

  private static SweepResult.Solved solved(SweepResult result) {
    assertThat(result).isInstanceOf(SweepResult.Solved.class);
    return (SweepResult.Solved) result;
  }

  private static void hasNode(SweepResult.Solved solved, double x, double y, double t) {
    assertThat(solved.nodes())
        .as("node at %s %s %s", x, y, t)
        .anySatisfy(
            n -> {
              assertThat(n.x()).isCloseTo(x, within(1e-9));
              assertThat(n.y()).isCloseTo(y, within(1e-9));
              assertThat(n.time()).isCloseTo(t, within(1e-9));
            });
  }

  @Test
  void gablesStandStillAndTheRidgeRunsToThem() {
    SweepResult.Solved roof = solved(solve(RECTANGLE, 1, 0, 1, 0));
    assertThat(roof.faces()).extracting(SweepResult.Face::side).containsExactly(0, 2);
    assertThat(roof.nodes()).hasSize(6);
    hasNode(roof, 0, 4, 4);
    hasNode(roof, 12, 4, 4);
    assertThat(roof.faces().get(0).nodes()).startsWith(0, 1).hasSize(4);
  }

  @Test
  void oneEaveMakesAShed() {
    SweepResult.Solved roof = solved(solve(RECTANGLE, 0.5, 0, 0, 0));
    assertThat(roof.faces()).hasSize(1);
    assertThat(roof.faces().get(0).nodes()).startsWith(0, 1).hasSize(4);
    hasNode(roof, 0, 8, 16);
    hasNode(roof, 12, 8, 16);
  }

  @Test
  void twoSlopesPutTheRidgeOffCentre() {
    SweepResult.Solved roof = solved(solve(RECTANGLE, 3, 0, 1, 0));
    hasNode(roof, 0, 6, 2);
    hasNode(roof, 12, 6, 2);
  }

  @Test
  void aSquareComesToOnePoint() {
    SweepResult.Solved roof = solved(solve(Ring.of(0, 0, 10, 0, 10, 10, 0, 10), 1, 1, 1, 1));
    assertThat(roof.nodes()).hasSize(5);
    hasNode(roof, 5, 5, 5);
  }

  @Test
  void wallsInLineWithOneSlopeArePartedSquareToThem() {
    Ring ring = Ring.of(0, 0, 5, 0, 12, 0, 12, 8, 0, 8);
    SweepResult.Solved roof = solved(solve(ring, 1, 1, 1, 1, 1));
    assertThat(roof.faces()).hasSize(5);
    hasNode(roof, 5, 4, 4);
  }

  @Test
  void wallsInLineWithTwoSlopesMeetInAStep() {
    // The steeper half (speed 1/2) stays behind at x > 6; between them the wall x = 6 is upright.
    Ring ring = Ring.of(0, 0, 6, 0, 12, 0, 12, 8, 0, 8);
    SweepResult.Solved roof = solved(solve(ring, 1, 0.5, 0, 1, 0));
    hasNode(roof, 6, 4, 4);
    hasNode(roof, 6, 8 / 3.0, 16 / 3.0);
    assertThat(roof.faces()).extracting(SweepResult.Face::side).containsExactly(0, 1, 3);
  }

  @Test
  void halfAWallMayBeAGable() {
    Ring ring = Ring.of(0, 0, 6, 0, 12, 0, 12, 8, 0, 8);
    SweepResult.Solved roof = solved(solve(ring, 1, 0, 0, 1, 0));
    hasNode(roof, 6, 4, 4);
    assertThat(roof.faces()).extracting(SweepResult.Face::side).containsExactly(0, 3);
  }

  @Test
  void aCourtyardIsGoneRound() {
    List<Ring> rings =
        List.of(Ring.of(0, 0, 20, 0, 20, 16, 0, 16), Ring.of(6, 5, 6, 11, 14, 11, 14, 5));
    double[] speeds = new double[8];
    Arrays.fill(speeds, 1);
    SweepResult.Solved roof = solved(Sweep.solve(rings, speeds));
    assertThat(roof.faces()).hasSize(8);
    hasNode(roof, 3, 3, 3);
  }

  @Test
  void whatCannotBeRoofedIsSaidWithACure() {
    assertThat(solve(RECTANGLE, 0, 0, 0, 0))
        .isEqualTo(new SweepResult.Failed(0, SweepResult.Reason.NO_EAVE));
    assertThat(solve(RECTANGLE, 1, 1, Double.NaN, 1)).isInstanceOf(SweepResult.Failed.class);
    assertThat(solve(RECTANGLE, 1, 1, -1, 1)).isInstanceOf(SweepResult.Failed.class);
    assertThat(solve(RECTANGLE, 1, 1)).isInstanceOf(SweepResult.Failed.class);
    assertThat(solve(RECTANGLE.reversed(), 1, 1, 1, 1)).isInstanceOf(SweepResult.Failed.class);
    assertThat(solve(Ring.of(0, 0, 0, 0, 1, 0, 1, 1), 1, 1, 1, 1))
        .isEqualTo(new SweepResult.Failed(0, SweepResult.Reason.NO_LENGTH));
  }

  @Test
  void groundThatNoEaveReachesIsSaidToBeSo() {
    // At the left three gables close off a pocket that neither eave beside it sweeps over.
    SweepResult result =
        solve(
            Ring.of(6, 3, 7, 5, 5, 5, 1, 6, 2, 0, 5, 0, 3, 1, 2, 3, 2, 5, 4, 5, 5, 1, 8, 6),
            2,
            0.5,
            0,
            0,
            0,
            0,
            2,
            2,
            0,
            1,
            0.5,
            0);
    assertThat(result).isInstanceOf(SweepResult.Failed.class);
    assertThat(((SweepResult.Failed) result).reason()).isEqualTo(SweepResult.Reason.STRANDED);
  }

  @Test
  void anOutlineThatCrossesItselfIsRefused() {
    Ring bow = Ring.of(0, 0, 10, 0, 10, 4, 4, -3, 0, 10);
    assertThat(solve(bow, 1, 1, 1, 1, 1)).isInstanceOf(SweepResult.Failed.class);
    assertThat(solve(Ring.of(0, 0, 8, 0, 8, 6, 4, 0, 0, 6), 1, 1, 1, 1, 1))
        .isEqualTo(new SweepResult.Failed(0, SweepResult.Reason.CROSSED));
    Ring twice = Ring.of(0, 0, 10, 0, 10, 10, 0, 10, 3, 3, 7, 3, 7, 7, 3, 7);
    assertThat(solve(twice, 1, 1, 1, 1, 1, 1, 1, 1)).isInstanceOf(SweepResult.Failed.class);
  }
}
