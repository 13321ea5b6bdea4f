package longpoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NumberEntryTest {
  @Test
  void readsNumbersWithPointCommaAndPercent() throws EntryException {
    assertThat(NumberEntry.notNegative("8")).isEqualTo(8);
    assertThat(NumberEntry.notNegative(" 7.5 %")).isEqualTo(7.5);
    assertThat(NumberEntry.notNegative("7,5%")).isEqualTo(7.5);
    assertThat(NumberEntry.notNegative("0")).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-1", "8 or so", "1e9", "%", "1.2.3"})
  void refusesWhatIsNoNumber(String typed) {
    assertThatThrownBy(() -> NumberEntry.notNegative(typed)).isInstanceOf(EntryException.class);
  }

  @Test
  void readsLengthsAsTheyAreTyped() throws EntryException {
    assertThat(NumberEntry.lengths("8'; 10' ;144\"", LengthUnit.INCH))
        .containsExactly(96.0, 120.0, 144.0);
    assertThat(NumberEntry.lengths("2400, 3600", LengthUnit.MILLIMETRE))
        .containsExactly(2400.0, 3600.0);
    assertThatThrownBy(() -> NumberEntry.lengths(" ; ", LengthUnit.INCH))
        .isInstanceOf(EntryException.class);
    assertThatThrownBy(() -> NumberEntry.positive("0")).isInstanceOf(EntryException.class);
  }
}
