package longpoint.surface.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** A house is the same house turned, mirrored, drawn larger or far from the origin. */
@Execution(ExecutionMode.CONCURRENT)
class SweepMovedTest {
  private static final Path FILES = Path.of("src/test/resources/longpoint/surface/sweep");

  @TestFactory
  Stream<DynamicTest> theRoofMovesWithTheHouse() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(FILES)) {
      files = all.filter(f -> f.toString().endsWith(".poly")).sorted().toList();
    }
    return files.stream()
        .flatMap(f -> Stream.of(Outline.even(f), Outline.weighted(f)))
        .map(o -> DynamicTest.dynamicTest(o.name(), () -> check(o)));
  }

  private static void check(Outline outline) {
    for (double degrees : new double[] {17.3, 30, 90, 123.456}) {
      compare(outline, turn(Math.toRadians(degrees), 103.7, -55.1), 1, 1e-8);
    }
    compare(outline, p -> p.times(1000), 1000, 1e-9);
    // Far off, coordinates are only known to 1e-10.
    compare(outline, turn(0.3, 1e6, -2e6), 1, 1e-6);
    Outline mirrored = outline.mirrored();
    sameHeights(outline, mirrored, p -> new Point(-p.x(), p.y()), 1, 1e-9);
  }

  private static UnaryOperator<Point> turn(double angle, double dx, double dy) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return p -> new Point(c * p.x() - s * p.y() + dx, s * p.x() + c * p.y() + dy);
  }

  private static void compare(
      Outline outline, UnaryOperator<Point> move, double factor, double margin) {
    sameHeights(outline, outline.moved(move), move, factor, margin);
  }

  /** Wherever the one roof has a node the other has the same height, but for a factor. */
  private static void sameHeights(
      Outline outline, Outline other, UnaryOperator<Point> move, double factor, double margin) {
    SweepResult.Solved before = solved(outline.solve());
    SweepResult.Solved after = solved(other.solve());
    Heights heights = new Heights(other, after, factor);
    for (SweepResult.Node node : before.nodes()) {
      Point p = move.apply(new Point(node.x(), node.y()));
      assertThat(heights.at(p.x(), p.y()))
          .as("%s at %s", outline.name(), p)
          .isCloseTo(node.time() * factor, within(margin * factor));
    }
  }

  private static SweepResult.Solved solved(SweepResult result) {
    assertThat(result).as("%s", result).isInstanceOf(SweepResult.Solved.class);
    return (SweepResult.Solved) result;
  }
}
