package longpoint.framing.truss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longpoint.geometry.Point;
import org.junit.jupiter.api.Test;

class EnvelopeTest {
  @Test
  void oneLine() {
    assertThat(Envelope.lowest(List.of(new Envelope.Line(1, 2)), 0, 10))
        .containsExactly(new Point(0, 1), new Point(10, 21));
  }

  @Test
  void flatTop() {
    List<Point> top =
        Envelope.lowest(
            List.of(new Envelope.Line(0, 1), new Envelope.Line(20, -1), new Envelope.Line(4, 0)),
            -2,
            22);
    assertThat(top)
        .containsExactly(new Point(-2, -2), new Point(4, 4), new Point(16, 4), new Point(22, -2));
  }

  /** Three lines through one point make one corner. */
  @Test
  void threeThroughOnePoint() {
    List<Point> top =
        Envelope.lowest(
            List.of(new Envelope.Line(0, 1), new Envelope.Line(5, 0), new Envelope.Line(10, -1)),
            0,
            10);
    assertThat(top).hasSize(3);
    assertThat(top.get(1)).isEqualTo(new Point(5, 5));
  }

  /** Against the lowest of all lines at many places, for many sets of lines. */
  @Test
  void isTheLowestEverywhere() {
    Random random = new Random(7);
    for (int round = 0; round < 300; round++) {
      List<Envelope.Line> lines = new ArrayList<>();
      int count = 1 + random.nextInt(7);
      for (int i = 0; i < count; i++) {
        lines.add(new Envelope.Line(random.nextInt(20), random.nextInt(9) - 4));
      }
      List<Point> top = Envelope.lowest(lines, -5, 25);
      for (int i = 0; i + 1 < top.size(); i++) {
        assertThat(top.get(i + 1).x()).isGreaterThan(top.get(i).x());
        for (double share : new double[] {0, 0.3, 0.5, 1}) {
          Point p = top.get(i).toward(top.get(i + 1), share);
          double least = lines.stream().mapToDouble(l -> l.at(p.x())).min().orElseThrow();
          assertThat(p.y()).isEqualTo(least, within(1e-3));
        }
      }
    }
  }
}
