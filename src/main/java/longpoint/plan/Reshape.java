package longpoint.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/**
 * Edits of one part's walls. Each returns a new part whose sides keep their edges; corners and
 * sides are numbered as in {@link Part#side}, a corner by the side that starts there. Empty means
 * that the edit cannot be made.
 *
 * <p>Not guaranteed: that the walls do not cross afterwards. {@link PlanCheck} says so where they
 * do.
 */
public final class Reshape {
  /**
   * Two unit directions whose cross product is smaller than this count as parallel: half a
   * thousandth of a degree, less than a sixteenth of an inch in 500 ft, which nobody draws on
   * purpose. A side cannot slide along a neighbour that is parallel to it.
   */
  static final double PARALLEL = 1e-5;

  /** Which end of a side gives way. */
  public enum End {
    START,
    FINISH
  }

  /** What the walls beside a moved one do. */
  public enum Neighbours {
    /** They keep their direction and become longer or shorter. */
    STRETCH,
    /** They keep their far corners and turn. */
    SWING;

    public Neighbours other() {
      return this == STRETCH ? SWING : STRETCH;
    }
  }

  private Reshape() {}

  /** The part with one corner somewhere else. */
  public static Optional<Part> moveCorner(Part part, int corner, Point to) {
    Place place = Place.of(part, corner);
    List<Point> points = new ArrayList<>(place.ring(part).points());
    points.set(place.index(), to);
    return place.shaped(part, points, place.edges(part));
  }

  /**
   * The part with several corners moved by the same step; walls between one of them and another
   * that stays turn.
   */
  public static Optional<Part> moveCorners(Part part, Set<Integer> corners, Point step) {
    Optional<Part> moved = Optional.of(part);
    int first = 0;
    for (Ring ring : part.rings()) {
      List<Point> points = new ArrayList<>(ring.points());
      for (int i = 0; i < points.size(); i++) {
        if (corners.contains(first + i)) {
          points.set(i, points.get(i).plus(step));
        }
      }
      int at = first;
      moved =
          moved
              .filter(p -> p.sideCount() == part.sideCount())
              .flatMap(p -> Place.of(p, at).shaped(p, points, Place.of(p, at).edges(p)));
      first += ring.size();
    }
    return moved;
  }

  /**
   * The part with one side moved parallel to itself; its neighbours stretch along their own lines.
   * A neighbour in line with the side stays, and a new side square to both joins them: a gable
   * beside a gable, so that the planes behind it stay as they are, else an eave.
   *
   * @param outward distance away from the inside of the part; negative moves inward
   */
  public static Optional<Part> moveSide(Part part, int side, double outward) {
    Place place = Place.of(part, side);
    Ring ring = place.ring(part);
    int i = place.index();
    Point out = ring.side(i).direction().left().times(-1);
    List<Point> points = new ArrayList<>();
    List<Edge> edges = new ArrayList<>();
    List<Edge> before = place.edges(part);
    boolean gable = before.get(i).kind() == EdgeKind.GABLE;
    Edge beside = Edge.of(gable ? EdgeKind.GABLE : EdgeKind.EAVE);
    int next = (i + 1) % ring.size();
    for (int k = 0; k < ring.size(); k++) {
      Point old = ring.corner(k);
      if (k == i) {
        Optional<Point> slid = slide(old, ring.side(i - 1).direction(), out, outward);
        if (slid.isEmpty()) {
          points.add(old);
          edges.add(beside);
        }
        points.add(slid.orElse(old.plus(out.times(outward))));
      } else if (k == next) {
        Optional<Point> slid = slide(old, ring.side(i + 1).direction(), out, outward);
        points.add(slid.orElse(old.plus(out.times(outward))));
        if (slid.isEmpty()) {
          edges.add(beside);
          points.add(old);
        }
      } else {
        points.add(old);
      }
      edges.add(before.get(k));
    }
    return place.shaped(part, points, edges);
  }

  /**
   * The part with one side moved parallel to itself.
   *
   * @param outward distance away from the inside of the part; negative moves inward
   */
  public static Optional<Part> moveSide(
      Part part, int side, double outward, Neighbours neighbours) {
    return switch (neighbours) {
      case STRETCH -> moveSide(part, side, outward);
      case SWING -> swingSide(part, side, outward);
    };
  }

  private static Optional<Part> swingSide(Part part, int side, double outward) {
    Place place = Place.of(part, side);
    Ring ring = place.ring(part);
    Point step = ring.side(place.index()).direction().left().times(-outward);
    List<Point> points = new ArrayList<>(ring.points());
    int next = (place.index() + 1) % ring.size();
    points.set(place.index(), points.get(place.index()).plus(step));
    points.set(next, points.get(next).plus(step));
    return place.shaped(part, points, place.edges(part));
  }

  /** Where a corner goes along its neighbour's line; empty where that is parallel to the side. */
  private static Optional<Point> slide(Point corner, Point along, Point out, double outward) {
    double gain = along.dot(out);
    return Math.abs(gain) < PARALLEL
        ? Optional.empty()
        : Optional.of(corner.plus(along.times(outward / gain)));
  }

  /**
   * As {@link #sideLength}, both ends giving way by half.
   *
   * @param length &gt; 0
   */
  public static Optional<Part> sideLengthBothWays(Part part, int side, double length) {
    double half = (part.side(side).length() + length) / 2;
    return length > 0
        ? sideLength(part, side, half, End.FINISH)
            .flatMap(p -> sideLength(p, side, length, End.START))
        : Optional.empty();
  }

