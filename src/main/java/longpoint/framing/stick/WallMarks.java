package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/** Where along its walls the rafters of a part stand that is not one straight run. */
final class WallMarks {
  /** Walls that differ by no more than this many degrees run the same way. */
  private static final double SAME_WAY = 0.01;

  /** No valley runs nearer along a wall than this sine. */
  private static final double STEEP = 0.1;

  private final Plan plan;
  private final Part part;
  private final RoofSurface surface;
  private final double thickness;
  private final double near;
  private final List<Opening> openings;

  /**
   * @param near lines shorter than this are none
   */
  WallMarks(Plan plan, Part part, RoofSurface surface, List<Opening> openings, double near) {
    this.openings = openings;
    this.plan = plan;
    this.part = part;
    this.surface = surface;
    this.thickness = part.frame().thickness();
    this.near = near;
  }

  /**
   * On and on along a wall, for beside a valley a plane spreads past the ends of its wall; flush
   * inside a gable. Walls that run the same way take the same marks, so that rafters stand opposite
   * each other at a ridge. Under a roof without a ridge marks lie evenly about the middle of each
   * wall, and jacks meet in pairs on the hips.
   */
  private List<Double> stations(Side side) {
    double length = side.wall().length();
    double spacing = part.frame().spacing();
    double reach = part.outline().perimeter();
    boolean flushStart = isGable(side.wall().from(), side);
    boolean flushEnd = isGable(side.wall().to(), side);
    double first = first(side);
    double from = flushStart ? thickness * 3 / 2 : -reach;
    double to = flushEnd ? length - thickness * 3 / 2 : length + reach;
    List<Double> stations = new ArrayList<>();
    if (flushStart) {
      stations.add(thickness / 2);
    }
    for (long k = (long) Math.ceil((from - first) / spacing); first + k * spacing < to; k++) {
      stations.add(first + k * spacing);
    }
    if (flushEnd) {
      stations.add(length - thickness / 2);
    }
    return stations;
  }

  /** A rafter that would stand in the wood of a peak or a ridge's end moves onto its middle. */
  List<Double> along(Side side, RoofPlane plane) {
    List<Double> stations = stations(side);
    List<Double> peaks = new ArrayList<>();
    for (RoofLine line : surface.lines()) {
      if (line.planes().contains(plane.id()) && line.run() >= near) {
        if (line.kind() == LineKind.RIDGE) {
          peaks.add(side.wall().along(line.from().plan()));
        }
        if (line.kind() == LineKind.RIDGE || line.kind() == LineKind.HIP) {
          peaks.add(side.wall().along(line.to().plan()));
        }
      }
    }
    List<Double> moved = new ArrayList<>();
    for (double station : stations) {
      double clear = clearOfValleys(side, plane, station);
      double to =
          peaks.stream().filter(p -> Math.abs(p - clear) < thickness).findFirst().orElse(clear);
      if (moved.stream().noneMatch(m -> Math.abs(m - to) < thickness / 2)) {
        moved.add(to);
      }
    }
    List<Double> trimmers =
        openings.stream()
            .filter(o -> o.isOver(side))
            .flatMap(o -> o.trimmers(thickness).stream())
            .map(side.wall()::along)
            .toList();
    return Opening.withTrimmers(moved, trimmers, thickness, side.wall().length());
  }

  /** Moved along the wall out of the wood of a valley that starts at the end of it. */
  private double clearOfValleys(Side side, RoofPlane plane, double station) {
    Segment wall = side.wall();
    for (RoofLine line : surface.lines()) {
      if (line.kind() == LineKind.VALLEY && line.planes().contains(plane.id())) {
        Point valley = line.to().plan().minus(line.from().plan());
        double sine = Math.abs(valley.unit().cross(wall.direction()));
        double least = thickness / 2 * (1 + 1 / Math.max(sine, STEEP));
        if (reaches(line, wall.from()) && station >= -near && station < least) {
          return least;
        }
        double end = wall.length();
        if (reaches(line, wall.to()) && station <= end + near && station > end - least) {
          return end - least;
        }
      }
    }
    return station;
  }

  /** Whether a line passes over the end of a wall. */
  private boolean reaches(RoofLine line, Point end) {
    return new Segment(line.from().plan(), line.to().plan()).distance(end) < near;
  }

  /** A mark of a wall, measured from its start; all others lie whole spacings from it. */
  private double first(Side side) {
    Segment wall = side.wall();
    if (surface.lines().stream().noneMatch(l -> l.kind() == LineKind.RIDGE && isOfPart(l))) {
      return wall.length() / 2 + part.frame().spacing() / 2;
    }
    Segment origin =
        plan.sides(part).stream()
            .filter(s -> s.kind() == EdgeKind.EAVE)
            .map(Side::wall)
            .filter(w -> angle(w.direction(), wall.direction()) < SAME_WAY)
            .findFirst()
            .orElse(wall);
    return wall.along(origin.from());
  }

  /** Whether the wall that shares a corner with a side is a gable. */
  private boolean isGable(Point corner, Side side) {
    return plan.sides(part).stream()
        .filter(s -> s.index() != side.index())
        .filter(s -> s.wall().from().equals(corner) || s.wall().to().equals(corner))
        .anyMatch(s -> s.kind() == EdgeKind.GABLE);
  }

  private boolean isOfPart(RoofLine line) {
    return line.planes().stream()
        .flatMap(id -> surface.plane(id).stream())
        .anyMatch(p -> p.part().equals(part.id()));
  }

  /** Between two lines in plan, degrees, at most 90. */
  static double angle(Point a, Point b) {
    return Math.toDegrees(Math.atan2(Math.abs(a.cross(b)), Math.abs(a.dot(b))));
  }
}
