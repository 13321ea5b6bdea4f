package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * Which lengths a plan needs: every wall; the pieces of a wall that another part's corners touch;
 * the distances that tie a yard to the outer walls. A length that stands already between the same
 * two lines of the same building is not given again.
 */
final class WallSpans {
  /**
   * Two lengths closer than this print alike at any scale a roof is drawn at, so the second says
   * nothing new; and a corner this close to a wall touches it. Millimetres of the building.
   */
  private static final double ALIKE_MM = 0.5;

  /**
   * Walls that run within this angle of each other share rows. A tenth of a degree moves the far
   * end of a 12 m wall by 20 mm: on paper the same line.
   */
  private static final double SAME_WAY = Math.toRadians(0.1);

  /**
   * A length to be given, along a wall.
   *
   * @param wall in whose direction it is measured
   * @param start from the wall's start; may be outside the wall
   * @param end beyond the start
   * @param clear how far outside the wall the building reaches
   * @param behind how far inside it
   * @param square whether the wall runs along or square to the building's longest
   * @param subject the side
   */
  record Span(
      Segment wall,
      double start,
      double end,
      double clear,
      double behind,
      boolean square,
      String subject) {
    double length() {
      return end - start;
    }

    Point from() {
      return at(start);
    }

    Point to() {
      return at(end);
    }

    Span between(double first, double last) {
      return new Span(wall, first, last, clear, behind, square, subject);
    }

    private Point at(double along) {
      return wall.from().plus(wall.direction().times(along));
    }

    /** Whether both stand on the same side of the building. */
    boolean facesLike(Span other) {
      return parallel(wall, other.wall) && wall.direction().dot(other.wall.direction()) > 0;
    }
  }

  private final Plan plan;
  private final double alike;
  private final List<List<Part>> buildings;
  private final List<Point> roof = new ArrayList<>();
  private final List<String> roofParts = new ArrayList<>();

  WallSpans(Plan plan, RoofSurface surface) {
    this.plan = plan;
    this.alike = plan.unit().fromMillimetres(ALIKE_MM);
    this.buildings = buildings();
    for (RoofLine line : surface.lines()) {
      for (String plane : line.planes()) {
        String part = surface.plane(plane).map(RoofPlane::part).orElse("");
        roof.add(line.from().plan());
        roofParts.add(part);
        roof.add(line.to().plan());
        roofParts.add(part);
      }
    }
  }

  static boolean parallel(Segment a, Segment b) {
    return Math.abs(a.direction().cross(b.direction())) < SAME_WAY;
  }

  List<Span> all() {
    List<Span> spans = new ArrayList<>();
    for (List<Part> building : buildings) {
      List<Span> own = new ArrayList<>();
      List<Point> reach = reach(building);
      Segment longest = longest(building);
      building.forEach(p -> walls(p, building, reach, longest, own));
      spans.addAll(own);
    }
    return spans;
  }

  private Segment longest(List<Part> building) {
    return building.stream()
        .flatMap(p -> plan.sides(p).stream())
        .map(Side::wall)
        .max(Comparator.comparingDouble(Segment::length))
        .orElseThrow();
  }

  private void walls(
      Part part, List<Part> building, List<Point> reach, Segment longest, List<Span> spans) {
    List<Side> sides = new ArrayList<>(plan.sides(part));
    sides.removeIf(s -> s.wall().length() <= alike);
    // A side that runs on under another roof is the worst place to measure: try it last.
    sides.sort(Comparator.comparing(s -> s.kind() == EdgeKind.OPEN));
    for (Side side : sides) {
      Segment wall = side.wall();
      double clear = beyond(wall, reach, -1);
      double behind = beyond(wall, reach, 1);
      double turn = wall.direction().cross(longest.direction());
      boolean square = Math.abs(turn) < SAME_WAY || Math.abs(turn) > Math.cos(SAME_WAY);
      Span whole = new Span(wall, 0, wall.length(), clear, behind, square, side.id());
      List<Double> cuts = cuts(wall, part, building);
      for (int i = 0; i + 1 < cuts.size(); i++) {
        add(spans, whole.between(cuts.get(i), cuts.get(i + 1)));
      }
      add(spans, whole);
      if (side.index() >= part.outline().size()) {
        ties(part.outline(), whole, spans);
      }
    }
  }

