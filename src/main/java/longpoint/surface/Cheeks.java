package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Jts;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.plan.EdgeKind;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Location;

/**
 * Finds cheeks, the walls of a dormer beside its open side, that stop before they have run into the
 * slope behind: between wall and slope the house would be open to the weather.
 */
final class Cheeks {
  /** Rise over run below which a slope never comes up to a wall's top. */
  private static final double LEVEL = 1e-6;

  private final Presence presence;
  private final LengthUnit unit;
  private final double near;
  private final List<Problem> problems = new ArrayList<>();

  private Cheeks(Presence presence, LengthUnit unit, double near) {
    this.presence = presence;
    this.unit = unit;
    this.near = near;
  }

  static List<Problem> check(Presence presence, LengthUnit unit, double near) {
    Cheeks cheeks = new Cheeks(presence, unit, near);
    for (int part = 0; part < presence.parts(); part++) {
      PartRoof roof = presence.roof(part);
      for (Side open : roof.sides()) {
        if (open.kind() == EdgeKind.OPEN) {
          cheeks.beside(roof, open);
        }
      }
    }
    return cheeks.problems;
  }

  /** The cheek that stops further short speaks for both. */
  private void beside(PartRoof roof, Side open) {
    double most = 0;
    String beneath = "";
    for (Side cheek : roof.sides()) {
      boolean before = cheek.wall().to().equals(open.wall().from());
      boolean after = cheek.wall().from().equals(open.wall().to());
      if (before || after) {
        Point end = before ? cheek.wall().to() : cheek.wall().from();
        Point on = cheek.wall().direction().times(before ? 1 : -1);
        Optional<Piece> slope = slopeUnder(roof, end);
        double missing = slope.map(s -> missing(roof, cheek, end, on, s.plane())).orElse(0.0);
        if (missing > most) {
          most = missing;
          beneath = slope.orElseThrow().part();
        }
      }
    }
    if (most > near) {
      problems.add(
          Problem.warning(
              open.id(),
              Phrase.of(
                  "surface.open.cheeks",
                  PlaceName.part(roof.part()),
                  new LengthFigure(most, unit),
                  PlaceName.part(beneath))));
    }
  }

  /** How much longer a cheek must be for its top to run into the slope; 0 when it does already. */
  private static double missing(PartRoof roof, Side cheek, Point end, Point on, Plane slope) {
    Plane top = new Plane(0, 0, cheek.plateHeight());
    if (cheek.kind() == EdgeKind.GABLE) {
      Optional<Piece> above = highest(roof, end);
      if (above.isEmpty()) {
        return 0;
      }
      top = above.get().plane().raised(-roof.sides().get(above.get().side()).heel());
    } else if (cheek.kind() != EdgeKind.EAVE) {
      return 0;
    }
    double gap = top.heightAt(end) - slope.heightAt(end);
    double closing =
        slope.a() * on.x() + slope.b() * on.y() - (top.a() * on.x() + top.b() * on.y());
    return gap > 0 && closing > LEVEL ? gap / closing : 0;
  }

  /** The highest slope of another part at a place well within that part's walls. */
  private Optional<Piece> slopeUnder(PartRoof roof, Point place) {
    Optional<Piece> best = Optional.empty();
    for (int other = 0; other < presence.parts(); other++) {
      PartRoof beneath = presence.roof(other);
      if (beneath != roof
          && SimplePointInAreaLocator.isContained(Jts.coordinate(place), beneath.walls())
          && beneath.sides().stream().allMatch(s -> s.wall().distance(place) > near)) {
        Optional<Piece> found = highest(beneath, place);
        if (best.isEmpty() || (found.isPresent() && above(found.get(), best.get(), place))) {
          best = found;
        }
      }
    }
    return best;
  }

  private static Optional<Piece> highest(PartRoof roof, Point place) {
    return roof.pieces().stream()
        .filter(
            p ->
                SimplePointInAreaLocator.locate(Jts.coordinate(place), p.ground())
                    != Location.EXTERIOR)
        .reduce((a, b) -> above(b, a, place) ? b : a);
  }

  private static boolean above(Piece a, Piece b, Point place) {
    return a.plane().heightAt(place) > b.plane().heightAt(place);
  }
}
