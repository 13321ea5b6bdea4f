package longpoint.field.lumber;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SplicesTest {
  /** Tails on 24 in centres from the rake overhang of 12. */
  private static List<Double> tails(int count) {
    return IntStream.range(0, count).mapToObj(k -> 12.0 + 24 * k).toList();
  }

  @Test
  void leavesWholeWhatABoardHolds() {
    assertThat(Splices.of(240, tails(10), 240)).containsExactly(240.0);
  }

  @Test
  void jointsFallOnTails() {
    List<Double> lengths = Splices.of(504, tails(21), 240);
    assertThat(lengths).hasSize(3);
    assertThat(lengths.stream().mapToDouble(d -> d).sum()).isEqualTo(504);
    double at = 0;
    for (double length : lengths.subList(0, lengths.size() - 1)) {
      at += length;
      assertThat((at - 12) % 24).isZero();
    }
  }

  /** 245 would take 240 and a stub of 5; 132 and 113 is what a framer cuts. */
  @Test
  void leavesNoStub() {
    assertThat(Splices.of(245, tails(10), 240)).containsExactly(132.0, 113.0);
  }

  @Test
  void jointsAnywhereWhereNothingCarries() {
    assertThat(Splices.of(500, List.of(), 240)).hasSize(3).allMatch(l -> l <= 240);
  }
}
