package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Side;

/**
 * A part's sides set out around it, ready to be swept and to be run down to the fascia.
 *
 * <p>The <em>base</em> of an eave is its plane's line at the part's lowest heel level; every other
 * side stands upright, a gable under the outside of its rake, an abutment on its wall. From the
 * base an eave runs on down and outward to its <em>reach</em>, the outside of its fascia.
 *
 * <p>Where two walls run on in one line but start at different distances, a short return stands
 * between them; it is a run like the others, with {@link Run#RETURN} for its side.
 */
final class Contour {
  /**
   * Sine of the turn below which two walls run on nearly in one line, about 15°. There the crossing
   * of lines set out by different distances runs away along the wall (16 in of difference comes to
   * more than 5 ft), which nobody would build: the further one ends in a return instead.
   */
  private static final double FLAT = 0.26;

  /**
   * Sine of the angle below which two neighbouring walls count as one straight line. At one part in
   * a million a 100 ft wall strays by a thousandth of an inch; nobody draws such a corner on
   * purpose, and the crossing of two offset lines there would be anywhere.
   */
  static final double STRAIGHT = 1e-6;

  /**
   * One side as a line to start from.
   *
   * @param side number in the part, or {@link #RETURN}
   * @param line wall face, with the part on its left
   * @param base how far outside the line the sweep starts; negative inside
   * @param reach how far outside the line the roof ends
   * @param slope of an eave, rise over run; 0 stands upright
   */
  record Run(int side, EdgeKind kind, Segment line, double base, double reach, double slope) {
    static final int RETURN = -1;

    Point outward() {
      return line.direction().left().times(-1);
    }

    boolean upright() {
      return slope == 0;
    }

    /** Level distance from base to reach; negative when the roof ends inside the base. */
    double spare() {
      return upright() ? 0 : reach - base;
    }

    Run atReach() {
      return new Run(side, kind, line, reach, reach, slope);
    }

    Run standing() {
      return new Run(side, kind, line, reach, reach, 0);
    }

    /** Distance of a point outside the base line. */
    double beyondBase(Point p) {
      return -line.offset(p) - base;
    }
  }

  /** One closed line of runs. */
  record Loop(List<Run> runs, List<Corner> corners) {
    Run run(int i) {
      return runs.get(Math.floorMod(i, runs.size()));
    }

    /** Where run {@code i} begins. */
    Corner corner(int i) {
      return corners.get(Math.floorMod(i, corners.size()));
    }

    Ring base() {
      return new Ring(corners.stream().map(Corner::base).toList());
    }

    /** A run whose base has shrunk to nothing or turned round, if there is one. */
    OptionalInt lost() {
      return IntStream.range(0, runs.size())
          .filter(
              i -> corner(i + 1).base().minus(corner(i).base()).dot(run(i).line().direction()) <= 0)
          .findFirst();
    }
  }

  /**
   * Where one run ends and the next begins.
   *
   * @param base on both base lines
   * @param split where, going down and outward, the first of the two planes has reached its end
   * @param outer on both reach lines; the plane that goes further has this corner to itself
   * @param further −1 when the run before goes further than {@code split}, 1 when the run after, 0
   *     when both end there
   */
  record Corner(Point base, Point split, Point outer, int further) {}

  private final List<Loop> loops;
  private final double level;

  private Contour(List<Loop> loops, double level) {
    this.loops = loops;
    this.level = level;
  }

  List<Loop> loops() {
    return loops;
  }

  /** Height of every eave's base line above the plan's datum. */
  double level() {
    return level;
  }

  /** Every run, in the order the sweep numbers them. */
  List<Run> runs() {
    return loops.stream().flatMap(l -> l.runs().stream()).toList();
  }

  /**
   * Sets out a part.
   *
   * @param rings the sides ring by ring, with at least one eave among them, each of some slope
   * @param runOn how far an open side is moved out over what lies beyond
   * @param grain distance below which two places are one
   */
  static Contour of(List<List<Side>> rings, double runOn, double grain) {
    double level =
        rings.stream()
            .flatMap(List::stream)
            .filter(s -> s.kind() == EdgeKind.EAVE)
            .mapToDouble(s -> s.plateHeight() + s.heel())
            .min()
            .orElseThrow();
    List<Loop> loops = new ArrayList<>();
    for (List<Side> ring : rings) {
      loops.add(loop(ring.stream().map(s -> run(s, level, runOn)).toList(), grain));
    }
    return new Contour(List.copyOf(loops), level);
  }

  /** The roof's own outline: as {@link #of}, with every base moved out to its reach. */
  static Contour outline(List<List<Side>> rings, double runOn, double grain) {
    Contour contour = of(rings, runOn, grain);
    List<Loop> loops = new ArrayList<>();
    for (Loop loop : contour.loops) {
      loops.add(
          loop(
              loop.runs().stream().filter(r -> r.side() != Run.RETURN).map(Run::atReach).toList(),
              grain));
    }
    return new Contour(List.copyOf(loops), contour.level);
  }

