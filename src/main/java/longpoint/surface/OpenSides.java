package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Jts;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.wording.Phrase;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.distance.DistanceOp;

/** Says where an open side meets no roof, or runs out past the one it meets. */
final class OpenSides {
  private final Presence presence;
  private final List<PartRoof> all;
  private final LengthUnit unit;
  private final double near;
  private final List<Problem> problems = new ArrayList<>();

  private OpenSides(Presence presence, List<PartRoof> all, LengthUnit unit, double near) {
    this.presence = presence;
    this.all = all;
    this.unit = unit;
    this.near = near;
  }

  /**
   * Problems of the open sides of a cluster.
   *
   * @param all every roof on the plan, for what stands nearest
   */
  static List<Problem> check(JoinedRoof roof, List<PartRoof> all, LengthUnit unit) {
    Presence presence = roof.joining().presence();
    OpenSides open = new OpenSides(presence, all, unit, roof.grain().near());
    for (int part = 0; part < presence.parts(); part++) {
      for (Side side : presence.roof(part).sides()) {
        if (side.kind() == EdgeKind.OPEN) {
          open.meets(part, side);
        }
      }
    }
    roof.joining().runsOn().forEach(open::staysOn);
    open.problems.addAll(Cheeks.check(presence, unit, open.near));
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
      problems.add(meetsNothing(side));
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

  private Problem meetsNothing(Side side) {
    double gap = Double.POSITIVE_INFINITY;
    String nearest = "";
    LineString wall =
        Jts.FACTORY.createLineString(
            new Coordinate[] {
              Jts.coordinate(side.wall().from()), Jts.coordinate(side.wall().to())
            });
    for (PartRoof other : all) {
      if (!other.part().equals(side.part())) {
        double distance = DistanceOp.distance(wall, other.own());
        if (distance < gap) {
          gap = distance;
          nearest = other.part();
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
              where(roof),
              Phrase.of(
                  "surface.open.overRidge",
                  PlaceName.part(roof.part()),
                  figure(runOn.height() - runOn.met()))));
    } else if (!runOn.out().isEmpty()) {
      problems.add(
          Problem.warning(
              where(roof), Phrase.of("surface.open.pastEdge", PlaceName.part(roof.part()))));
    }
  }

  /** The open side; the part as a whole where it has several. */
  private static String where(PartRoof roof) {
    List<Side> open = roof.sides().stream().filter(s -> s.kind() == EdgeKind.OPEN).toList();
    return open.size() == 1 ? open.get(0).id() : roof.part();
  }

  private LengthFigure figure(double length) {
    return new LengthFigure(length, unit);
  }
}