  /**
   * The part with one side of a given length; the neighbour at the end that gives way moves
   * parallel to itself, so that every side keeps its direction. A neighbour in line gives way by
   * its corner.
   *
   * @param length &gt; 0
   */
  public static Optional<Part> sideLength(Part part, int side, double length, End givesWay) {
    if (!(length > 0)) {
      return Optional.empty();
    }
    Place place = Place.of(part, side);
    Segment wall = part.side(side);
    Point step = wall.direction().times(length - wall.length());
    int count = place.ring(part).size();
    int neighbour =
        switch (givesWay) {
          case START -> place.first() + Math.floorMod(place.index() - 1, count);
          case FINISH -> place.first() + (place.index() + 1) % count;
        };
    Point gain = givesWay == End.FINISH ? step : step.times(-1);
    Point out = part.side(neighbour).direction().left().times(-1);
    double outward = gain.dot(out);
    if (Math.abs(wall.direction().dot(out)) >= PARALLEL) {
      return moveSide(part, neighbour, outward);
    }
    return switch (givesWay) {
      case START -> moveCorner(part, side, wall.from().plus(gain));
      case FINISH -> moveCorner(part, neighbour, wall.to().plus(gain));
    };
  }

  /** The part with a corner more; both halves of the side keep its edge. */
  public static Optional<Part> insertCorner(Part part, int side, Point at) {
    Place place = Place.of(part, side);
    List<Point> points = new ArrayList<>(place.ring(part).points());
    points.add(place.index() + 1, at);
    List<Edge> edges = new ArrayList<>(place.edges(part));
    edges.add(place.index(), edges.get(place.index()));
    return place.shaped(part, points, edges);
  }

  /**
   * The part with a corner less; the side before it runs on to the next corner. A hole of three
   * corners goes altogether; an outline of three keeps them.
   */
  public static Optional<Part> removeCorner(Part part, int corner) {
    Place place = Place.of(part, corner);
    List<Point> points = new ArrayList<>(place.ring(part).points());
    points.remove(place.index());
    List<Edge> edges = new ArrayList<>(place.edges(part));
    edges.remove(place.index());
    return place.shaped(part, points, edges);
  }

  /**
   * The part with a hole more.
   *
   * @param hole either way round
   * @param edge of each of its sides
   */
  public static Part addHole(Part part, Ring hole, Edge edge) {
    List<Ring> holes = new ArrayList<>(part.holes());
    holes.add(hole.counterClockwise() ? hole.reversed() : hole);
    List<Edge> edges = new ArrayList<>(part.edges());
    for (int i = 0; i < hole.size(); i++) {
      edges.add(edge);
    }
    return part.withShape(part.outline(), holes, edges);
  }

  /**
   * The part without a hole.
   *
   * @param hole its number, from 0
   */
  public static Part removeHole(Part part, int hole) {
    int first = part.outline().size();
    for (int i = 0; i < hole; i++) {
      first += part.holes().get(i).size();
    }
    List<Edge> edges = new ArrayList<>(part.edges());
    edges.subList(first, first + part.holes().get(hole).size()).clear();
    List<Ring> holes = new ArrayList<>(part.holes());
    holes.remove(hole);
    return part.withShape(part.outline(), holes, edges);
  }

  /** The number of the hole that a side belongs to, from 0; empty for the outline. */
  public static Optional<Integer> holeOf(Part part, int side) {
    int ring = Place.of(part, side).number();
    return ring == 0 ? Optional.empty() : Optional.of(ring - 1);
  }

  /**
   * Where a side or corner stands.
   *
   * @param number of its ring, the outline being 0
   * @param first number of the ring's first side
   * @param index within the ring
   */
  private record Place(int number, int first, int index) {
    static Place of(Part part, int side) {
      int first = 0;
      int number = 0;
      for (Ring ring : part.rings()) {
        if (side >= first && side < first + ring.size()) {
          return new Place(number, first, side - first);
        }
        first += ring.size();
        number++;
      }
      throw new IndexOutOfBoundsException("part " + part.id() + " has no side " + side);
    }

    Ring ring(Part part) {
      return part.rings().get(number);
    }

    List<Edge> edges(Part part) {
      return part.edges().subList(first, first + ring(part).size());
    }

    /** The part with this ring put in anew, less sides that have shrunk to nothing. */
    Optional<Part> shaped(Part part, List<Point> corners, List<Edge> sides) {
      List<Point> points = new ArrayList<>();
      List<Edge> kept = new ArrayList<>();
      for (int i = 0; i < corners.size(); i++) {
        if (!corners.get(i).equals(corners.get((i + 1) % corners.size()))) {
          points.add(corners.get(i));
          kept.add(sides.get(i));
        }
      }
      if (points.size() < 3) {
        return number == 0 ? Optional.empty() : Optional.of(removeHole(part, number - 1));
      }
      Ring shaped = new Ring(points);
      boolean turned = shaped.counterClockwise() != (number == 0);
      if (turned || shaped.signedArea() == 0) {
        return Optional.empty();
      }
      List<Edge> edges = new ArrayList<>(part.edges());
      List<Edge> mine = edges.subList(first, first + ring(part).size());
      mine.clear();
      mine.addAll(kept);
      if (number == 0) {
        return Optional.of(part.withShape(shaped, part.holes(), edges));
      }
      List<Ring> holes = new ArrayList<>(part.holes());
      holes.set(number - 1, shaped);
      return Optional.of(part.withShape(part.outline(), holes, edges));
    }
  }
}
