package longpoint.field.lift;

import java.util.List;
import java.util.Objects;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Ring;
import longpoint.wording.Phrase;

/**
 * What there is to know of a section before it is hoisted. Weights in pounds, or kilograms in a
 * metric plan; lengths in plan units. An aid: the crane operator and a qualified rigger decide.
 *
 * @param part id of the part it stands on
 * @param index of the lift in the part's list, from 0
 * @param name what the crew calls it, may be empty
 * @param trusses ids, in the order they stand
 * @param pieces everything that goes up
 * @param weight of them all, nothing of the rigging
 * @param centre where it balances
 * @param axes what its figures are measured along
 * @param balance the centre from the marked edges
 * @param size over all: along the trusses, square to them, upright
 * @param ground outline in plan
 * @param hook where the hook is, plumb over the centre
 * @param points where it hangs
 * @param lines how they share it
 * @param cautions that this very section calls for
 */
public record LiftSection(
    String part,
    int index,
    String name,
    List<String> trusses,
    List<LiftPiece> pieces,
    double weight,
    Point3 centre,
    Axes axes,
    Balance balance,
    Size size,
    Ring ground,
    Point3 hook,
    List<HangPoint> points,
    Lines lines,
    List<Phrase> cautions) {
  /**
   * The marked edges: {@code origin} is where the outer face of the first truss passes the outside
   * of its first bearing.
   *
   * @param along one unit along the trusses
   * @param across one unit from the first truss to the last
   * @param foot height of the underside of the lowest truss
   */
  public record Axes(Point origin, Point along, Point across, double foot) {
    /** Along the trusses. */
    public double over(Point p) {
      return along.dot(p.minus(origin));
    }

    /** Square to them. */
    public double across(Point p) {
      return across.dot(p.minus(origin));
    }
  }

  /**
   * The centre of gravity from the marked edges.
   *
   * @param over along the trusses from the outside of the first bearing
   * @param across from the outer face of the first truss
   * @param up from the underside of the lowest truss
   */
  public record Balance(double over, double across, double up) {}

  /** Over all. */
  public record Size(double over, double across, double up) {}

  /** How the lines share the weight. */
  public enum Lines {
    /** Statics leave no choice. */
    SHARED,
    /** Which lines carry depends on a hair's breadth: each is told the most it may come to. */
    ANY_TWO_OR_THREE,
    /** The places cannot carry it level. */
    CANNOT
  }

  public LiftSection {
    Objects.requireNonNull(centre);
    Objects.requireNonNull(lines);
    trusses = List.copyOf(trusses);
    pieces = List.copyOf(pieces);
    points = List.copyOf(points);
    cautions = List.copyOf(cautions);
  }

  LiftSection with(List<Phrase> cautions) {
    return new LiftSection(
        part, index, name, trusses, pieces, weight, centre, axes, balance, size, ground, hook,
        points, lines, cautions);
  }

  /** The flattest line's angle from level, degrees. */
  public double flattest() {
    return points.stream().mapToDouble(HangPoint::angle).min().orElse(90);
  }

  /** The most that any line may carry. */
  public double mostTension() {
    return points.stream().mapToDouble(HangPoint::tension).max().orElse(0);
  }
}
