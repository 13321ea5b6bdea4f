package longpoint.deck;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/**
 * One unbroken run of a course, in (u, v).
 *
 * @param course its number, 1 at the fascia
 * @param from lower course line
 * @param to upper course line
 */
record Strip(int course, double from, double to, Region region) {
  Bounds bounds() {
    return region.shell().bounds();
  }

  /** A piece of an upright line. */
  record Span(double from, double to) {
    double length() {
      return to - from;
    }
  }

  /** Where an upright line at {@code u} runs inside the strip, from below. */
  List<Span> sections(double u) {
    List<Double> crossings = new ArrayList<>();
    for (Ring ring : rings()) {
      for (int i = 0; i < ring.size(); i++) {
        Segment side = ring.side(i);
        Point a = side.from();
        Point b = side.to();
        // Half open, so that a corner on the line counts once.
        if ((a.x() <= u) != (b.x() <= u)) {
          crossings.add(a.y() + (b.y() - a.y()) * ((u - a.x()) / (b.x() - a.x())));
        }
      }
    }
    double[] sorted = crossings.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    List<Span> spans = new ArrayList<>(sorted.length / 2);
    for (int i = 0; i + 1 < sorted.length; i += 2) {
      spans.add(new Span(sorted[i], sorted[i + 1]));
    }
    return spans;
  }

  /** Every u at which the outline turns, in order. */
  double[] turns() {
    return rings().stream()
        .flatMap(r -> r.points().stream())
        .flatMapToDouble(p -> DoubleStream.of(p.x()))
        .sorted()
        .distinct()
        .toArray();
  }

  private List<Ring> rings() {
    return Stream.concat(Stream.of(region.shell()), region.holes().stream()).toList();
  }
}
