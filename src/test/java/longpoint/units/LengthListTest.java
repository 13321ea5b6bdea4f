package longpoint.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class LengthListTest {
  private static List<Double> inches(String typed) throws EntryException {
    return LengthList.read(typed, LengthUnit.INCH, LengthEntry.Allowed.POSITIVE);
  }

  @Test
  void anyNotationInAnyList() throws EntryException {
    assertThat(inches("16'-0\"; 12', 8'\n4'")).containsExactly(192.0, 144.0, 96.0, 48.0);
    assertThat(inches("V1: 16'-9 5/8\"\r\nV2: 13'-7 3/16\"\r\n"))
        .containsExactly(201.625, 163.1875);
    assertThat(inches("1. 2540mm\t2. 1 m")).containsExactly(100.0, 1000 / 25.4);
    assertThat(inches(" ; ;")).isEmpty();
  }

  @Test
  void whatIsWrongIsToldWithItsPlace() {
    assertThatThrownBy(() -> inches("16'; 12 what; 8'"))
        .isInstanceOfSatisfying(
            EntryException.class,
            e -> {
              assertThat(e.position()).isEqualTo(8);
              assertThat(e.typed()).isEqualTo("16'; 12 what; 8'");
            });
    assertThatThrownBy(() -> inches("16'; 0")).hasMessageContaining("more than zero");
  }
}
