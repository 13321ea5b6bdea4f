package longpoint.surface.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** A house is the same house turned, mirrored, drawn larger or far from the origin. */
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
      compare(outline, o -> o.turned(Math.toRadians(degrees), 103.7, -55.1), 1, 1e-8);
    }
    compare(outline, Outline::mirrored, 1, 1e-9);
    compare(outline, o -> o.scaled(1000), 1000, 1e-9);
    // Far off, coordinates are only known to 1e-10.
    compare(outline, o -> o.turned(0.3, 1e6, -2e6), 1, 1e-6);
  }

  /** The times of arrival at all nodes, in order of size, are the same but for a factor. */
  private static void compare(
      Outline outline, Function<Outline, Outline> move, double factor, double margin) {
    double[] before = times(outline.solve());
    double[] after = times(move.apply(outline).solve());
    assertThat(after).hasSize(before.length);
    for (int i = 0; i < before.length; i++) {
      assertThat(after[i]).isCloseTo(before[i] * factor, within(margin * factor));
    }
  }

  private static double[] times(SweepResult result) {
    assertThat(result).as("%s", result).isInstanceOf(SweepResult.Solved.class);
    return ((SweepResult.Solved) result)
        .nodes().stream().mapToDouble(SweepResult.Node::time).sorted().toArray();
  }
}
