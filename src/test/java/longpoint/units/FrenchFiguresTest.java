package longpoint.units;

import static org.assertj.core.api.Assertions.assertThat;

import longpoint.wording.Language;
import org.junit.jupiter.api.Test;

/**
 * Figures as French sets them: decimal comma and a space before the per cent sign (SI brochure, 9th
 * edition, 5.4.4 and 5.4.7; ISO 80000-1, 7.3; from memory), pi² for the square foot (Office
 * québécois de la langue française, from memory). Degrees of angle follow their figure closely (SI
 * brochure 5.4.3).
 */
class FrenchFiguresTest {
  @Test
  void areasAnglesAndSlopes() {
    assertThat(FigureText.area(19_180.8, LengthUnit.INCH, Language.FRENCH)).isEqualTo("133,2 pi²");
    assertThat(FigureText.area(19_180.8, LengthUnit.INCH, Language.ENGLISH))
        .isEqualTo("133.2 sq ft");
    assertThat(FigureText.area(12_370_000, LengthUnit.MILLIMETRE, Language.FRENCH))
        .isEqualTo("12,37 m²");
    assertThat(FigureText.angle(33.69, Language.FRENCH)).isEqualTo("33,7°");
    assertThat(SlopeText.of(Slope.percent(66.7), Language.FRENCH)).isEqualTo("66,7\u00a0%");
    assertThat(SlopeText.of(Slope.inTwelve(8.5), Language.FRENCH)).isEqualTo("8,5/12");
    assertThat(new LengthFigure(1358.4, LengthUnit.MILLIMETRE).in(Language.FRENCH))
        .isEqualTo("1358 mm");
  }
}
