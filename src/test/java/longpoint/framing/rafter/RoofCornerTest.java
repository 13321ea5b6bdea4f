package longpoint.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longpoint.framing.square.PolygonFigures;
import longpoint.framing.square.SquareFigures;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every angle again from two planes in space. */
class RoofCornerTest {
  @ParameterizedTest
  @CsvSource({
    "0.6667, 0.8333, 90",
    "0.5, 0.5, 90",
    "1, 0.25, 90",
    "0.75, 0.75, 135",
    "0.4, 1.2, 60",
    "1.5, 0.3, 120"
  })
  void agreesWithPlanesInSpace(double a, double b, double angle) {
    RoofCorner corner = new RoofCorner(a, b, angle);
    double w = Math.toRadians(angle);
    // Eave A runs to the right from the corner, eave B comes in from the other wall.
    Plane onA = Plane.risingFrom(new Segment(new Point(0, 0), new Point(1, 0)), 0, a);
    Point far = new Point(Math.cos(w), Math.sin(w));
    Plane onB = Plane.risingFrom(new Segment(far, new Point(0, 0)), 0, b);
    double alpha = Math.toRadians(corner.planAngleA());
    Point out = new Point(Math.cos(alpha), Math.sin(alpha));

    assertThat(corner.planAngleA() + corner.planAngleB()).isEqualTo(angle, within(1e-9));
    assertThat(onA.heightAt(out)).isEqualTo(corner.slope(), within(1e-12));
    assertThat(onB.heightAt(out)).isEqualTo(corner.slope(), within(1e-12));
    assertThat(corner.runPerRise() * corner.slope()).isEqualTo(1, within(1e-12));
    assertThat(corner.dihedral()).isEqualTo(between(onA, onB), within(1e-9));

    // One jack per unit of eave ends where the line is that far along.
    double end = Math.tan(alpha);
    assertThat(corner.jackDifferenceA(1))
        .isEqualTo(Math.hypot(end, onA.heightAt(new Point(1, end))), within(1e-12));

    // A dropped hip's top corners are in or under both planes, and one of them touches.
    Point side = out.left().times(0.75);
    double top = corner.slope() - corner.drop(1.5);
    double roomA = onA.heightAt(out.minus(side)) - top;
    double roomB = onB.heightAt(out.plus(side)) - top;
    assertThat(Math.min(roomA, roomB)).isEqualTo(0, within(1e-12));
  }

  private static double between(Plane p, Plane q) {
    double dot = p.a() * q.a() + p.b() * q.b() + 1;
    return 180 - Math.toDegrees(Math.acos(dot / p.areaFactor() / q.areaFactor()));
  }

  /** Plan run per unit rise √(1/a² + 1/b²): the closed form for a square corner. */
  @Test
  void squareCornerClosedForm() {
    RoofCorner corner = RoofCorner.square(8 / 12.0, 10 / 12.0);
    assertThat(corner.runPerRise()).isEqualTo(Math.hypot(1.5, 1.2), within(1e-12));
  }

  @Test
  void equalSlopesAgreeWithTheFramingSquare() {
    for (SquareFigures row : SquareFigures.table()) {
      RoofCorner corner = RoofCorner.square(row.rise() / 12, row.rise() / 12);
      assertThat(corner.overCommonRunA(12).length()).isEqualTo(row.hip(), within(1e-9));
      assertThat(corner.backingA()).isEqualTo(row.backingDegrees(), within(1e-9));
      assertThat(corner.drop(1.5)).isEqualTo(row.hipDrop(1.5), within(1e-12));
      assertThat(corner.overCommonRunA(12).sideCut(45))
          .isEqualTo(Math.toDegrees(Math.atan2(row.hipSideCut(), 12)), within(1e-9));
      assertThat(new Incline(12, row.rise() / 12).sideCut(45))
          .isEqualTo(Math.toDegrees(Math.atan2(row.jackSideCut(), 12)), within(1e-9));
      PolygonFigures octagon = PolygonFigures.regular(row, 8);
      RoofCorner wide = new RoofCorner(row.rise() / 12, row.rise() / 12, 135);
      assertThat(wide.overCommonRunA(12).length()).isEqualTo(octagon.hip(), within(1e-9));
      assertThat(wide.jackDifferenceA(16)).isEqualTo(octagon.jackDifference(16), within(1e-9));
    }
  }

  /** The notch, the heel above it and the stock's plumb depth close. */
  @Test
  void birdsmouthCloses() {
    Birdsmouth cut = new Birdsmouth(3.5, 0.5, 5.5);
    // 2x6 at 6 in 12: 5.5 × 13.4164 / 12 = 6.149 plumb, 1 3/4 in cut over a 3 1/2 in plate.
    assertThat(cut.plumbDepth()).isEqualTo(6.149, within(5e-4));
    assertThat(cut.heel()).isEqualTo(6.149 - 1.75, within(5e-4));
    Birdsmouth back = Birdsmouth.leaving(cut.heel(), 0.5, 5.5);
    assertThat(back.seat()).isEqualTo(3.5, within(1e-12));
    assertThat(cut.notch()).isEqualTo(3.5 * 6 / 13.4164, within(1e-4));
  }

  /** Ridge boards against plumb cuts: 2x6 at 8 in 12 is 6.610 in deep along the cut. */
  @Test
  void plumbDepth() {
    assertThat(new Birdsmouth(0, 8 / 12.0, 5.5).plumbDepth()).isEqualTo(6.610, within(5e-4));
    assertThat(new Birdsmouth(0, 1, 7.25).plumbDepth()).isEqualTo(10.253, within(5e-4));
  }
}
