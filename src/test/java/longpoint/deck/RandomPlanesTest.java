package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** The laws of a deck on thousands of planes; {@link RandomPlanes#main} runs any number. */
@Execution(ExecutionMode.CONCURRENT)
class RandomPlanesTest {
  @Test
  void keepTheLaws() {
    RandomPlanes.Tally tally =
        IntStream.range(0, 2000)
            .parallel()
            .collect(RandomPlanes.Tally::new, RandomPlanes.Tally::add, RandomPlanes.Tally::add);
    assertThat(tally.planes).isEqualTo(2000);
    // Nearly all planes have supports enough to keep every rule.
    assertThat(tally.noted).as(tally.toString()).isLessThan(100);
    assertThat((double) tally.sheets / tally.bounds).as(tally.toString()).isLessThan(1.15);
  }
}
