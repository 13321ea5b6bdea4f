package longpoint.surface;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * The ground between the base of an eave and the outside of its fascia: the plane runs on down,
 * kept between the hips and valleys at its two ends, which run on in the same two planes.
 */
final class Strips {
  private Strips() {}

  /** The strip of a run, or nothing where the roof does not pass its base. */
  static Optional<Polygon> strip(Contour.Loop loop, int i, double grain) {
    if (loop.run(i).spare() <= grain) {
      return Optional.empty();
    }
    List<Point> start = way(loop.corner(i), 1);
    List<Point> end = way(loop.corner(i + 1), -1);
    cutWhereTheyMeet(start, end);
    List<Point> around = new ArrayList<>(start);
    Collections.reverse(end);
    around.addAll(end);
    return polygon(around);
  }

  /** Out from a corner, along the hip or valley and then beside the neighbour's fascia. */
  private static List<Point> way(Contour.Corner corner, int own) {
    List<Point> way = new ArrayList<>(List.of(corner.base(), corner.split()));
    if (corner.further() == own) {
      way.add(corner.outer());
    }
    return way;
  }

  /** In a narrow notch two valleys meet before the fascia is reached; the strip ends there. */
  private static void cutWhereTheyMeet(List<Point> start, List<Point> end) {
    for (int i = 0; i + 1 < start.size(); i++) {
      for (int j = 0; j + 1 < end.size(); j++) {
        Optional<Point> meeting =
            meeting(
                new Segment(start.get(i), start.get(i + 1)),
                new Segment(end.get(j), end.get(j + 1)));
        if (meeting.isPresent()) {
          start.subList(i + 1, start.size()).clear();
          end.subList(j + 1, end.size()).clear();
          start.add(meeting.get());
          return;
        }
      }
    }
  }

  private static Optional<Point> meeting(Segment a, Segment b) {
    RobustLineIntersector crossing = new RobustLineIntersector();
    crossing.computeIntersection(
        Jts.coordinate(a.from()),
        Jts.coordinate(a.to()),
        Jts.coordinate(b.from()),
        Jts.coordinate(b.to()));
    return crossing.isProper()
        ? Optional.of(Jts.point(crossing.getIntersection(0)))
        : Optional.empty();
  }

  private static Optional<Polygon> polygon(List<Point> around) {
    List<Coordinate> ring = new ArrayList<>();
    for (Point p : around) {
      Coordinate c = Jts.coordinate(p);
      if (ring.isEmpty() || !ring.get(ring.size() - 1).equals2D(c)) {
        ring.add(c);
      }
    }
    if (!ring.get(0).equals2D(ring.get(ring.size() - 1))) {
      ring.add(ring.get(0).copy());
    }
    return ring.size() < 4
        ? Optional.empty()
        : Optional.of(Jts.FACTORY.createPolygon(ring.toArray(Coordinate[]::new)));
  }
}