  /** The same with every side that ends inside its base standing still at its reach. */
  Contour standing(double grain) {
    List<Loop> standing = new ArrayList<>();
    for (Loop loop : loops) {
      standing.add(
          loop(
              loop.runs().stream()
                  .filter(r -> r.side() != Run.RETURN)
                  .map(r -> r.spare() < -grain ? r.standing() : r)
                  .toList(),
              grain));
    }
    return new Contour(List.copyOf(standing), level);
  }

  private static Run run(Side side, double level, double runOn) {
    return switch (side.kind()) {
      case EAVE -> {
        double slope = side.slope().ratio();
        double base = (side.plateHeight() + side.heel() - level) / slope;
        yield new Run(side.index(), side.kind(), side.wall(), base, side.reach(), slope);
      }
      case GABLE, ABUTMENT -> upright(side, side.reach());
      case OPEN -> upright(side, runOn);
    };
  }

  private static Run upright(Side side, double at) {
    return new Run(side.index(), side.kind(), side.wall(), at, at, 0);
  }

  private static Loop loop(List<Run> plain, double grain) {
    List<Run> runs = withReturns(plain, grain);
    List<Corner> corners = new ArrayList<>(runs.size());
    for (int i = 0; i < runs.size(); i++) {
      corners.add(corner(runs.get(Math.floorMod(i - 1, runs.size())), runs.get(i), grain));
    }
    return new Loop(runs, List.copyOf(corners));
  }

  private static List<Run> withReturns(List<Run> plain, double grain) {
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < plain.size(); i++) {
      Run before = plain.get(Math.floorMod(i - 1, plain.size()));
      Run after = plain.get(i);
      if (flat(before, after) && Math.abs(before.base() - after.base()) > grain) {
        Point joint = after.line().from();
        Segment line =
            new Segment(
                joint.plus(step(before, after, before.base(), before.base())),
                joint.plus(step(before, after, after.base(), after.base())));
        runs.add(new Run(Run.RETURN, EdgeKind.GABLE, line, 0, 0, 0));
      }
      runs.add(after);
    }
    return List.copyOf(runs);
  }

  static boolean flat(Run a, Run b) {
    return flat(a.line(), b.line());
  }

  static boolean flat(Segment a, Segment b) {
    Point u = a.direction();
    Point v = b.direction();
    return Math.abs(u.cross(v)) < FLAT && u.dot(v) > 0;
  }

  private static Corner corner(Run a, Run b, double grain) {
    Point joint = b.line().from();
    if (a.side() == Run.RETURN) {
      joint = a.line().to();
    }
    Point base = joint.plus(step(a, b, -a.beyondBase(joint), -b.beyondBase(joint)));
    if (flat(a, b) && Math.abs(a.spare() - b.spare()) + Math.abs(a.slope() - b.slope()) > grain) {
      double near = Math.max(0, Math.min(a.spare(), b.spare()));
      double far = Math.max(0, Math.max(a.spare(), b.spare()));
      return new Corner(
          base,
          base.plus(step(a, b, near, near)),
          base.plus(step(a, b, far, far)),
          further(a.spare() - b.spare(), grain));
    }
    Point outer = base.plus(step(a, b, a.spare(), b.spare()));
    boolean aEnds = !a.upright() && a.spare() >= -grain;
    boolean bEnds = !b.upright() && b.spare() >= -grain;
    if (!aEnds && !bEnds) {
      return new Corner(base, base, outer, 0);
    }
    double dropA = aEnds ? a.spare() * a.slope() : Double.POSITIVE_INFINITY;
    double dropB = bEnds ? b.spare() * b.slope() : Double.POSITIVE_INFINITY;
    double drop = Math.min(dropA, dropB);
    // A side that ends inside its base is cut there later; until then it stands like a gable.
    Point split = base.plus(step(a, b, aEnds ? drop / a.slope() : 0, bEnds ? drop / b.slope() : 0));
    if (!aEnds || !bEnds) {
      return new Corner(base, split, outer, 0);
    }
    return new Corner(
        base, split, outer, further(split.distance(outer) * Math.signum(dropA - dropB), grain));
  }

  private static int further(double difference, double grain) {
    return Math.abs(difference) <= grain ? 0 : difference > 0 ? -1 : 1;
  }

  /** The step that leads out of two lines by given distances. */
  private static Point step(Run a, Run b, double outOfA, double outOfB) {
    Point m = a.outward();
    Point n = b.outward();
    double det = m.cross(n);
    if (Math.abs(det) < STRAIGHT) {
      double out = Math.abs(outOfA) > Math.abs(outOfB) ? outOfA : outOfB;
      return m.plus(n).length() == 0 ? m.times(out) : m.plus(n).unit().times(out);
    }
    return new Point(
        (outOfA * n.y() - outOfB * m.y()) / det, (outOfB * m.x() - outOfA * n.x()) / det);
  }
}
