package longpoint.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures typed in the middle of a gesture. 1 in = 25.4 mm exactly (international inch, 1959). */
@ExtendWith(EnglishWords.class)
class TypedTextTest {
  private static Entry read(String text, LengthUnit unit, Entry.Kind... wants) {
    Reading reading = TypedText.read(text, Set.of(wants), unit);
    assertThat(reading).as(text).isInstanceOf(Reading.Good.class);
    return ((Reading.Good) reading).entry();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          24'3-1/2"    | 291.5
          24'-3 1/2"   | 291.5
          24ft 3.5in   | 291.5
          291.5        | 291.5
          7404.1mm     | 291.5
          """)
  void oneLengthManyWays(String text, double inches) {
    assertThat(read(text, LengthUnit.INCH, Entry.Kind.LENGTH)).isEqualTo(new Entry.Length(inches));
  }

  @ParameterizedTest
  @ValueSource(strings = {"24' x 30'", "24'x30'", "24' X 30'", "24' × 30'", "288 x 360"})
  void aSizeIsTwoLengthsWithAnXBetween(String text) {
    assertThat(read(text, LengthUnit.INCH, Entry.Kind.SIZE)).isEqualTo(new Entry.Size(288, 360));
  }

  @Test
  void aBareNumberIsInThePlansUnit() {
    assertThat(read("7200 x 24'", LengthUnit.MILLIMETRE, Entry.Kind.SIZE))
        .isEqualTo(new Entry.Size(7200, 7315.2));
  }

  @Test
  void anglesAreDegrees() {
    Entry.Kind[] polar = {Entry.Kind.LENGTH, Entry.Kind.POLAR};
    assertThat(read("10' < 22.5", LengthUnit.INCH, polar)).isEqualTo(new Entry.Polar(120, 22.5));
    assertThat(read("10'<-45°", LengthUnit.INCH, polar)).isEqualTo(new Entry.Polar(120, -45));
    assertThat(read("22,5°", LengthUnit.INCH, Entry.Kind.ANGLE)).isEqualTo(new Entry.Angle(22.5));
    assertThat(read("90 deg", LengthUnit.INCH, Entry.Kind.ANGLE)).isEqualTo(new Entry.Angle(90));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          fish          | LENGTH
          0             | LENGTH
          -5            | LENGTH
          24' x         | SIZE
          24'           | SIZE
          24' x 30' x 8'| SIZE
          10' < north   | POLAR
          steep         | ANGLE
          1e9           | ANGLE
          """)
  void whatCannotBeReadIsExplained(String text, Entry.Kind kind) {
    Reading reading = TypedText.read(text, Set.of(kind), LengthUnit.INCH);
    assertThat(reading).isInstanceOf(Reading.Bad.class);
    assertThat(((Reading.Bad) reading).why()).isNotBlank().endsWith(".");
  }
}
