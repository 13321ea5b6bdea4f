package longpoint.surface;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * Every figure of a roof line that follows from the planes beside it. Angles in degrees, lengths in
 * plan units.
 *
 * <p>For hips and valleys of square corners these are the figures on a framing square; the formulas
 * hold for any corner and any two slopes. The hip's cross-section is taken square to the hip
 * itself.
 *
 * @param length true length
 * @param run length on the flat plan
 * @param rise from the lower end to the upper
 * @param bearing direction in plan from the lower end, clockwise from the top of the page, 0 to 360
 * @param slope rise over run of the line itself
 * @param degrees the same as an angle from level
 * @param sides figures of each plane beside the line, in the order of the line's planes
 * @param dihedral angle between the two planes, 180 when flush; empty for an edge of one plane or a
 *     step
 */
public record LineFigures(
    double length,
    double run,
    double rise,
    double bearing,
    double slope,
    double degrees,
    List<Beside> sides,
    OptionalDouble dihedral) {
  /**
   * Cosine above which a side of the ground runs along the line rather than off it; the two share
   * their corners, so the nearest one that runs along is the line itself.
   */
  private static final double ALONG = 0.999;

  /**
   * What one plane does beside the line.
   *
   * @param plane id of the plane
   * @param planAngle in plan between the line and the plane's level lines, 0 to 90
   * @param cross rise over run of the plane level and square away from the line; negative falls
   * @param backing angle, square to the line, between the plane and a top that is level crosswise
   */
  public record Beside(String plane, double planAngle, double cross, double backing) {}

  public LineFigures {
    sides = List.copyOf(sides);
  }

  /** Level run for one unit of rise; infinite when the line is level. */
  public double runPerRise() {
    return 1 / slope;
  }

  /**
   * How far a square-topped hip is set down so that its top edges lie in the two planes; for a
   * valley, how far its edges would stand below them.
   *
   * @param thickness of the stock, plan units
   */
  public double drop(double thickness) {
    return thickness / 2 * sides.stream().mapToDouble(s -> Math.abs(s.cross())).max().orElse(0);
  }

  static LineFigures of(RoofLine line, List<RoofPlane> planes) {
    Point from = line.from().plan();
    Segment plan = new Segment(from, line.to().plan());
    Point along = plan.direction();
    double slope = line.rise() / line.run();
    List<Beside> sides = planes.stream().map(p -> beside(p, along, inside(p, plan))).toList();
    boolean meets = planes.size() == 2 && line.kind() != LineKind.STEP;
    OptionalDouble dihedral =
        meets
            ? OptionalDouble.of(180 - apart(planes.get(0).plane(), planes.get(1).plane()))
            : OptionalDouble.empty();
    return new LineFigures(
        line.length(),
        line.run(),
        line.rise(),
        Math.toDegrees((Math.atan2(along.x(), along.y()) + 2 * Math.PI) % (2 * Math.PI)),
        slope,
        Math.toDegrees(Math.atan(slope)),
        sides,
        dihedral);
  }

  private static Beside beside(RoofPlane plane, Point along, Point in) {
    Point rise = new Point(plane.plane().a(), plane.plane().b());
    double cross = rise.dot(in);
    double lengthwise = rise.dot(along);
    double steep = rise.length();
    return new Beside(
        plane.id(),
        steep == 0 ? 0 : Math.toDegrees(Math.asin(Math.min(1, Math.abs(lengthwise) / steep))),
        cross,
        Math.toDegrees(Math.atan(Math.abs(cross) / Math.hypot(1, lengthwise))));
  }

  /** One unit square away from the line into the plane's ground. */
  private static Point inside(RoofPlane plane, Segment line) {
    Point along = line.direction();
    double nearest = Double.POSITIVE_INFINITY;
    Point in = along.left();
    for (Segment side : sides(plane)) {
      double distance = side.distance(line.middle());
      double turn = side.direction().dot(along);
      if (distance < nearest && Math.abs(turn) > ALONG) {
        nearest = distance;
        in = side.direction().left();
      }
    }
    return in;
  }

  /** The sides of a plane's ground, with the ground on their left. */
  private static List<Segment> sides(RoofPlane plane) {
    return Stream.concat(plane.visible().stream(), plane.covered().stream())
        .flatMap(r -> Stream.concat(Stream.of(r.shell()), r.holes().stream()))
        .flatMap(r -> IntStream.range(0, r.size()).mapToObj(r::side))
        .toList();
  }

  private static double apart(Plane p, Plane q) {
    double dot = p.a() * q.a() + p.b() * q.b() + 1;
    double x = p.b() - q.b();
    double y = q.a() - p.a();
    double z = p.a() * q.b() - p.b() * q.a();
    return Math.toDegrees(Math.atan2(Math.hypot(Math.hypot(x, y), z), dot));
  }
}
