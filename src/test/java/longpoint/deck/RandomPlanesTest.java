package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The laws of a deck on thousands of planes; {@link RandomPlanes#main} runs any number. */
class RandomPlanesTest {
  @Test
  void keepTheLaws() {
    RandomPlanes.Tally tally = new RandomPlanes.Tally();
    for (int seed = 0; seed < 2000; seed++) {
      tally.add(seed);
    }
    assertThat(tally.planes).isEqualTo(2000);
    // Nearly all planes have supports enough to keep every rule.
    assertThat(tally.noted).as(tally.toString()).isLessThan(100);
    assertThat((double) tally.sheets / tally.bounds).as(tally.toString()).isLessThan(1.15);
  }
}
