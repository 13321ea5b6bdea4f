package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Bounds;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Cuts the planes of a part back to its roof outline where an eave starts so high that its base
 * lies outside its own fascia.
 *
 * <p>Ground that such a plane loses at an inside corner goes to the lower neighbour, whose roof
 * runs on beneath the higher fascia.
 */
record Trim(Contour contour, Polygon outline, double grain) {
  List<Piece> apply(List<Piece> pieces) {
    List<Piece> kept = new ArrayList<>();
    for (Piece piece : pieces) {
      Geometry inside = overlay(piece.ground(), outline, OverlayNG.INTERSECTION);
      Contour.Run run = run(piece.side());
      if (run.spare() >= -grain) {
        add(kept, piece, inside);
        continue;
      }
      Polygon within = within(run);
      add(kept, piece, overlay(inside, within, OverlayNG.INTERSECTION));
      for (Polygon lost : polygons(overlay(inside, within, OverlayNG.DIFFERENCE))) {
        heir(pieces, piece, lost).ifPresent(h -> kept.add(h.over(lost)));
      }
    }
    return kept;
  }

  private Contour.Run run(int side) {
    return contour.runs().stream().filter(r -> r.side() == side).findFirst().orElseThrow();
  }

  /** The ground inside a run's reach, as far as the part goes. */
  private Polygon within(Contour.Run run) {
    List<Point> all = contour.loops().stream().flatMap(l -> l.base().points().stream()).toList();
    Bounds box = Bounds.of(all);
    double far = 2 * (box.width() + box.height()) + Math.abs(run.reach());
    Point along = run.line().direction().times(far);
    Point in = run.line().direction().left().times(far);
    Point edge = run.line().middle().plus(run.outward().times(run.reach()));
    return Jts.polygon(
        new Ring(
            List.of(
                edge.minus(along),
                edge.plus(along),
                edge.plus(along).plus(in),
                edge.minus(along).plus(in))));
  }

  /** The neighbour within whose reach the lost ground lies. */
  private Optional<Piece> heir(List<Piece> pieces, Piece loser, Polygon lost) {
    Coordinate middle = lost.getInteriorPoint().getCoordinate();
    for (Contour.Loop loop : contour.loops()) {
      for (int i = 0; i < loop.runs().size(); i++) {
        if (loop.run(i).side() == loser.side()) {
          for (int n : new int[] {i - 1, i + 1}) {
            Contour.Run next = loop.run(n);
            if (!next.upright() && next.beyondBase(Jts.point(middle)) <= next.spare()) {
              return pieces.stream().filter(p -> p.side() == next.side()).findFirst();
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Geometry overlay(Geometry a, Geometry b, int op) {
    return OverlayNGRobust.overlay(a, b, op);
  }

  private static void add(List<Piece> kept, Piece piece, Geometry ground) {
    polygons(ground).forEach(p -> kept.add(piece.over(p)));
  }

  static List<Polygon> polygons(Geometry geometry) {
    List<Polygon> out = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        out.add(p);
      }
    }
    return out;
  }
}