  /** From the outermost corners of the outline to both ends of a yard's wall. */
  private void ties(Ring outline, Span wall, List<Span> spans) {
    double first = 0;
    double last = wall.end();
    for (Point corner : outline.points()) {
      first = Math.min(first, wall.wall().along(corner));
      last = Math.max(last, wall.wall().along(corner));
    }
    if (-first > alike) {
      add(spans, wall.between(first, 0));
    }
    if (last - wall.end() > alike) {
      add(spans, wall.between(wall.end(), last));
    }
  }

  private void add(List<Span> spans, Span span) {
    if (spans.stream().noneMatch(s -> saysTheSame(s, span))) {
      spans.add(span);
    }
  }

  /** Whether both give the distance between the same two parallel lines. */
  private boolean saysTheSame(Span a, Span b) {
    if (!parallel(a.wall(), b.wall())) {
      return false;
    }
    double first = a.wall().along(b.from());
    double second = a.wall().along(b.to());
    return Math.abs(Math.min(first, second) - a.start()) < alike
        && Math.abs(Math.max(first, second) - a.end()) < alike;
  }

  /** Where corners of other parts touch a wall, with its own ends, in order. */
  private List<Double> cuts(Segment wall, Part own, List<Part> building) {
    TreeSet<Double> touching = new TreeSet<>();
    for (Part other : building) {
      if (!other.id().equals(own.id())) {
        for (Point corner : other.outline().points()) {
          if (wall.distance(corner) < alike) {
            touching.add(wall.along(corner));
          }
        }
      }
    }
    List<Double> cuts = new ArrayList<>(List.of(0.0));
    for (double t : touching) {
      if (t - cuts.get(cuts.size() - 1) > alike && wall.length() - t > alike) {
        cuts.add(t);
      }
    }
    cuts.add(wall.length());
    return cuts;
  }

  /** How far the building reaches to one side of a wall, 1 left, −1 right; never below nought. */
  private static double beyond(Segment wall, List<Point> reach, int side) {
    return Math.max(0, reach.stream().mapToDouble(p -> side * wall.offset(p)).max().orElse(0));
  }

  /** Corners of walls and roof of a building. */
  private List<Point> reach(List<Part> building) {
    List<Point> points = new ArrayList<>();
    for (Part part : building) {
      points.addAll(part.outline().points());
      for (int i = 0; i < roof.size(); i++) {
        if (roofParts.get(i).equals(part.id())) {
          points.add(roof.get(i));
        }
      }
    }
    return points;
  }

  /** Parts whose walls touch or overlap make one building. */
  private List<List<Part>> buildings() {
    List<List<Part>> groups = new ArrayList<>();
    for (Part part : plan.parts()) {
      List<List<Part>> met =
          groups.stream().filter(g -> g.stream().anyMatch(p -> touch(p, part))).toList();
      List<Part> joined = new ArrayList<>();
      met.forEach(joined::addAll);
      joined.add(part);
      groups.removeAll(met);
      groups.add(joined);
    }
    return groups;
  }

  private boolean touch(Part a, Part b) {
    return near(a.outline(), b.outline()) || near(b.outline(), a.outline()) || cross(a, b);
  }

  private boolean near(Ring ring, Ring other) {
    return other.points().stream().anyMatch(p -> ring.contains(p) || ring.distance(p) < alike);
  }

  private static boolean cross(Part a, Part b) {
    for (int i = 0; i < a.outline().size(); i++) {
      for (int j = 0; j < b.outline().size(); j++) {
        if (cross(a.outline().side(i), b.outline().side(j))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean cross(Segment a, Segment b) {
    return a.length() > 0
        && b.length() > 0
        && a.offset(b.from()) * a.offset(b.to()) < 0
        && b.offset(a.from()) * b.offset(a.to()) < 0;
  }
}
