package longpoint.desktop.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longpoint.geometry.Point3;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandTest {
  /** What lies that way is nearer the eye than the middle; straight down the sheet is the usual. */
  @ParameterizedTest
  @CsvSource({"0,-10,-32", "0,10,148", "10,0,-122", "-10,0,58", "0,0,-32"})
  void theCornerLookedFromIsOnTheAskedSide(double x, double y, double turn) {
    Stand stand = Stand.START.fromCornerToward(x, y);
    assertThat(Math.IEEEremainder(stand.turn() - turn, 360)).isCloseTo(0, within(1e-9));
    double there = new Projection(stand, 1, 0, 0).of(new Point3(x, y, 0))[2];
    double middle = new Projection(stand, 1, 0, 0).of(new Point3(0, 0, 0))[2];
    assertThat(there).isGreaterThanOrEqualTo(middle);
  }
}
