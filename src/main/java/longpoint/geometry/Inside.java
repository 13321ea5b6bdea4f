package longpoint.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What of a line lies inside a region. */
public final class Inside {
  private Inside() {}

  /** The parts of a line inside a region, in order; a line along a side may count either way. */
  public static List<Segment> of(Region region, Segment line) {
    if (line.length() == 0) {
      return List.of();
    }
    List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
    Point run = line.to().minus(line.from());
    for (Ring ring : rings(region)) {
      for (int i = 0; i < ring.size(); i++) {
        Segment side = ring.side(i);
        Point along = side.to().minus(side.from());
        double turn = run.cross(along);
        if (turn != 0) {
          Point gap = side.from().minus(line.from());
          double t = gap.cross(along) / turn;
          double s = gap.cross(run) / turn;
          if (t > 0 && t < 1 && s >= 0 && s <= 1) {
            cuts.add(t);
          }
        }
      }
    }
    double[] sorted = cuts.stream().mapToDouble(Double::doubleValue).sorted().distinct().toArray();
    List<Segment> inside = new ArrayList<>();
    for (int i = 0; i + 1 < sorted.length; i++) {
      Point a = line.from().toward(line.to(), sorted[i]);
      Point b = line.from().toward(line.to(), sorted[i + 1]);
      if (contains(region, a.toward(b, 0.5))) {
        inside.add(new Segment(a, b));
      }
    }
    return inside;
  }

  /** Whether a point lies inside; on a side it may count either way. */
  public static boolean contains(Region region, Point p) {
    boolean in = false;
    for (Ring ring : rings(region)) {
      for (int i = 0; i < ring.size(); i++) {
        Point a = ring.corner(i);
        Point b = ring.corner(i + 1);
        if ((a.y() <= p.y()) != (b.y() <= p.y())
            && p.x() < a.x() + (b.x() - a.x()) * ((p.y() - a.y()) / (b.y() - a.y()))) {
          in = !in;
        }
      }
    }
    return in;
  }

  private static List<Ring> rings(Region region) {
    return Stream.concat(Stream.of(region.shell()), region.holes().stream()).toList();
  }
}
