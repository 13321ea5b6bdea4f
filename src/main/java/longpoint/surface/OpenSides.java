package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;
import org.locationtech.jts.operation.distance.DistanceOp;

/** Says where an open side meets no roof, or runs out past the one it meets. */
final class OpenSides {
  private final Presence presence;
  private final LengthUnit unit;
  private final double near;
  private final List<Problem> problems = new ArrayList<>();

  private OpenSides(Presence presence, LengthUnit unit, double near) {
    this.presence = presence;
    this.unit = unit;
    this.near = near;
  }

  static List<Problem> check(Presence presence, List<RunOn> runsOn, LengthUnit unit, Grain grain) {
    OpenSides open = new OpenSides(presence, unit, grain.near());
    for (int part = 0; part < presence.parts(); part++) {
      for (Side side : presence.roof(part).sides()) {
        if (side.kind() == EdgeKind.OPEN) {
          open.meets(part, side);
        }
      }
    }
    runsOn.forEach(open::staysOn);
    return open.problems;
  }

  /** An open side with nothing beyond it along some of its length leaves the roof agape. */
  private void meets(int part, Side side) {
    double length = 0;
    double met = 0;
    for (Ground.Border border : presence.ground().borders()) {
      if (along(border, side)) {
        length += border.length();
        if (other(part, border.left()) || other(part, border.right())) {
          met += border.length();
        }
      }
    }
    if (met <= near) {
      problems.add(meetsNothing(part, side));
    } else if (length - met > near) {
      problems.add(
          Problem.warning(
              side.id(),
              Phrase.of("surface.open.part", PlaceName.wall(side), figure(length - met))));
    }
  }

  private boolean along(Ground.Border border, Side side) {
    Segment wall = side.wall();
    return wall.distance(border.from()) <= near && wall.distance(border.to()) <= near;
  }

  private boolean other(int part, int cell) {
    return cell != Ground.NONE && (presence.sliver(cell) || presence.ownedByOther(part, cell));
  }

  private Problem meetsNothing(int part, Side side) {
    double gap = Double.POSITIVE_INFINITY;
    String nearest = "";
    for (int other = 0; other < presence.parts(); other++) {
      if (other != part) {
        Point a = side.wall().from();
        Point b = side.wall().to();
        double distance =
            DistanceOp.distance(
                longpoint.geometry.Jts.FACTORY.createLineString(
                    new org.locationtech.jts.geom.Coordinate[] {
                      longpoint.geometry.Jts.coordinate(a), longpoint.geometry.Jts.coordinate(b)
                    }),
                presence.roof(other).own());
        if (distance < gap) {
          gap = distance;
          nearest = presence.roof(other).part();
        }
      }
    }
    Phrase wrong = Phrase.of("surface.open.nothing", PlaceName.wall(side));
    if (nearest.isEmpty()) {
      return Problem.error(side.id(), wrong);
    }
    Phrase cure = Phrase.of("surface.open.near", PlaceName.part(nearest), figure(gap));
    return new Problem(Problem.Level.ERROR, side.id(), wrong, cure);
  }

  private void staysOn(RunOn runOn) {
    PartRoof roof = presence.roof(runOn.part());
    if (runOn.passesRidge()) {
      problems.add(
          Problem.error(
              roof.part(),
              Phrase.of(
                  "surface.open.overRidge",
                  PlaceName.part(roof.part()),
                  figure(runOn.height() - runOn.met()))));
    } else if (!runOn.out().isEmpty()) {
      problems.add(
          Problem.warning(
              roof.part(), Phrase.of("surface.open.pastEdge", PlaceName.part(roof.part()))));
    }
  }

  private LengthFigure figure(double length) {
    return new LengthFigure(length, unit);
  }
}
