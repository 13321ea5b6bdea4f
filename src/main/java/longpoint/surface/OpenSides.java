package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;
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
              capital(side)
                  + " is open, but "
                  + text(length - met)
                  + " of it has no other roof beyond it.",
              "Draw the side no longer than the roof it meets, or make the rest a gable."));
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
          nearest = Wording.part(presence.roof(other).part());
        }
      }
    }
    String cure =
        nearest.isEmpty()
            ? "Make it a gable or an eave, or draw the part it should meet."
            : "The roof of "
                + nearest
                + " is "
                + text(gap)
                + " away: draw the side up to it, or make the side a gable.";
    return Problem.error(side.id(), capital(side) + " is open, but no roof begins there.", cure);
  }

  private void staysOn(RunOn runOn) {
    PartRoof roof = presence.roof(runOn.part());
    if (runOn.passesRidge()) {
      problems.add(
          Problem.error(
              roof.part(),
              "The roof of "
                  + Wording.part(roof.part())
                  + " passes over the ridge of the roof it runs into, "
                  + text(runOn.height() - runOn.met())
                  + " too high; it is shown no further than its open side.",
              "Lower its plate, heel or slope by that much at the ridge, or close the open side with"
                  + " a gable."));
    } else if (!runOn.out().isEmpty()) {
      problems.add(
          Problem.warning(
              roof.part(),
              "The roof of "
                  + Wording.part(roof.part())
                  + " runs out past the edge of the roof it lies over.",
              "Move it in from the edge, or lower its plate or heel."));
    }
  }

  private String text(double length) {
    return LengthText.of(length, unit);
  }

  private static String capital(Side side) {
    String name = Wording.side(side);
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }
}
