package longpoint.framing.stick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.framing.run.Mouth;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * Rafters of a part that is not one straight run: wings, crooked walls, courtyards. Read off the
 * solved roof: on each plane a rafter square to its eave at every spacing, from line to line; and
 * every ridge, hip and valley itself. What an end meets is the roof line it lies on.
 */
final class PlaneSticks {
  /**
   * Two boards nearer to parallel than this many degrees do not pass each other but butt end to
   * end, cut square. A jack comes as near to its hip as that only where one slope is over eleven
   * times the other.
   */
  private static final double END_TO_END = 5;

  private final Plan plan;
  private final Part part;
  private final RoofSurface surface;
  private final List<Mouth> mouths;
  private final double thickness;
  private final double near;
  private final WallMarks marks;
  private final List<Stick> sticks = new ArrayList<>();

  private PlaneSticks(
      Plan plan,
      Part part,
      RoofSurface surface,
      List<Mouth> mouths,
      List<Opening> openings,
      double near) {
    this.mouths = mouths.stream().filter(m -> m.part().equals(part.id())).toList();
    this.plan = plan;
    this.part = part;
    this.surface = surface;
    this.thickness = part.frame().thickness();
    this.near = near;
    this.marks = new WallMarks(plan, part, surface, openings, near);
  }

  /**
   * @param mouths where tails are left off
   * @param openings of dormers
   * @param near how close an end lies to a line that it meets
   */
  static List<Stick> lay(
      Plan plan,
      Part part,
      RoofSurface surface,
      List<Mouth> mouths,
      List<Opening> openings,
      double near) {
    PlaneSticks layer = new PlaneSticks(plan, part, surface, mouths, openings, near);
    for (RoofPlane plane : surface.planes()) {
      if (plane.part().equals(part.id())) {
        layer.onPlane(plane);
      }
    }
    for (RoofLine line : surface.lines()) {
      layer.along(line);
    }
    return SupportingValleys.runOn(layer.sticks, layer.thickness, near);
  }

  private void onPlane(RoofPlane plane) {
    Side side = plan.side(part, plane.edge());
    for (double station : marks.along(side, plane)) {
      Point wall = side.wall().from().plus(side.wall().direction().times(station));
      for (double[] stretch : stretches(plane, wall, side.wall().direction().left())) {
        rafter(plane, side, wall, stretch[0], stretch[1]);
      }
    }
  }

  /** From one distance in from the wall to another. */
  private void rafter(RoofPlane plane, Side side, Point wall, double from, double to) {
    Point in = side.wall().direction().left();
    boolean onWall = from < near;
    Point foot = onWall ? wall : wall.plus(in.times(from));
    Point head = wall.plus(in.times(to));
    if (to - Math.max(from, 0) < 2 * thickness) {
      return;
    }
    Optional<RoofLine> below = onWall ? Optional.empty() : footLine(plane, foot);
    Optional<RoofLine> above = headLine(plane, head);
    Joint atFoot = onWall ? Joint.WALL : joint(below, in.times(-1), in);
    Joint atHead = joint(above, in, in);
    double left = foot.distance(head) - atFoot.off() - atHead.off();
    if (left < thickness) {
      return;
    }
    RafterKind kind = kind(below, above);
    Stick rafter =
        Stick.of(kind, part.id(), part.id(), foot, head, side.slope().ratio())
            .withFoot(atFoot)
            .withHead(atHead)
            .withRow(
                kind == RafterKind.COMMON
                    ? ""
                    : plane.id() + "-" + name(below) + "-" + name(above));
    if (onWall) {
      boolean open = mouths.stream().anyMatch(m -> m.holds(wall, thickness / 2));
      rafter = rafter.withHeel(side.heel()).withTail(open ? 0 : side.overhang());
    }
    sticks.add(rafter);
  }

  private static String name(Optional<RoofLine> line) {
    return line.map(RoofLine::id).orElse("");
  }

  private static RafterKind kind(Optional<RoofLine> below, Optional<RoofLine> above) {
    boolean valley = below.filter(l -> l.kind() == LineKind.VALLEY).isPresent();
    boolean hip = above.filter(l -> l.kind() == LineKind.HIP).isPresent();
    if (valley) {
      return hip ? RafterKind.CRIPPLE : RafterKind.VALLEY_JACK;
    }
    return hip ? RafterKind.HIP_JACK : RafterKind.COMMON;
  }

