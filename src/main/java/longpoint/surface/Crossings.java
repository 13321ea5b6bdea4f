package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import longpoint.geometry.Jts;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** The lines in plan where the planes over the same ground are equally high. */
final class Crossings {
  /**
   * Two planes whose gradients differ by less than this are parallel. Slopes are typed with four or
   * five figures; a difference of one in a thousand million moves the roof by nothing over any
   * building, and its crossing line would be arbitrary.
   */
  private static final double PARALLEL = 1e-9;

  private final double grain;
  private final List<LineString> found = new ArrayList<>();

  private Crossings(double grain) {
    this.grain = grain;
  }

  /** Crossing lines of all pieces that share ground: of different parts, or of a crowded one. */
  static List<LineString> of(List<PartRoof> roofs, Grain grain) {
    Crossings crossings = new Crossings(grain.place());
    for (int i = 0; i < roofs.size(); i++) {
      for (int j = i; j < roofs.size(); j++) {
        if (i != j || roofs.get(i).crowded()) {
          crossings.between(roofs.get(i).pieces(), roofs.get(j).pieces());
        }
      }
    }
    return crossings.found;
  }

  private void between(List<Piece> some, List<Piece> others) {
    for (Piece a : some) {
      for (Piece b : others) {
        Envelope shared =
            a.ground().getEnvelopeInternal().intersection(b.ground().getEnvelopeInternal());
        if (!shared.isNull()) {
          crossing(a.plane(), b.plane(), shared)
              .ifPresent(line -> within(line, a.ground(), b.ground()));
        }
      }
    }
  }

  /** The line of equal height, long enough to cross the shared box, if it comes near it. */
  private Optional<Segment> crossing(Plane p, Plane q, Envelope box) {
    Point fall = new Point(p.a() - q.a(), p.b() - q.b());
    double steep = fall.length();
    if (steep < PARALLEL) {
      return Optional.empty();
    }
    Point middle = Jts.point(box.centre());
    double apart = p.heightAt(middle) - q.heightAt(middle);
    double reach = box.getDiameter() / 2 + grain;
    if (Math.abs(apart) > steep * reach) {
      return Optional.empty();
    }
    Point on = middle.minus(fall.times(apart / (steep * steep)));
    Point along = fall.unit().left().times(2 * reach);
    return Optional.of(new Segment(on.minus(along), on.plus(along)));
  }

  /** Keeps the stretches of the line that lie over both grounds. */
  private void within(Segment line, Polygon a, Polygon b) {
    TreeSet<Double> cuts = new TreeSet<>();
    cut(line, a, cuts);
    cut(line, b, cuts);
    Double from = null;
    for (Double to : cuts) {
      if (from == null) {
        from = to;
      } else if (to - from > grain) {
        Point middle = at(line, (from + to) / 2);
        if (holds(a, middle) && holds(b, middle)) {
          found.add(stretch(at(line, from), at(line, to)));
        }
        from = to;
      }
    }
  }

  /** Where the line passes a side or a corner of a ground, as lengths along it. */
  private void cut(Segment line, Polygon ground, TreeSet<Double> cuts) {
    Coordinate[] ring = ground.getCoordinates();
    for (int i = 0; i + 1 < ring.length; i++) {
      Point p = Jts.point(ring[i]);
      Point q = Jts.point(ring[i + 1]);
      double left = line.offset(p);
      double right = line.offset(q);
      if (Math.abs(left) <= grain) {
        cuts.add(line.along(p));
      } else if (left > 0 != right > 0 && Math.abs(right) > grain) {
        cuts.add(line.along(p.toward(q, left / (left - right))));
      }
    }
  }

  private static boolean holds(Polygon ground, Point p) {
    return SimplePointInAreaLocator.locate(Jts.coordinate(p), ground) != Location.EXTERIOR;
  }

  private static Point at(Segment line, double along) {
    return line.from().plus(line.direction().times(along));
  }

  private static LineString stretch(Point from, Point to) {
    return Jts.FACTORY.createLineString(
        new Coordinate[] {Jts.coordinate(from), Jts.coordinate(to)});
  }
}
