package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Edge;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Made-up houses from a seed: the same seed gives the same house. In inches. */
public final class RandomPlans {
  private static final double[] SLOPES = {3, 4, 5, 6, 8, 10, 12};
  private static final double[] OVERHANGS = {0, 12, 16, 16, 16, 24};
  private static final double STEP = 60;

  private final Random random;

  public RandomPlans(long seed) {
    random = new Random(seed);
  }

  /** One part of square corners: a few rectangles run together, now and then with a courtyard. */
  public Part house(String id) {
    List<Geometry> rectangles = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      double x = STEP * random.nextInt(6);
      double y = STEP * random.nextInt(6);
      double w = STEP * (2 + random.nextInt(6));
      double h = STEP * (2 + random.nextInt(6));
      rectangles.add(Jts.polygon(Ring.of(x, y, x + w, y, x + w, y + h, x, y + h)));
    }
    Region largest =
        Jts.regions(OverlayNGRobust.union(rectangles)).stream()
            .max((a, b) -> Double.compare(a.area(), b.area()))
            .orElseThrow();
    return part(
        id,
        97,
        withoutStraightCorners(largest.shell()),
        largest.holes().stream().map(RandomPlans::withoutStraightCorners).toList());
  }

  private static Ring withoutStraightCorners(Ring ring) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Point before = ring.corner(i).minus(ring.corner(i - 1));
      Point after = ring.corner(i + 1).minus(ring.corner(i));
      if (before.cross(after) != 0) {
        points.add(ring.corner(i));
      }
    }
    return new Ring(points);
  }

  /** One part with any corners: a ring around a middle, never crossing itself. */
  Part star(String id) {
    int corners = 3 + random.nextInt(8);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double turn = 2 * Math.PI * (i + 0.7 * random.nextDouble()) / corners;
      double out = 200 + 250 * random.nextDouble();
      points.add(new Point(Math.rint(out * Math.cos(turn)), Math.rint(out * Math.sin(turn))));
    }
    return part(id, 97, new Ring(points), List.of());
  }

  private Part part(String id, double plate, Ring shell, List<Ring> holes) {
    int sides = shell.size() + holes.stream().mapToInt(Ring::size).sum();
    Edge[] edges = new Edge[sides];
    double slope = pick(SLOPES);
    double overhang = pick(OVERHANGS);
    boolean mixed = random.nextInt(3) == 0;
    for (int i = 0; i < sides; i++) {
      boolean gable = i > 0 && random.nextInt(5) == 0;
      edges[i] =
          gable
              ? Plans.GABLE.withOverhang(mixed ? pick(OVERHANGS) : overhang)
              : Plans.eave(mixed ? pick(SLOPES) : slope)
                  .withOverhang(mixed ? pick(OVERHANGS) : overhang);
    }
    if (random.nextInt(6) == 0) {
      int raised = random.nextInt(sides);
      edges[raised] = edges[raised].withHeel(4.5 + random.nextInt(12));
    }
    return Plans.part(id, plate, shell, holes, edges);
  }

  /** A house with up to three gabled or hipped wings, each open towards it. */
  Plan winged() {
    List<Part> parts = new ArrayList<>();
    Part main = house("main");
    parts.add(main);
    int wings = random.nextInt(4);
    for (int w = 0; w < wings; w++) {
      Segment wall = main.side(random.nextInt(main.outline().size()));
      if (wall.length() >= 2 * STEP) {
        parts.add(wing("wing" + w, wall));
      }
    }
    return Plans.plan(parts.toArray(Part[]::new));
  }

  private Part wing(String id, Segment wall) {
    double room = wall.length();
    double width = Math.min(room, 84 + 12 * random.nextInt(10));
    double from = Math.floor((room - width) * random.nextDouble());
    Point along = wall.direction();
    Point out = along.left().times(-(60 + 12 * random.nextInt(10)));
    Point a = wall.from().plus(along.times(from));
    Point b = wall.from().plus(along.times(from + width));
    Ring ring = new Ring(List.of(a.plus(out), b.plus(out), b, a));
    double slope = pick(SLOPES);
    Edge side = Plans.eave(slope);
    Edge front = random.nextBoolean() ? Plans.GABLE.withOverhang(12) : Plans.eave(slope);
    double plate = random.nextInt(3) == 0 ? 97 + 6 * (random.nextInt(5) - 2) : 97;
    return Plans.part(id, plate, ring, front, side, Plans.OPEN, side);
  }

  /** The same plan turned about the origin. */
  static Plan turned(Plan plan, double degrees) {
    double c = Math.cos(Math.toRadians(degrees));
    double s = Math.sin(Math.toRadians(degrees));
    return changed(plan, p -> new Point(c * p.x() - s * p.y(), s * p.x() + c * p.y()));
  }

  static Plan changed(Plan plan, java.util.function.UnaryOperator<Point> where) {
    return plan.withParts(
        plan.parts().stream()
            .map(
                p ->
                    p.withShape(
                        ring(p.outline(), where),
                        p.holes().stream().map(h -> ring(h, where)).toList(),
                        p.edges()))
            .toList());
  }

  private static Ring ring(Ring ring, java.util.function.UnaryOperator<Point> where) {
    return new Ring(ring.points().stream().map(where).toList());
  }

  /** The same plan in a mirror, with its rings turned back the house way. */
  static Plan mirrored(Plan plan) {
    List<Part> parts = new ArrayList<>();
    for (Part part : plan.parts()) {
      List<Ring> rings = new ArrayList<>();
      List<Edge> edges = new ArrayList<>();
      int first = 0;
      for (Ring ring : part.rings()) {
        List<Point> points = new ArrayList<>();
        for (int i = ring.size() - 1; i >= 0; i--) {
          points.add(new Point(-ring.corner(i + 1).x(), ring.corner(i + 1).y()));
          edges.add(part.edges().get(first + i));
        }
        rings.add(new Ring(points));
        first += ring.size();
      }
      parts.add(part.withShape(rings.get(0), rings.subList(1, rings.size()), edges));
    }
    return plan.withParts(parts);
  }

  private double pick(double[] of) {
    return of[random.nextInt(of.length)];
  }
}