  private Joint joint(Optional<RoofLine> line, Point out, Point up) {
    return line.map(l -> joint(bearing(l), out, up, direction(l))).orElse(Joint.NONE);
  }

  private Joint joint(Bearing on, Point out, Point up, Point other) {
    return WallMarks.angle(out, other) < END_TO_END
        ? Joint.square(on == Bearing.RIDGE ? Bearing.RIDGE_END : on, thickness / 2)
        : Joint.against(on, thickness, out, up, other);
  }

  private static Bearing bearing(RoofLine line) {
    return switch (line.kind()) {
      case RIDGE -> Bearing.RIDGE;
      case HIP -> Bearing.HIP;
      case VALLEY -> Bearing.VALLEY;
      case EAVE, RAKE, BREAK, ABUTMENT, STEP -> Bearing.NOTHING;
    };
  }

  private static Point direction(RoofLine line) {
    return line.to().plan().minus(line.from().plan()).unit();
  }

  /** What a rafter stands on above the wall: the hip or valley that bounds its plane there. */
  private Optional<RoofLine> footLine(RoofPlane plane, Point foot) {
    return linesAt(foot).min(Comparator.comparing(l -> !l.planes().contains(plane.id())));
  }

  /**
   * What a rafter heads on. Where hip and ridge share a corner it is the ridge, half of whose
   * thickness comes off a common there as anywhere along it; of two others, the one that bounds its
   * plane.
   */
  private Optional<RoofLine> headLine(RoofPlane plane, Point head) {
    return linesAt(head)
        .min(
            Comparator.comparing((RoofLine l) -> l.kind() != LineKind.RIDGE)
                .thenComparing(l -> !l.planes().contains(plane.id())));
  }

  /** The ridges, hips and valleys of this part that a point lies on. */
  private Stream<RoofLine> linesAt(Point p) {
    return surface.lines().stream()
        .filter(l -> isRidgeHipOrValley(l) && mine(l) && l.run() >= near)
        .filter(l -> new Segment(l.from().plan(), l.to().plan()).distance(p) < near);
  }

  private static boolean isRidgeHipOrValley(RoofLine line) {
    return switch (line.kind()) {
      case RIDGE, HIP, VALLEY -> true;
      case EAVE, RAKE, BREAK, ABUTMENT, STEP -> false;
    };
  }

  private boolean mine(RoofLine line) {
    return own(line).findFirst().isPresent();
  }

  /** The planes of this part that a line bounds. */
  private Stream<RoofPlane> own(RoofLine line) {
    return line.planes().stream()
        .flatMap(id -> surface.plane(id).stream())
        .filter(p -> p.part().equals(part.id()));
  }

  /** Where a line square to the eave runs over a plane, as distances from the wall, rising. */
  private List<double[]> stretches(RoofPlane plane, Point wall, Point in) {
    List<double[]> found = new ArrayList<>();
    List<Region> ground = new ArrayList<>(plane.visible());
    ground.addAll(plane.covered());
    for (Region region : ground) {
      List<Double> cuts = new ArrayList<>(cuts(region.shell(), wall, in));
      region.holes().forEach(hole -> cuts.addAll(cuts(hole, wall, in)));
      cuts.sort(null);
      for (int i = 0; i + 1 < cuts.size(); i += 2) {
        found.add(new double[] {cuts.get(i), cuts.get(i + 1)});
      }
    }
    found.sort((a, b) -> Double.compare(a[0], b[0]));
    return joined(found);
  }

