package longpoint.desktop.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import longpoint.units.LengthEntry;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.units.SlopeEntry;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;

class EditableTest {
  /** SI brochure 5.4.4: the decimal sign is the point or the comma of the language. */
  @Test
  void theDecimalSignIsThatOfTheLanguage() {
    assertThat(Editable.slope(Slope.degrees(33.7), Language.FRENCH)).isEqualTo("33,7°");
    assertThat(Editable.slope(Slope.degrees(33.7), Language.ENGLISH)).isEqualTo("33.7°");
    assertThat(Editable.in(Language.FRENCH, "9144.5")).isEqualTo("9144,5");
  }

  @Test
  void whatStandsInAFieldIsReadBackExactly() throws Exception {
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      double length = Math.round(random.nextDouble() * 1e7) / 1e3 * (i % 2 == 0 ? 1 : 1.0 / 3);
      Slope slope = i % 2 == 0 ? Slope.degrees(random.nextInt(890) / 10.0) : Slope.percent(i / 7.0);
      for (Language language : Language.values()) {
        for (LengthUnit unit : LengthUnit.values()) {
          String shown = Editable.in(language, LengthText.exact(length, unit));
          assertThat(LengthEntry.read(shown, unit, LengthEntry.Allowed.NOT_NEGATIVE))
              .as(shown)
              .isEqualTo(length);
        }
        String shown = Editable.slope(slope, language);
        assertThat(SlopeEntry.read(shown).ratio()).as(shown).isEqualTo(slope.ratio());
      }
    }
  }
}
