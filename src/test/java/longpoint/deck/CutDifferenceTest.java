package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.surface.LineKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CutDifferenceTest {
  /** A square corner: the line climbs one unit while it runs 1/m along each eave. */
  private static CutDifference square(double own, double other) {
    double rise = 100;
    Point top = new Point(rise / other, Math.hypot(rise, rise / own));
    return CutDifference.of("v", LineKind.VALLEY, new Segment(new Point(0, 0), top), 48);
  }

  /** Four feet times the cosine of the slope: a table of cosines gives these. */
  @ParameterizedTest
  @CsvSource({"4, 45.537", "6, 42.933", "8, 39.938", "9, 38.400", "10, 36.875", "12, 33.941"})
  void isTheCosineOfEqualSlopes(double inTwelve, double expected) {
    assertThat(square(inTwelve / 12, inTwelve / 12).per()).isCloseTo(expected, within(0.0005));
  }

  /** Taped at 36 5/8 in on a 10 in 12 roof; common practice accepts a quarter of an inch. */
  @Test
  void agreesWithATapeOnTheRoof() {
    assertThat(square(10 / 12.0, 10 / 12.0).per()).isCloseTo(36.625, within(0.25));
  }

  /** 48 × sin 33.690° ÷ (10/12), from the sine of an 8 in 12 slope. */
  @Test
  void differsOnEachSideOfAnUnequalValley() {
    assertThat(square(8 / 12.0, 10 / 12.0).per()).isCloseTo(31.951, within(0.0005));
  }
}