  private static List<Double> cuts(Ring ring, Point wall, Point in) {
    List<Double> cuts = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      double a = in.cross(ring.corner(i).minus(wall));
      double b = in.cross(ring.corner(i + 1).minus(wall));
      if (a > 0 != b > 0) {
        cuts.add(in.dot(ring.corner(i).toward(ring.corner(i + 1), a / (a - b)).minus(wall)));
      }
    }
    return cuts;
  }

  /** Stretches that touch, as where a plane goes under another part's roof, are one rafter. */
  private List<double[]> joined(List<double[]> sorted) {
    List<double[]> joined = new ArrayList<>();
    for (double[] next : sorted) {
      double[] last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && next[0] - last[1] < near) {
        last[1] = Math.max(last[1], next[1]);
      } else {
        joined.add(next);
      }
    }
    return joined;
  }

  /** A ridge board, hip or valley rafter along a roof line. */
  private void along(RoofLine line) {
    if (!mine(line) || line.run() < 3 * thickness) {
      return;
    }
    switch (line.kind()) {
      case RIDGE -> add(RafterKind.RIDGE, line);
      case HIP -> add(RafterKind.HIP, line);
      case VALLEY -> add(RafterKind.VALLEY, line);
      case EAVE, RAKE, BREAK, ABUTMENT, STEP -> {}
    }
  }

  private void add(RafterKind kind, RoofLine line) {
    Point head = line.to().plan();
    Point edge = line.from().plan();
    Optional<Point> wall = kind == RafterKind.RIDGE ? Optional.empty() : wallCrossing(edge, head);
    Point foot = wall.orElse(edge);
    Stick stick = Stick.of(kind, part.id(), part.id(), foot, head, line.rise() / line.run());
    if (kind != RafterKind.RIDGE) {
      Point up = direction(line);
      stick =
          stick.withHead(
              ridgeAt(head, line)
                  .map(l -> joint(Bearing.RIDGE, up, up, direction(l)))
                  .orElse(Joint.NONE));
    }
    if (kind != RafterKind.RIDGE) {
      stick = stick.withFalls(falls(line));
    }
    sticks.add(wall.isPresent() ? onWall(stick, line) : stick);
  }

  /** Over the plate, with its tail, cut for both boards of the fascia. */
  private Stick onWall(Stick stick, RoofLine line) {
    List<Side> sides = own(line).map(p -> plan.side(part, p.edge())).toList();
    Side eave = sides.get(0);
    Point foot = stick.foot();
    double out = foot.distance(line.from().plan());
    double tail = eave.reach() > 0 ? out * eave.overhang() / eave.reach() : 0;
    double height = eave.framePlane().heightAt(foot) - eave.plateHeight();
    Stick on = stick.withTail(tail).withHeel(height).withFoot(Joint.WALL);
    if (sides.size() < 2) {
      return on;
    }
    Point one = sides.get(0).wall().direction();
    Point other = sides.get(1).wall().direction();
    return on.withFoot(
        stick.kind() == RafterKind.HIP
            ? Joint.hipFascia(stick.up(), one, other)
            : Joint.valleyFascia(stick.up(), one, other));
  }

  /** Where a line from the roof's edge first passes over a wall of the part. */
  private Optional<Point> wallCrossing(Point edge, Point head) {
    double first = Double.POSITIVE_INFINITY;
    for (int i = 0; i < part.sideCount(); i++) {
      Segment wall = part.side(i);
      double a = wall.offset(edge);
      double b = wall.offset(head);
      if (a < near && b > near) {
        Point at = edge.toward(head, a / (a - b));
        first = wall.distance(at) < near ? Math.min(first, edge.distance(at)) : first;
      }
    }
    return Double.isFinite(first)
        ? Optional.of(edge.plus(head.minus(edge).unit().times(first)))
        : Optional.empty();
  }

  private Optional<RoofLine> ridgeAt(Point p, RoofLine not) {
    return surface.lines().stream()
        .filter(l -> l != not && l.kind() == LineKind.RIDGE && mine(l) && l.run() > near)
        .filter(l -> l.from().plan().distance(p) < near || l.to().plan().distance(p) < near)
        .findFirst();
  }

  private Stick.Falls falls(RoofLine line) {
    List<Plane> beside =
        line.planes().stream().map(id -> surface.plane(id).orElseThrow().plane()).toList();
    if (line.kind() == LineKind.VALLEY && !beside.isEmpty()) {
      return Stick.Falls.even(direction(line), beside.get(0));
    }
    return beside.size() < 2
        ? Stick.Falls.NONE
        : Stick.Falls.beside(direction(line), beside.get(0), beside.get(1));
  }
}
