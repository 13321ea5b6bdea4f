package longpoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longpoint.geometry.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DimensionLayoutTest {
  private static final Layer LAYER = new Layer("DIMS", "Dimensions", Pen.solid(0.18), Ink.MEASURE);

  /** Reads from below or from the right: ISO 129-1 (from memory). */
  @ParameterizedTest
  @CsvSource({"1,0,0", "-1,0,0", "0,1,90", "0,-1,90", "1,1,45", "-1,1,-45", "-1,-1,45", "1,-1,-45"})
  void figureReadsFromBelowOrFromTheRight(double x, double y, double degrees) {
    Mark.Dimension mark =
        new Mark.Dimension(new Point(0, 0), new Point(100 * x, 100 * y), -10, "100", LAYER, "");
    DimensionLayout layout = DimensionLayout.of(mark, 1);
    assertThat(layout.text().degrees()).isCloseTo(degrees, within(1e-9));
    // The figure stands above its line as it is read.
    double radians = Math.toRadians(degrees);
    Point up = new Point(-Math.sin(radians), Math.cos(radians));
    assertThat(layout.text().at().minus(layout.line().middle()).dot(up))
        .isCloseTo(DimensionLayout.TEXT_GAP, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"10,1", "-10,1", "10,2", "-10,48"})
  void lineStandsOffToTheLeftAtPaperDistance(double offsetMm, double unitsPerMm) {
    Mark.Dimension mark =
        new Mark.Dimension(new Point(0, 0), new Point(900, 0), offsetMm, "900", LAYER, "");
    DimensionLayout layout = DimensionLayout.of(mark, unitsPerMm);
    assertThat(layout.line().from()).isEqualTo(new Point(0, offsetMm * unitsPerMm));
    assertThat(layout.line().to()).isEqualTo(new Point(900, offsetMm * unitsPerMm));
    // Extension lines point from what is measured, past the dimension line.
    layout
        .extensions()
        .forEach(
            e -> {
              double side = Math.signum(offsetMm);
              assertThat(e.from().y() * side)
                  .isCloseTo(DimensionLayout.GAP * unitsPerMm, within(1e-9));
              assertThat(e.to().y() * side)
                  .isCloseTo((10 + DimensionLayout.PAST) * unitsPerMm, within(1e-9));
            });
  }
}
