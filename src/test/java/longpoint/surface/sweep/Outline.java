package longpoint.surface.sweep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.StringTokenizer;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/**
 * An outline and its speeds as the test files hold them: the number of rings, then for each ring
 * its size and one corner (or one speed) a line.
 */
record Outline(String name, List<Ring> rings, double[] speeds) {
  static Outline even(Path poly) {
    List<Ring> rings = rings(read(poly));
    double[] speeds = new double[rings.stream().mapToInt(Ring::size).sum()];
    Arrays.fill(speeds, 1);
    return new Outline(poly.getFileName().toString(), rings, speeds);
  }

  static Outline weighted(Path poly) {
    Outline even = even(poly);
    Path w = Path.of(poly.toString().replaceAll("\\.poly$", ".w"));
    StringTokenizer in = read(w);
    double[] speeds = new double[even.speeds.length];
    int at = 0;
    int rings = Integer.parseInt(in.nextToken());
    for (int r = 0; r < rings; r++) {
      int size = Integer.parseInt(in.nextToken());
      for (int i = 0; i < size; i++) {
        speeds[at++] = Double.parseDouble(in.nextToken());
      }
    }
    return new Outline(w.getFileName().toString(), even.rings, speeds);
  }

  Outline moved(java.util.function.UnaryOperator<Point> to) {
    List<Ring> moved =
        rings.stream().map(r -> new Ring(r.points().stream().map(to).toList())).toList();
    return new Outline(name, moved, speeds);
  }

  /** Mirrored left to right; side i becomes the one counted from the other end. */
  Outline mirrored() {
    List<Ring> mirrored = new ArrayList<>();
    double[] turned = new double[speeds.length];
    int at = 0;
    for (Ring ring : rings) {
      int n = ring.size();
      List<Point> points = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        Point p = ring.corner(n - 1 - i);
        points.add(new Point(-p.x(), p.y()));
        turned[at + i] = speeds[at + Math.floorMod(n - 2 - i, n)];
      }
      at += n;
      mirrored.add(new Ring(points));
    }
    return new Outline(name, mirrored, turned);
  }

  SweepResult solve() {
    return Sweep.solve(rings, speeds);
  }

  private static List<Ring> rings(StringTokenizer in) {
    List<Ring> rings = new ArrayList<>();
    int count = Integer.parseInt(in.nextToken());
    for (int r = 0; r < count; r++) {
      int size = Integer.parseInt(in.nextToken());
      List<Point> points = new ArrayList<>(size);
      for (int i = 0; i < size; i++) {
        points.add(
            new Point(Double.parseDouble(in.nextToken()), Double.parseDouble(in.nextToken())));
      }
      rings.add(new Ring(points));
    }
    return rings;
  }

  private static StringTokenizer read(Path file) {
    try {
      return new StringTokenizer(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
