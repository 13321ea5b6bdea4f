package longpoint.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTextTest {
  /**
   * Two rafter lengths with their printed fractions: 111.12 in is 9 ft 3 1/8 in (US Navy training
   * course NAVEDTRA 14044, Builder 3 & 2, vol. 2, ch. 2, rafter length example 1); 17 ft 8.12 in is
   * 17 ft 8 1/8 in (Ira S. Griffith, Carpentry, 1916, appendix IV). The others are worked by hand.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "111.12    | 9'-3 1/8\"",
        "212.12    | 17'-8 1/8\"",
        "291.5     | 24'-3 1/2\"",
        "53.421    | 4'-5 7/16\"",
        "0         | 0'-0\"",
        "0.5       | 0'-0 1/2\"",
        "-0.01     | 0'-0\"",
        "-30.25    | -2'-6 1/4\"",
        "11.99     | 1'-0\"",
        "11.97     | 1'-0\"",
        "11.9687   | 0'-11 15/16\"",
        "216.3125  | 18'-0 5/16\"",
      })
  void printsFeetInchesAndSixteenths(double inches, String text) {
    assertThat(LengthText.of(inches, LengthUnit.INCH)).isEqualTo(text);
  }

  @Test
  void lengthsBeyondATapeAreStillPrinted() {
    assertThat(LengthText.of(1e15, LengthUnit.INCH)).isEqualTo("1000000000000000\"");
    assertThat(LengthText.of(-1e300, LengthUnit.MILLIMETRE)).startsWith("-1000000");
  }

  @Test
  void roundsTheWayAsked() {
    double clear = 22.4999;
    assertThat(LengthText.small(clear, LengthUnit.INCH, Rounding.NEAREST)).isEqualTo("22 1/2\"");
    assertThat(LengthText.small(clear, LengthUnit.INCH, Rounding.DOWN)).isEqualTo("22 7/16\"");
    assertThat(LengthText.small(22.4376, LengthUnit.INCH, Rounding.UP)).isEqualTo("22 1/2\"");
    assertThat(LengthText.rounded(clear, LengthUnit.INCH, Rounding.DOWN)).isEqualTo(22.4375);
    assertThat(LengthText.of(7314.5, LengthUnit.MILLIMETRE)).isEqualTo("7315");
    assertThat(LengthText.of(7314.9, LengthUnit.MILLIMETRE, Rounding.DOWN)).isEqualTo("7314");
    assertThat(LengthText.of(7314.1, LengthUnit.MILLIMETRE, Rounding.UP)).isEqualTo("7315");
  }

  /** A figure a hair off its mark, as sums of doubles leave it, is on its mark. */
  @Test
  void noiseNeitherShortensNorLengthens() {
    assertThat(LengthText.small(22.4375 - 1e-10, LengthUnit.INCH, Rounding.DOWN))
        .isEqualTo("22 7/16\"");
    assertThat(LengthText.small(22.4375 + 1e-10, LengthUnit.INCH, Rounding.UP))
        .isEqualTo("22 7/16\"");
  }

  @Test
  void printedLengthsReadBackWithinHalfASixteenth() throws EntryException {
    Random random = new Random(1959);
    for (int n = 0; n < 6000; n++) {
      double length = (random.nextDouble() - 0.3) * 2000;
      for (LengthUnit unit : LengthUnit.values()) {
        double half = unit == LengthUnit.INCH ? 1 / 32.0 : 0.5;
        double near = LengthEntry.read(LengthText.of(length, unit), unit);
        assertThat(Math.abs(near - length)).isLessThanOrEqualTo(half);
        assertThat(near).isEqualTo(LengthText.rounded(length, unit, Rounding.NEAREST));
        double down = LengthEntry.read(LengthText.of(length, unit, Rounding.DOWN), unit);
        double up = LengthEntry.read(LengthText.of(length, unit, Rounding.UP), unit);
        assertThat(down).isLessThanOrEqualTo(length + 1e-5);
        assertThat(up).isGreaterThanOrEqualTo(length - 1e-5);
        assertThat(up - down).isLessThanOrEqualTo(2 * half);
      }
    }
  }

  @Test
  void exactTextReadsBackToTheLastBit() throws EntryException {
    Random random = new Random(254);
    for (int n = 0; n < 15_000; n++) {
      double length =
          switch (n % 4) {
            case 0 -> random.nextInt(100_000) / 64.0 - 200;
            case 1 -> random.nextInt(2_000_000) / 100.0;
            case 2 -> random.nextGaussian() * Math.pow(10, random.nextInt(12));
            default -> random.nextInt(20_000) / 25.4;
          };
      for (LengthUnit unit : LengthUnit.values()) {
        String text = LengthText.exact(length, unit);
        assertThat(LengthEntry.read(text, unit)).as(text).isEqualTo(length == 0 ? 0.0 : length);
      }
    }
  }

  /** One square foot is 144 sq in; one square metre is a million sq mm. */
  @Test
  void areasAndAngles() {
    assertThat(FigureText.area(1256 * 144, LengthUnit.INCH)).isEqualTo("1256.0 sq ft");
    assertThat(FigureText.area(32 * 144 + 7, LengthUnit.INCH)).isEqualTo("32.0 sq ft");
    assertThat(FigureText.area(12_345_678, LengthUnit.MILLIMETRE)).isEqualTo("12.35 m²");
    assertThat(FigureText.angle(36.8699)).isEqualTo("36.9°");
    assertThat(FigureText.angle(-0.01)).isEqualTo("0.0°");
  }
}
