package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.stop.CalledOff;
import longpoint.wording.Phrase;
import org.locationtech.jts.geom.Geometry;

/**
 * Looks the joined roof over: what is seen fills the ground of all parts once, and within one part
 * the surface breaks off only where an upright side stands.
 */
final class RoofCheck {
  /** As in {@link PartCheck}. */
  private static final double SHARE = 1e-9;

  private RoofCheck() {}

  static List<Problem> check(
      Ground ground,
      List<Standing> standing,
      List<LineFinder.Stretch> lines,
      List<PartRoof> roofs,
      Grain grain) {
    List<Problem> faults = new ArrayList<>();
    filled(ground, standing, roofs, grain).ifPresent(faults::add);
    for (PartRoof roof : roofs) {
      if (!roof.crowded()) {
        whole(roof, lines, grain).ifPresent(faults::add);
      }
    }
    return faults;
  }

  private static Optional<Problem> filled(
      Ground ground, List<Standing> standing, List<PartRoof> roofs, Grain grain) {
    Geometry all = Overlay.union(roofs.stream().map(PartRoof::own).toList(), grain.place());
    double seen = 0;
    for (int cell = 0; cell < standing.size(); cell++) {
      CalledOff.check();
      if (!standing.get(cell).empty()) {
        seen += ground.cells().get(cell).shape().getArea();
      }
    }
    double lost = Math.abs(all.getArea() - seen);
    if (lost <= SHARE * all.getArea() + grain.place() * all.getLength()) {
      return Optional.empty();
    }
    return Optional.of(Problem.error("plan", Phrase.of("surface.notFilled")));
  }

  private static Optional<Problem> whole(
      PartRoof roof, List<LineFinder.Stretch> lines, Grain grain) {
    for (LineFinder.Stretch line : lines) {
      boolean within = line.planes().stream().allMatch(p -> p.startsWith(roof.part() + "/"));
      if (line.kind() == LineKind.STEP && within && !stands(roof, line.line(), grain.near())) {
        return Optional.of(
            Problem.error(
                line.on().id(),
                Phrase.of(
                    "surface.breaksOff", PlaceName.wall(roof.sides().get(line.on().side())))));
      }
    }
    return Optional.empty();
  }

  /** On the line of an upright side, at a fascia, or out from a joint of two walls in one line. */
  private static boolean stands(PartRoof roof, Segment line, double near) {
    for (Side side : roof.sides()) {
      if (Math.abs(-side.wall().offset(line.from()) - side.reach()) < near
          && Math.abs(-side.wall().offset(line.to()) - side.reach()) < near) {
        return true;
      }
      for (Side next : roof.sides()) {
        if (next.wall().from().equals(side.wall().to())
            && Contour.flat(side.wall(), next.wall())
            && outFrom(side.wall(), next.wall(), line, near)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean outFrom(Segment before, Segment after, Segment line, double near) {
    Point out = before.direction().left().plus(after.direction().left()).unit();
    Point joint = after.from();
    return Math.abs(out.cross(line.from().minus(joint))) < near
        && Math.abs(out.cross(line.to().minus(joint))) < near;
  }
}
