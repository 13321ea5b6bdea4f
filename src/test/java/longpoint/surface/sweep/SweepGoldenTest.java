package longpoint.surface.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Faces on which two exact native libraries agree to 1e-7, for house outlines square to the axes
 * and turned, and for outlines of a hundred sides, all with even and with uneven speeds.
 */
class SweepGoldenTest {
  private static final Path FILES = Path.of("src/test/resources/longpoint/surface/sweep");
  private static final double AGREE = 1e-7;
  private static final Pattern LINE =
      Pattern.compile("face \\d+ \\(edge ending at vertex (\\d+)\\) : (.*)");

  /**
   * Turned outlines in which walls in line with each other meet again. Rounding has put such walls
   * a hair out of line, and the libraries, exact about that hair, part the common plane along some
   * slanting line; the sweep parts it square to the walls. The roof is the same: compared by
   * height.
   */
  private static final Set<String> PARTED_ELSEWHERE =
      Set.of("a_H_rot.txt", "a_T_rot.txt", "a_bay16_rot.txt", "a_house14_rot.txt");

  /**
   * The same, but with different speeds on walls that come to lie in one line, so that the hair
   * decides which of two roofs is drawn. The sweep takes the rule it follows for the outline square
   * to the axes; {@link SweepMovedTest} holds it to that.
   */
  private static final Set<String> DECIDED_BY_ROUNDING =
      Set.of(
          "a_H_rot.weighted.txt",
          "a_bay16_rot.weighted.txt",
          "a_house14_rot.weighted.txt",
          "c_hamgridrot_100.weighted.txt");

  @TestFactory
  Stream<DynamicTest> facesAgreeWithTheNativeLibraries() throws IOException {
    List<Path> golden;
    try (Stream<Path> files = Files.list(FILES.resolve("golden"))) {
      golden = files.sorted().toList();
    }
    return golden.stream()
        .filter(g -> !DECIDED_BY_ROUNDING.contains(g.getFileName().toString()))
        .map(g -> DynamicTest.dynamicTest(g.getFileName().toString(), () -> check(g)));
  }

  private static void check(Path golden) throws IOException {
    String name = golden.getFileName().toString();
    boolean weighted = name.endsWith(".weighted.txt");
    Path poly = FILES.resolve(name.replaceAll("(\\.weighted)?\\.txt$", ".poly"));
    Outline outline = weighted ? Outline.weighted(poly) : Outline.even(poly);
    SweepResult result = outline.solve();
    assertThat(result).isInstanceOf(SweepResult.Solved.class);
    SweepResult.Solved solved = (SweepResult.Solved) result;
    assertThat(solved.faces()).hasSize(outline.speeds().length);
    int[] before = before(outline);
    int seen = 0;
    boolean byHeight = PARTED_ELSEWHERE.contains(name);
    Heights heights = byHeight ? new Heights(outline, solved) : null;
    for (String line : Files.readAllLines(golden)) {
      Matcher match = LINE.matcher(line);
      assertThat(match.matches()).as(line).isTrue();
      int side = before[Integer.parseInt(match.group(1))];
      List<double[]> corners = numbers(match.group(2));
      if (byHeight) {
        for (double[] corner : corners) {
          assertThat(heights.at(corner[0], corner[1])).isCloseTo(corner[2], within(AGREE));
        }
      } else {
        same(side, corners, solved);
      }
      seen++;
    }
    assertThat(seen).isEqualTo(outline.speeds().length);
  }

  /** The side that ends at each corner. */
  private static int[] before(Outline outline) {
    int[] before = new int[outline.speeds().length];
    int at = 0;
    for (var ring : outline.rings()) {
      for (int i = 0; i < ring.size(); i++) {
        before[at + (i + 1) % ring.size()] = at + i;
      }
      at += ring.size();
    }
    return before;
  }

  private static List<double[]> numbers(String text) {
    List<double[]> corners = new ArrayList<>();
    String[] parts = text.trim().split(" +");
    for (int i = 0; i + 2 < parts.length; i += 3) {
      corners.add(
          new double[] {
            Double.parseDouble(parts[i]),
            Double.parseDouble(parts[i + 1]),
            Double.parseDouble(parts[i + 2])
          });
    }
    return corners;
  }

  /** Both rings are counter-clockwise; the golden one starts at the end of the side. */
  private static void same(int side, List<double[]> golden, SweepResult.Solved solved) {
    List<double[]> ours = new ArrayList<>();
    for (int number : solved.faces().get(side).nodes()) {
      SweepResult.Node node = solved.nodes().get(number);
      ours.add(new double[] {node.x(), node.y(), node.time()});
    }
    ours.add(ours.remove(0));
    String said = "side " + side + ": " + show(ours) + "for " + show(golden);
    List<double[]> a = corners(ours);
    List<double[]> b = corners(golden);
    assertThat(a).as(said).hasSameSizeAs(b);
    for (int i = 0; i < a.size(); i++) {
      assertThat(far(a.get(i), b.get(i))).as(said).isLessThan(AGREE);
    }
  }

  /**
   * The corners of a ring where it turns. On a straight line libraries that take rounded input at
   * its word put two nodes a rounding error apart, or none, where the sweep has one.
   */
  private static List<double[]> corners(List<double[]> ring) {
    List<double[]> corners = new ArrayList<>(ring);
    for (int i = 0; i < corners.size(); ) {
      double[] before = corners.get((i + corners.size() - 1) % corners.size());
      double[] here = corners.get(i);
      double[] after = corners.get((i + 1) % corners.size());
      boolean ofTheSide = i == 0 || i == corners.size() - 1;
      if (far(before, here) < AGREE || (!ofTheSide && straight(before, here, after))) {
        corners.remove(i);
      } else {
        i++;
      }
    }
    return corners;
  }

  private static boolean straight(double[] a, double[] b, double[] c) {
    double cross = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
    return Math.abs(cross) < AGREE * Math.max(far(a, b), far(b, c));
  }

  private static double far(double[] a, double[] b) {
    double far = 0;
    for (int i = 0; i < 3; i++) {
      far = Math.max(far, Math.abs(a[i] - b[i]));
    }
    return far;
  }

  private static String show(List<double[]> golden) {
    StringBuilder text = new StringBuilder();
    golden.forEach(g -> text.append(java.util.Arrays.toString(g)).append(' '));
    return text.toString();
  }
}
