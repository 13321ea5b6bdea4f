package longpoint.desktop.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;

class CellOrderTest {
  private static void assertOrder(LengthUnit unit, String... cells) {
    assertThat(Stream.of(cells).sorted(new CellOrder(unit))).containsExactly(cells);
    assertThat(Stream.of(cells).sorted(new CellOrder(unit).reversed().reversed()))
        .containsExactly(cells);
  }

  @Test
  void figuresGoBySizeWithAPointOrAComma() {
    assertOrder(LengthUnit.INCH, "78.8 sq ft", "78.9 sq ft", "320.5 sq ft", "");
    assertOrder(LengthUnit.MILLIMETRE, "21,3 m²", "21,64 m²", "104,03 m²");
    assertOrder(LengthUnit.INCH, "0'-9 1/2\"", "1'-0\"", "12'-0\"");
  }

  @Test
  void marksGoByTheirNumber() {
    assertOrder(LengthUnit.INCH, "T2", "T10", "T10a", "");
  }
}
