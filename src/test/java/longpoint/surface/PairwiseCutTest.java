package longpoint.surface;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longpoint.geometry.Jts;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.noding.FastNodingValidator;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;

/** Lines cut pair by pair, looked over by the JTS library's own validator. */
class PairwiseCutTest {
  private static final double GRAIN = 1e-6;

  @Test
  void aCrossIsCutInTheMiddle() {
    PairwiseCut cut = new PairwiseCut(GRAIN, GRAIN / 4096);
    assertThat(cut.cut(List.of(line(0, 0, 2, 2), line(0, 2, 2, 0)))).isTrue();
    assertThat(cut.stretches()).isEqualTo(4);
  }

  /** Two lines over each other in part: what they share is there once. */
  @Test
  void linesOverEachOtherShareAStretch() {
    PairwiseCut cut = new PairwiseCut(GRAIN, GRAIN / 4096);
    assertThat(cut.cut(List.of(line(0, 0, 3, 0), line(1, GRAIN / 3, 5, 0)))).isTrue();
    assertThat(cut.stretches()).isEqualTo(3);
  }

  @Test
  void anEndThatFallsShortByLessThanTheGrainCuts() {
    PairwiseCut cut = new PairwiseCut(GRAIN, GRAIN / 4096);
    assertThat(cut.cut(List.of(line(0, 0, 2, 0), line(1, GRAIN / 2, 1, 5)))).isTrue();
    assertThat(cut.stretches()).isEqualTo(3);
  }

  @Test
  void nothingCrossesAfterwards() {
    Random random = new Random(7);
    for (int round = 0; round < 40; round++) {
      List<LineString> lines = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        boolean square = random.nextBoolean();
        double x = square ? random.nextInt(9) : 9 * random.nextDouble();
        double y = square ? random.nextInt(9) : 9 * random.nextDouble();
        double jitter = GRAIN * (random.nextDouble() - 0.5);
        lines.add(line(x, y + jitter, x + random.nextInt(5), y + random.nextInt(5) - 2));
      }
      PairwiseCut cut = new PairwiseCut(GRAIN, GRAIN / 4096);
      assertThat(cut.cut(lines)).isTrue();
      List<SegmentString> strings = new ArrayList<>();
      for (int i = 0; i < cut.stretches(); i++) {
        strings.add(new NodedSegmentString(new Coordinate[] {cut.from(i), cut.to(i)}, null));
      }
      assertThat(new FastNodingValidator(strings).isValid()).describedAs("round " + round).isTrue();
    }
  }

  private static LineString line(double ax, double ay, double bx, double by) {
    return Jts.FACTORY.createLineString(
        new Coordinate[] {new Coordinate(ax, ay), new Coordinate(bx, by)});
  }
}
