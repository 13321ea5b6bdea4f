package longpoint.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Problem;
import longpoint.plan.Said;

/** What holds of every roof, whatever the plan. */
final class RoofLaws {
  private static final Set<LineKind> SHARED =
      Set.of(LineKind.RIDGE, LineKind.HIP, LineKind.VALLEY, LineKind.BREAK);

  private RoofLaws() {}

  static void check(RoofSurface roof) {
    roof.problems().forEach(Said::inEveryLanguage);
    assertThat(roof.problems())
        .filteredOn(p -> p.level() == Problem.Level.ERROR)
        .noneMatch(p -> p.message().contains("do not build"));
    for (RoofLine line : roof.lines()) {
      meetsItsPlanes(roof, line);
    }
    borderedByLines(roof);
  }

  /** Both planes stand at the line's height at both ends, and have a corner there. */
  private static void meetsItsPlanes(RoofSurface roof, RoofLine line) {
    for (String id : line.planes()) {
      RoofPlane plane = roof.plane(id).orElseThrow();
      if (line.kind() != LineKind.STEP) {
        double steep = 1 + plane.slope();
        assertThat(plane.plane().heightAt(line.from().plan()))
            .describedAs(line.toString())
            .isCloseTo(line.from().z(), within(1e-5 * steep));
        assertThat(plane.plane().heightAt(line.to().plan()))
            .describedAs(line.toString())
            .isCloseTo(line.to().z(), within(1e-5 * steep));
        assertThat(corners(plane))
            .describedAs(line.toString())
            .contains(line.from().plan(), line.to().plan());
      }
    }
  }

  /** Every stretch of every plane's border is some line, counted once for each plane beside it. */
  private static void borderedByLines(RoofSurface roof) {
    double borders =
        roof.planes().stream()
            .flatMap(p -> p.visible().stream())
            .mapToDouble(
                r -> r.shell().perimeter() + r.holes().stream().mapToDouble(Ring::perimeter).sum())
            .sum();
    double lines =
        roof.lines().stream()
            .filter(l -> l.kind() != LineKind.ABUTMENT && l.kind() != LineKind.STEP)
            .mapToDouble(
                l -> shows(roof, l) * (SHARED.contains(l.kind()) && l.planes().size() == 2 ? 2 : 1))
            .sum();
    assertThat(lines).isLessThanOrEqualTo(borders * (1 + 1e-9));
  }

  private static double shows(RoofSurface roof, RoofLine line) {
    return roof.seen(line).stream().mapToDouble(Segment::length).sum();
  }

  private static Set<Point> corners(RoofPlane plane) {
    Set<Point> corners = new HashSet<>();
    Stream.of(plane.visible(), plane.covered())
        .flatMap(List::stream)
        .flatMap((Region r) -> Stream.concat(Stream.of(r.shell()), r.holes().stream()))
        .forEach(ring -> corners.addAll(ring.points()));
    return corners;
  }
}
