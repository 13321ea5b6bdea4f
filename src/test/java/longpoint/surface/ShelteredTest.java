package longpoint.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.geometry.Region;
import longpoint.geometry.Segment;
import org.junit.jupiter.api.Test;

/**
 * A hipped porch against the wall of a house twice as tall: its planes, hips and fascia run up to
 * that wall, whatever overhang is far above (common practice). Figures by hand: 280 x 120 at 4 in
 * 12, overhangs and fascia 17.5, the wall at y = 0.
 */
class ShelteredTest {
  private static final RoofSurface ROOF = Roof.solve(Houses.leanTo());
  private static final double DEPTH = 120 + 17.5;

  @Test
  void aPlaneIsRoofedUpToTheWall() {
    double front = (315 + (315 - 2 * DEPTH)) / 2 * DEPTH;
    assertThat(plane("porch/0").planArea()).isCloseTo(front, within(1e-6));
    assertThat(plane("porch/0").area()).isCloseTo(front * Math.sqrt(10) / 3, within(1e-6));
    assertThat(plane("porch/1").planArea()).isCloseTo(DEPTH * DEPTH / 2, within(1e-6));
    assertThat(plane("porch/0").coveredArea()).isZero();
    // What the overhang hides is still told apart from what shows.
    double hidden = plane("porch/0").sheltered().stream().mapToDouble(Region::area).sum();
    double top = 315 - 2 * DEPTH;
    assertThat(hidden).isCloseTo((top + top + 2 * 17.5) / 2 * 17.5, within(1e-6));
  }

  @Test
  void hipsAndEavesRunUpToTheWall() {
    assertThat(ROOF.lines(LineKind.HIP))
        .filteredOn(l -> l.planes().contains("porch/0"))
        .hasSize(2)
        .allSatisfy(l -> assertThat(l.run()).isCloseTo(DEPTH * Math.sqrt(2), within(1e-6)))
        .allSatisfy(
            l -> assertThat(l.length()).isCloseTo(DEPTH * Math.sqrt(2 + 1 / 9.0), within(1e-6)));
    assertThat(ROOF.lines(LineKind.EAVE))
        .filteredOn(l -> l.planes().equals(List.of("porch/1")))
        .hasSize(1)
        .allSatisfy(l -> assertThat(l.run()).isCloseTo(DEPTH, within(1e-6)));
  }

  @Test
  void fromAboveALineShowsUpToTheOverhang() {
    for (RoofLine line : ROOF.lines(LineKind.HIP)) {
      double shows = ROOF.seen(line).stream().mapToDouble(Segment::length).sum();
      double hidden = line.planes().contains("porch/0") ? 17.5 * Math.sqrt(2) : 0;
      assertThat(shows).isCloseTo(line.run() - hidden, within(1e-6));
    }
  }

  /** Main deck beneath a dormer's eaves is roofed, beneath the dormer itself it is not. */
  @Test
  void aRoofIsRoofedBeneathADormersEaves() {
    RoofSurface roof = Roof.solve(Houses.all().get("dormer"));
    RoofPlane main =
        roof.planes().stream().filter(p -> !p.covered().isEmpty()).findFirst().orElseThrow();
    assertThat(main.sheltered()).isNotEmpty();
    assertThat(main.coveredArea()).isPositive();
  }

  private static RoofPlane plane(String id) {
    return ROOF.plane(id).orElseThrow();
  }
}
