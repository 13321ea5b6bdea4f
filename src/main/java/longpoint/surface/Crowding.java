package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;
import org.locationtech.jts.geom.Geometry;

/**
 * Finds overhangs of one part that reach over one another, as in a notch narrower than the two
 * overhangs beside it.
 */
final class Crowding {
  private Crowding() {}

  /**
   * A warning for each two sides that face each other across too narrow a gap; where none do, for
   * each two whose roofs share ground.
   */
  static List<Problem> find(
      List<Piece> strips, List<Piece> faces, List<Side> sides, LengthUnit unit, double grain) {
    List<Pair> found = new ArrayList<>();
    for (int i = 0; i < strips.size(); i++) {
      for (int j = i + 1; j < strips.size(); j++) {
        look(strips.get(i), strips.get(j), sides, grain, found);
      }
      for (Piece face : faces) {
        look(strips.get(i), face, sides, grain, found);
      }
    }
    boolean anyFacing = found.stream().anyMatch(Pair::facing);
    return found.stream()
        .filter(p -> p.facing() || !anyFacing)
        .map(p -> p.warning(unit))
        .distinct()
        .toList();
  }

  private static void look(Piece a, Piece b, List<Side> sides, double grain, List<Pair> found) {
    if (a.side() == b.side()
        || !a.ground().getEnvelopeInternal().intersects(b.ground().getEnvelopeInternal())) {
      return;
    }
    Geometry shared = Overlay.intersection(a.ground(), b.ground(), grain);
    if (shared.getArea() > 4 * grain * shared.getLength()) {
      Side one = sides.get(Math.min(a.side(), b.side()));
      Side other = sides.get(Math.max(a.side(), b.side()));
      found.add(new Pair(one, other));
    }
  }

  private record Pair(Side one, Side other) {
    /**
     * Cosine below which two walls face each other squarely enough to speak of the room between.
     */
    private static final double FACING = -0.999;

    boolean facing() {
      return one.wall().direction().dot(other.wall().direction()) < FACING;
    }

    Problem warning(LengthUnit unit) {
      double room = Math.abs(one.wall().offset(other.wall().middle()));
      double overhang = room / 2 - Math.max(one.fascia(), other.fascia());
      Phrase wrong = Phrase.of("surface.crowded", PlaceName.wall(one), PlaceName.wall(other));
      return facing() && overhang >= 0
          ? new Problem(
              Problem.Level.WARNING,
              other.id(),
              wrong,
              Phrase.of("surface.crowded.under", new LengthFigure(overhang, unit)))
          : Problem.warning(other.id(), wrong);
    }
  }
}
