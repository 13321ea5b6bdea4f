package longpoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SlopeEntryTest {
  /**
   * 2 in rise in 5 in run is 4 4/5 in 12 (US Army correspondence course EN0069(a), rafter layout
   * terms); 150 in 250 is the metric unit rise of R. Hunter, Basic Carpentry Techniques, gable
   * roofs 11; rise 9 in run 12 is the 3-4-5 triangle. 8/12 = 33.69° = 66.67 % by the definitions.
   */
  @ParameterizedTest
  @CsvSource({
    "8/12, 0.666666666, IN_TWELVE, 8/12",
    "8:12, 0.666666666, IN_TWELVE, 8/12",
    "8 in 12, 0.666666666, IN_TWELVE, 8/12",
    "8 1/2 / 12, 0.708333333, IN_TWELVE, 8.5/12",
    "8.5/12, 0.708333333, IN_TWELVE, 8.5/12",
    "2/5, 0.4, IN_TWELVE, 4.8/12",
    "150:250, 0.6, IN_TWELVE, 7.2/12",
    "9 in 12, 0.75, IN_TWELVE, 9/12",
    "33.7deg, 0.6669171, DEGREES, 33.7°",
    "33.7 degrees, 0.6669171, DEGREES, 33.7°",
    "45°, 1, DEGREES, 45.0°",
    "66.7%, 0.667, PERCENT, 66.7%",
    "'66,7 %', 0.667, PERCENT, 66.7%",
    "8 sur 12, 0.666666666, IN_TWELVE, 8/12",
    "8 pour 12, 0.666666666, IN_TWELVE, 8/12",
    "'33,7°', 0.6669171, DEGREES, 33.7°",
    "'33,7 degrés', 0.6669171, DEGREES, 33.7°",
    "35 cm/m, 0.35, PERCENT, 35%",
    "'35,5 cm par mètre', 0.355, PERCENT, 35.5%",
    "35 cm per m, 0.35, PERCENT, 35%",
    "0.6667, 0.6667, RATIO, 0.6667",
    "'0,6667', 0.6667, RATIO, 0.6667",
    "1.5, 1.5, RATIO, 1.5",
    "5:1, 5, RATIO, 5",
    "0, 0, RATIO, 0",
    "0/12, 0, IN_TWELVE, 0/12",
  })
  void readsAndKeepsTheNotation(String typed, double ratio, Slope.Notation notation, String printed)
      throws EntryException {
    Slope slope = SlopeEntry.read(typed);
    assertThat(slope.ratio()).isEqualTo(ratio, within(1e-6));
    assertThat(slope.notation()).isEqualTo(notation);
    assertThat(SlopeText.of(slope)).isEqualTo(printed);
  }

  @Test
  void nineInTwelveIsTheThreeFourFiveTriangle() throws EntryException {
    assertThat(SlopeEntry.read("9/12").degrees()).isEqualTo(36.8699, within(5e-5));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "8",
        "8.5",
        "-3/12",
        "8/0",
        "90deg",
        "8/12/3",
        "8/12 9/12",
        "steep",
        "8 on 12",
        "35 cm",
        "35 cm/cm",
        "35 cm sur m",
        "8/",
        "8%%",
        "1e400",
        "8'/12"
      })
  void refuses(String typed) {
    assertThatThrownBy(() -> SlopeEntry.read(typed))
        .isInstanceOf(EntryException.class)
        .hasMessageMatching(".+\\. .+\\.");
  }

  @Test
  void aBareWholeNumberIsAskedAbout() {
    assertThatThrownBy(() -> SlopeEntry.read("8"))
        .hasMessageContaining("8/12, 8deg or 8:1")
        .extracting(e -> ((EntryException) e).position())
        .isEqualTo(0);
  }

  @Test
  void exactTextReadsBackToTheLastBit() throws EntryException {
    Random random = new Random(12);
    for (int n = 0; n < 4000; n++) {
      double figure = random.nextInt(1800) / 100.0;
      double wild = random.nextDouble() * Math.pow(10, random.nextInt(6) - 3);
      back(Slope.inTwelve(figure), true);
      back(Slope.degrees(figure * 4), true);
      back(Slope.percent(figure * 10), true);
      back(Slope.ratio(wild), true);
      for (Slope.Notation notation : Slope.Notation.values()) {
        back(new Slope(wild, notation), false);
      }
    }
  }

  private static void back(Slope slope, boolean sameNotation) throws EntryException {
    String text = SlopeText.exact(slope);
    Slope read = SlopeEntry.read(text);
    assertThat(read.ratio()).as(text).isEqualTo(slope.ratio());
    if (sameNotation) {
      assertThat(read).as(text).isEqualTo(slope);
    }
  }
}
