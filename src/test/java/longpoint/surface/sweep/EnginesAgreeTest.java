package longpoint.surface.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * The tiled engine against the one that looks at the whole front, on random small outlines where
 * nearly everything happens at once. {@link EnginesAgreeMain} runs the same on many more.
 */
class EnginesAgreeTest {
  private static final int OUTLINES = 4000;

  @Test
  void theyLeaveTheSameNodesBehind() {
    EnginesAgreeMain.Tally tally = EnginesAgreeMain.run(OUTLINES, 20260301);
    assertThat(tally.different()).as("%s", tally).isZero();
    // Where the tiles give up the whole front takes over; that is for rare cases.
    assertThat(tally.tilesGaveUp()).as("%s", tally).isLessThan(OUTLINES / 1000);
    assertThat(tally.same()).as("%s", tally).isGreaterThan(OUTLINES * 9 / 10);
  }
}
