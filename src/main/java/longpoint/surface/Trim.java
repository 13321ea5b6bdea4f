package longpoint.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
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
 * the roofs that run on beneath that fascia.
 */
final class Trim {
  private final Contour contour;
  private final Polygon outline;
  private final double grain;
  private final Supplier<List<Piece>> standing;

  /** What covers ground beyond a high fascia; worked out when it is asked for. */
  private List<Piece> beyond;

  /**
   * @param standing the planes of the part while every side that ends inside its base stands still
   *     at its fascia; empty if they cannot be worked out
   */
  Trim(Contour contour, Polygon outline, double grain, Supplier<List<Piece>> standing) {
    this.contour = contour;
    this.outline = outline;
    this.grain = grain;
    this.standing = standing;
  }

  List<Piece> apply(List<Piece> pieces) {
    List<Piece> inside = new ArrayList<>();
    for (Piece piece : pieces) {
      polygons(Overlay.intersection(piece.ground(), outline, grain))
          .forEach(p -> inside.add(piece.over(p)));
    }
    List<Piece> trimmed = inside;
    for (Contour.Run run : contour.runs()) {
      if (run.spare() < -grain) {
        trimmed = cutAtFascia(run, trimmed, inside);
      }
    }
    return trimmed;
  }

  private List<Piece> cutAtFascia(Contour.Run run, List<Piece> pieces, List<Piece> all) {
    Polygon within = within(run);
    List<Piece> kept = new ArrayList<>();
    List<Polygon> lost = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece.side() != run.side()) {
        kept.add(piece);
        continue;
      }
      polygons(Overlay.intersection(piece.ground(), within, grain))
          .forEach(p -> kept.add(piece.over(p)));
      for (Polygon p : polygons(Overlay.difference(piece.ground(), within, grain))) {
        if (beyondInsideCorner(run, p)) {
          lost.add(p);
        } else {
          kept.add(piece.over(p));
        }
      }
    }
    if (lost.isEmpty()) {
      return kept;
    }
    return standStill(within, lost, kept)
        .orElseGet(
            () -> {
              lost.forEach(p -> inherit(p, heirs(all, run.side(), p), kept));
              return kept;
            });
  }

  /**
   * The ground past the fascia line as it is while the high side stands still: until the roof comes
   * up to that fascia the side does, and afterwards it moves away. Nothing if the planes do not
   * cover it then.
   */
  private Optional<List<Piece>> standStill(Polygon within, List<Polygon> lost, List<Piece> kept) {
    List<Polygon> past =
        polygons(Overlay.difference(outline, within, grain)).stream()
            .filter(z -> lost.stream().anyMatch(l -> z.contains(l.getInteriorPoint())))
            .toList();
    if (beyond == null) {
      beyond = standing.get();
    }
    List<Piece> now = new ArrayList<>();
    for (Piece piece : kept) {
      Geometry left = piece.ground();
      for (Polygon zone : past) {
        left = Overlay.difference(left, zone, grain);
      }
      polygons(left).forEach(p -> now.add(piece.over(p)));
    }
    for (Polygon zone : past) {
      double covered = 0;
      for (Piece piece : beyond) {
        if (piece.ground().getEnvelopeInternal().intersects(zone.getEnvelopeInternal())) {
          for (Polygon p : polygons(Overlay.intersection(zone, piece.ground(), grain))) {
            now.add(piece.over(p));
            covered += p.getArea();
          }
        }
      }
      if (Math.abs(zone.getArea() - covered) > 4 * grain * zone.getLength()) {
        return Optional.empty();
      }
    }
    return Optional.of(now);
  }

  /**
   * Whether ground outside a run's reach lies past a corner where the outline turns in. Past one
   * that turns out there is such ground only under the wider overhang of a neighbour nearly in
   * line: the plane runs on over it to that overhang's edge.
   */
  private boolean beyondInsideCorner(Contour.Run run, Polygon lost) {
    boolean atStart = away(lost, run.line().from()) < away(lost, run.line().to());
    for (Contour.Loop loop : contour.loops()) {
      List<Contour.Run> runs = walls(loop);
      int i = runs.indexOf(run);
      if (i >= 0) {
        Contour.Run before = runs.get(Math.floorMod(atStart ? i - 1 : i, runs.size()));
        Contour.Run after = runs.get(Math.floorMod(atStart ? i : i + 1, runs.size()));
        return turnsIn(before, after);
      }
    }
    return true;
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
    List<Contour.Run> runs = walls(loop);
    List<Contour.Run> found = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Contour.Run before = runs.get(i);
      Contour.Run after = runs.get((i + 1) % runs.size());
      boolean turnsIn = turnsIn(before, after);
      if (turnsIn && after.side() == side) {
        found.add(before);
      } else if (turnsIn && before.side() == side) {
        found.add(after);
      }
    }
    return found;
  }

  private static List<Contour.Run> walls(Contour.Loop loop) {
    return loop.runs().stream().filter(r -> r.side() != Contour.Run.RETURN).toList();
  }

  private static double away(Polygon ground, Point corner) {
    return ground.distance(Jts.FACTORY.createPoint(Jts.coordinate(corner)));
  }

  private static boolean turnsIn(Contour.Run before, Contour.Run after) {
    return before.line().direction().cross(after.line().direction()) < 0;
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
