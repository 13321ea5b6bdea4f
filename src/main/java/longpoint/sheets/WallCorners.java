package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;

/**
 * The corners of one part's walls, numbered through the plan, and the tapes that set them out: from
 * both ends of the longest wall, two lengths fix every other corner, square or not (common
 * practice). The two longest of these are the diagonals to check.
 *
 * @param part whose walls they are
 * @param corners of the outline, then of the holes
 * @param first number of the first corner
 * @param base place of the longest wall's first corner among the corners
 * @param baseEnd place of its other end
 */
record WallCorners(Part part, List<Point> corners, int first, int base, int baseEnd) {
  /** A tape from an end of the base wall to another corner. */
  record Tape(int from, int to, Segment line) {}

  WallCorners {
    corners = List.copyOf(corners);
  }

  /** For every part, in order. */
  static List<WallCorners> of(Plan plan) {
    List<WallCorners> all = new ArrayList<>();
    int next = 1;
    for (Part part : plan.parts()) {
      List<Point> corners = new ArrayList<>(part.outline().points());
      for (Ring hole : part.holes()) {
        corners.addAll(hole.points());
      }
      int base = longest(plan, part);
      all.add(new WallCorners(part, corners, next, base, (base + 1) % part.outline().size()));
      next += corners.size();
    }
    return all;
  }

  /** An open side has no wall to measure from, and is taken only where there is no other. */
  private static int longest(Plan plan, Part part) {
    int best = 0;
    double length = -1;
    for (Side side : plan.sides(part).subList(0, part.outline().size())) {
      double own = side.kind() == EdgeKind.OPEN ? 0 : side.wall().length();
      if (own > length) {
        best = side.index();
        length = own;
      }
    }
    return best;
  }

  int number(int place) {
    return first + place;
  }

  Segment baseWall() {
    return new Segment(corners.get(base), corners.get(baseEnd));
  }

  /** The longest tape from each end of the base wall: a rectangle's diagonals. */
  List<Tape> diagonals() {
    List<Tape> tapes = new ArrayList<>();
    for (int end : new int[] {base, baseEnd}) {
      int far = end;
      for (int i = 0; i < corners.size(); i++) {
        boolean further =
            corners.get(i).distance(corners.get(end)) > corners.get(far).distance(corners.get(end));
        far = i != base && i != baseEnd && (far == end || further) ? i : far;
      }
      if (!corners.get(far).equals(corners.get(end))) {
        tapes.add(new Tape(end, far, new Segment(corners.get(end), corners.get(far))));
      }
    }
    return tapes;
  }
}
