package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Jts;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The lines in plan where the planes over the same ground are equally high. */
final class Crossings {
  /**
   * Two planes whose gradients differ by less than this are parallel. Slopes are typed with four or
   * five figures; a difference of one in a thousand million moves the roof by nothing over any
   * building, and its crossing line would be arbitrary.
   */
  private static final double PARALLEL = 1e-9;

  private Crossings() {}

  /** Crossing lines of all pieces that share ground and belong to parts that may overlap. */
  static List<LineString> of(List<PartRoof> roofs) {
    List<LineString> lines = new ArrayList<>();
    for (int i = 0; i < roofs.size(); i++) {
      for (int j = i; j < roofs.size(); j++) {
        if (i != j || roofs.get(i).crowded()) {
          between(roofs.get(i).pieces(), roofs.get(j).pieces(), lines);
        }
      }
    }
    return lines;
  }

  private static void between(List<Piece> some, List<Piece> others, List<LineString> lines) {
    for (Piece a : some) {
      for (Piece b : others) {
        if (a.ground().getEnvelopeInternal().intersects(b.ground().getEnvelopeInternal())) {
          crossing(a, b).ifPresent(line -> within(line, a, b, lines));
        }
      }
    }
  }

  private static void within(LineString line, Piece a, Piece b, List<LineString> lines) {
    Geometry shared =
        OverlayNGRobust.overlay(
            OverlayNGRobust.overlay(line, a.ground(), OverlayNG.INTERSECTION),
            b.ground(),
            OverlayNG.INTERSECTION);
    for (int i = 0; i < shared.getNumGeometries(); i++) {
      if (shared.getGeometryN(i) instanceof LineString found && !found.isEmpty()) {
        lines.add(found);
      }
    }
  }

  /** The line of equal height, as long as it can matter to both pieces. */
  private static Optional<LineString> crossing(Piece one, Piece other) {
    Plane p = one.plane();
    Plane q = other.plane();
    Point fall = new Point(p.a() - q.a(), p.b() - q.b());
    double steep = fall.length();
    if (steep < PARALLEL) {
      return Optional.empty();
    }
    Envelope box =
        one.ground().getEnvelopeInternal().intersection(other.ground().getEnvelopeInternal());
    Coordinate c = box.centre();
    Point middle = Jts.point(c);
    double apart = p.heightAt(middle) - q.heightAt(middle);
    double reach = box.getDiameter();
    if (Math.abs(apart) > steep * reach) {
      return Optional.empty();
    }
    Point on = middle.minus(fall.times(apart / (steep * steep)));
    Point along = fall.unit().left().times(reach);
    return Optional.of(
        Jts.FACTORY.createLineString(
            new Coordinate[] {Jts.coordinate(on.minus(along)), Jts.coordinate(on.plus(along))}));
  }
}
