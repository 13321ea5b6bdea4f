package longpoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthChangeTest {
  /** From a plate at 97 1/8 in. A foot is 12 inches, an inch 25.4 mm (1959). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "+1'        | 109.125",
        "+ 1' + 6\" | 115.125",
        "-2 1/2\"   | 94.625",
        "-254mm     | 87.125",
        "9'1-1/8\"  | 109.125",
        "=-1'       | -12",
        "=1'        | 12",
      })
  void addsTakesAwayOrReplaces(String typed, double height) throws EntryException {
    assertThat(LengthChange.read(typed, LengthUnit.INCH).from(97.125)).isEqualTo(height);
  }

  @Test
  void whatIsNoLengthIsSaidSo() {
    for (String typed : new String[] {"", "+", "high", "+-"}) {
      assertThatThrownBy(() -> LengthChange.read(typed, LengthUnit.INCH))
          .isInstanceOf(EntryException.class);
    }
  }
}
