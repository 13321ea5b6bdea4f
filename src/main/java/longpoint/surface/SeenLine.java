package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/** Parts a line into what shows from above and what an overhang hides. */
final class SeenLine {
  /** Share of a line's length within which places along it and beside it are the same. */
  private static final double SAME = 1e-7;

  private SeenLine() {}

  /** The stretches that show, in order along the line. */
  static List<Segment> of(RoofLine line, List<RoofPlane> beside) {
    Segment whole = new Segment(line.from().plan(), line.to().plan());
    List<Segment> hidden = sides(beside.stream().flatMap(p -> p.sheltered().stream()));
    if (hidden.isEmpty()) {
      return List.of(whole);
    }
    List<Segment> shown = sides(beside.stream().flatMap(p -> p.visible().stream()));
    double same = SAME * whole.length();
    List<Segment> seen = new ArrayList<>();
    Point from = whole.from();
    Point to = from;
    for (Segment stretch : stretches(whole, hidden, same)) {
      boolean shows =
          along(stretch.middle(), shown, same) || !along(stretch.middle(), hidden, same);
      if (shows && to.equals(stretch.from())) {
        to = stretch.to();
      } else if (shows) {
        add(seen, from, to);
        from = stretch.from();
        to = stretch.to();
      }
    }
    add(seen, from, to);
    return seen;
  }

  private static void add(List<Segment> seen, Point from, Point to) {
    if (!from.equals(to)) {
      seen.add(new Segment(from, to));
    }
  }

  /** The line parted at every corner of the hidden ground that lies on it. */
  private static List<Segment> stretches(Segment whole, List<Segment> hidden, double same) {
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, whole.length()));
    for (Segment side : hidden) {
      double along = side.from().minus(whole.from()).dot(whole.direction());
      boolean inside = along > same && along < whole.length() - same;
      if (inside && whole.distance(side.from()) <= same) {
        cuts.add(along);
      }
    }
    List<Segment> stretches = new ArrayList<>();
    Point from = whole.from();
    for (double cut : cuts.tailSet(0.0, false)) {
      Point to =
          cut == whole.length() ? whole.to() : whole.from().plus(whole.direction().times(cut));
      stretches.add(new Segment(from, to));
      from = to;
    }
    return stretches;
  }

  private static boolean along(Point place, List<Segment> sides, double same) {
    return sides.stream().anyMatch(s -> s.distance(place) <= same);
  }

  private static List<Segment> sides(Stream<Region> regions) {
    List<Segment> sides = new ArrayList<>();
    regions.forEach(
        r -> {
          sides(r.shell(), sides);
          r.holes().forEach(h -> sides(h, sides));
        });
    return sides;
  }

  private static void sides(Ring ring, List<Segment> sides) {
    for (int i = 0; i < ring.size(); i++) {
      sides.add(ring.side(i));
    }
  }
}
