package longpoint.field.built;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension.Corner;

/** The plan with its walls where they stand. */
public final class BuiltPlan {
  /** Which walls a plan has. */
  public enum Walls {
    /** As drawn. */
    PLANNED,
    /**
     * Every wall straight and at the angle it was drawn with, moved to where it stands on the
     * average: what a crew makes of walls that are out, with trusses that are not.
     */
    TRUED,
    /** Every corner where the tapes have it. */
    TAPED;

    /** As it is asked for. */
    public String key() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** As a sine: walls drawn at angles that differ by less run the same way. */
  private static final double PARALLEL = 1e-6;

  private BuiltPlan() {}

  /** The plan with its corners, and its plates where they were read, as they stand. */
  public static Plan of(Plan plan, BuiltWalls walls, Walls which) {
    Map<Corner, Point> at = new HashMap<>();
    for (BuiltCorner c : walls.corners()) {
      at.put(new Corner(c.part(), c.corner()), c.built());
    }
    Map<Corner, Point> placed =
        switch (which) {
          case PLANNED -> Map.of();
          case TAPED -> at;
          case TRUED -> trued(plan, at, walls.accuracy());
        };
    List<Part> parts = new ArrayList<>();
    for (Part part : plan.parts()) {
      Part moved = moved(part, placed);
      for (PlateLevel level : walls.plates()) {
        if (which != Walls.PLANNED && level.part().equals(part.id())) {
          moved = moved.withPlateHeight(level.high());
        }
      }
      parts.add(moved);
    }
    return plan.withParts(parts);
  }

  private static Part moved(Part part, Map<Corner, Point> at) {
    List<Ring> rings = new ArrayList<>();
    int before = 0;
    for (Ring ring : part.rings()) {
      rings.add(new Ring(corners(part, ring, before, at)));
      before += ring.size();
    }
    return part.withShape(rings.get(0), rings.subList(1, rings.size()), part.edges());
  }

  /** A ring's corners where they stand; one without a place stays as drawn. */
  static List<Point> corners(Part part, Ring ring, int before, Map<Corner, Point> at) {
    List<Point> corners = new ArrayList<>(ring.size());
    for (int i = 0; i < ring.size(); i++) {
      corners.add(at.getOrDefault(new Corner(part.id(), before + i), ring.corner(i)));
    }
    return corners;
  }

  /**
   * A wall moved along its own left.
   *
   * @param by how far
   */
  private record Moved(Wall wall, double by) {
    Point way() {
      return wall.line().direction();
    }

    Point through(Point corner) {
      return corner.plus(way().left().times(by));
    }
  }

  /** Walls drawn in one line stay in one line, each line where its walls stand on the average. */
  private static Map<Corner, Point> trued(Plan plan, Map<Corner, Point> at, double accuracy) {
    List<Wall> walls = Wall.all(plan);
    Map<Corner, Moved> ending = new HashMap<>();
    List<Moved> moved = new ArrayList<>();
    for (Wall wall : walls) {
      Moved one = new Moved(wall, shift(wall.line(), walls, at, 2 * accuracy));
      moved.add(one);
      ending.put(wall.to(), one);
    }
    Map<Corner, Point> trued = new HashMap<>();
    for (Moved out : moved) {
      Corner corner = out.wall().from();
      Point built = at.getOrDefault(corner, out.wall().line().from());
      trued.put(corner, meet(ending.get(corner), out, built));
    }
    return trued;
  }

  /** How far to the left of where it is drawn a line of walls stands. */
  private static double shift(
      Segment line, List<Wall> walls, Map<Corner, Point> at, double margin) {
    if (line.length() == 0) {
      return 0;
    }
    double sum = 0;
    double weight = 0;
    for (Wall wall : walls) {
      Segment w = wall.line();
      boolean same =
          w.length() > 0
              && Math.abs(line.offset(w.from())) <= margin
              && Math.abs(line.offset(w.to())) <= margin;
      if (same) {
        double from = line.offset(at.getOrDefault(wall.from(), w.from())) - line.offset(w.from());
        double to = line.offset(at.getOrDefault(wall.to(), w.to())) - line.offset(w.to());
        sum += w.length() * (from + to) / 2;
        weight += w.length();
      }
    }
    return weight > 0 ? sum / weight : 0;
  }

  /** Where two walls meet; where they run on in line, beside the built corner. */
  private static Point meet(Moved in, Moved out, Point built) {
    if (in.wall().line().length() == 0 || out.wall().line().length() == 0) {
      return built;
    }
    Point corner = out.wall().line().from();
    double sine = in.way().cross(out.way());
    if (Math.abs(sine) < PARALLEL) {
      double along = out.way().dot(built.minus(corner));
      return out.through(corner).plus(out.way().times(along));
    }
    Point p = in.through(corner);
    Point q = out.through(corner);
    return p.plus(in.way().times(q.minus(p).cross(out.way()) / sine));
  }
}
