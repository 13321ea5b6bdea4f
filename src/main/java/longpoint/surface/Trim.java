package longpoint.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Cuts the planes of a part back to its roof outline, where an eave starts so high that its base
 * lies outside its own fascia or a corner is so flat that a strip runs past the next one.
 *
 * <p>Ground that a plane loses at an inside corner because it lies beyond its own fascia goes to
 * the neighbour, whose roof runs on beneath that fascia.
 */
record Trim(Contour contour, Polygon outline, double grain) {
  List<Piece> apply(List<Piece> pieces) {
    List<Piece> kept = new ArrayList<>();
    for (Piece piece : pieces) {
      Contour.Run run = run(piece.side());
      for (Polygon inside : polygons(Overlay.intersection(piece.ground(), outline, grain))) {
        if (run.spare() >= -grain) {
          kept.add(piece.over(inside));
        } else {
          cutAtFascia(piece.over(inside), run, pieces, kept);
        }
      }
    }
    return kept;
  }

  private void cutAtFascia(Piece piece, Contour.Run run, List<Piece> pieces, List<Piece> kept) {
    Polygon within = within(run);
    polygons(Overlay.intersection(piece.ground(), within, grain))
        .forEach(p -> kept.add(piece.over(p)));
    for (Polygon lost : polygons(Overlay.difference(piece.ground(), within, grain))) {
      inherit(lost, heirs(pieces, piece.side(), lost), kept);
    }
  }

  /** Each heir takes what lies within its own reach and leaves the rest to the next. */
  private void inherit(Polygon lost, List<Piece> heirs, List<Piece> kept) {
    if (heirs.isEmpty()) {
      return;
    }
    Piece heir = heirs.get(0);
    Polygon within = within(run(heir.side()));
    polygons(Overlay.intersection(lost, within, grain)).forEach(p -> kept.add(heir.over(p)));
    for (Polygon rest : polygons(Overlay.difference(lost, within, grain))) {
      inherit(rest, heirs.subList(1, heirs.size()), kept);
    }
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

  /** The neighbours at inside corners, the higher first: their roofs run on beneath the fascia. */
  private List<Piece> heirs(List<Piece> pieces, int loser, Polygon lost) {
    Point middle = Jts.point(lost.getInteriorPoint().getCoordinate());
    return contour.loops().stream()
        .flatMap(l -> neighbours(l, loser).stream())
        .filter(r -> !r.upright())
        .flatMap(r -> pieces.stream().filter(p -> p.side() == r.side()).limit(1))
        .sorted(Comparator.comparing(p -> -p.plane().heightAt(middle)))
        .toList();
  }

  /** The runs that meet a side at inside corners; returns between them are passed over. */
  private static List<Contour.Run> neighbours(Contour.Loop loop, int side) {
    List<Contour.Run> runs =
        loop.runs().stream().filter(r -> r.side() != Contour.Run.RETURN).toList();
    List<Contour.Run> found = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Contour.Run before = runs.get(i);
      Contour.Run after = runs.get((i + 1) % runs.size());
      boolean turnsIn = before.line().direction().cross(after.line().direction()) < 0;
      if (turnsIn && after.side() == side) {
        found.add(before);
      } else if (turnsIn && before.side() == side) {
        found.add(after);
      }
    }
    return found;
  }

  private List<Polygon> polygons(Geometry result) {
    List<Polygon> out = new ArrayList<>();
    for (int i = 0; i < result.getNumGeometries(); i++) {
      if (result.getGeometryN(i) instanceof Polygon p && p.getArea() > grain * p.getLength()) {
        out.add(p);
      }
    }
    return out;
  }
}
