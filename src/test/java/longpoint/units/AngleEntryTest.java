package longpoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AngleEntryTest {
  @ParameterizedTest
  @CsvSource({"30,30", "345.5,345.5", "' -15° ',-15", "'12,5 deg',12.5", "0,0"})
  void readsDegrees(String typed, double degrees) throws EntryException {
    assertThat(AngleEntry.read(typed)).isEqualTo(degrees);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "north", "3'", "12 30", "1e9", "--3"})
  void refusesWhatIsNoAngle(String typed) {
    assertThatThrownBy(() -> AngleEntry.read(typed)).isInstanceOf(EntryException.class);
  }
}
