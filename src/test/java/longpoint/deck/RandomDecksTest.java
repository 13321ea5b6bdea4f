package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** The laws of a deck on framed houses; {@link RandomDecks#main} runs any number. */
@Execution(ExecutionMode.CONCURRENT)
class RandomDecksTest {
  @Test
  void keepTheLaws() {
    RandomDecks.Tally tally = new RandomDecks.Tally();
    for (int seed = 1; seed <= 150; seed++) {
      tally.add(seed);
    }
    assertThat(tally.plans).isEqualTo(150);
    assertThat(tally.joints).as(tally.toString()).isGreaterThan(5000);
  }

  /**
   * Houses that once stopped the work: planes in line with fasciae at two heights, a strip a hair
   * too long, a strip whose sides cross by rounding.
   */
  @Test
  void keepTheLawsOnHousesThatDidNot() {
    RandomDecks.Tally tally = new RandomDecks.Tally();
    for (long seed : new long[] {761, 842, 934, 1179, 4700}) {
      tally.add(seed);
    }
    assertThat(tally.plans).isEqualTo(5);
  }
}
