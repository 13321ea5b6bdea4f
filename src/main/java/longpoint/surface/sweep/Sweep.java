package longpoint.surface.sweep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.stop.CalledOff;

/**
 * Front door of the sweep. Sides are numbered through all rings in order: outer first.
 *
 * <p>Every result is looked over by {@link Proof} before it is handed out. What does not pass is
 * tried again:
 *
 * <ol>
 *   <li>{@link TiledFront} (for a few sides {@link WholeFront}, which is then faster) at each of
 *       five widths of a point
 *   <li>up to some hundred sides, {@link WholeFront} at the same widths
 *   <li>then the answer is a side near the trouble
 * </ol>
 *
 * @see SweepResult
 */
public final class Sweep {
  /**
   * Corners nearer to each other than this share of the outline's diagonal meet in one point; tried
   * in this order. For a house the first is a millionth of a millimetre, the last a hundredth.
   */
  private static final double[] REACH = {1e-10, 1e-11, 1e-9, 1e-12, 1e-8};

  /** Up to here the whole front is looked at without tiles: it is faster. */
  private static final int FEW = 24;

  /** Up to here the whole front is tried where the tiles have failed. */
  private static final int MANY = 300;

  private Sweep() {}

  /**
   * Shares out the ground inside an outline.
   *
   * @param rings outer ring counter-clockwise, then holes clockwise; none crosses itself or another
   * @param speeds inward speed of each side in plan, 1/slope; 0 stands still (a gable)
   * @return faces that tile the ground, or the side where it could not be done; never an exception
   */
  public static SweepResult solve(List<Ring> rings, double[] speeds) {
    return solve(rings, speeds, new int[speeds.length]);
  }

  /**
   * As {@link #solve(List, double[])}, with the user's say where the skeleton leaves a choice.
   *
   * @param wishes for each side, above 0 where it is to go on when it comes into line with another
   *     of another speed that faces the same way, below 0 where it is to end there, 0 where the
   *     longer wall line goes on
   */
  public static SweepResult solve(List<Ring> rings, double[] speeds, int[] wishes) {
    SweepResult.Failed flaw = Flaws.first(rings, speeds);
    if (flaw != null) {
      return flaw;
    }
    Sides sides = Sides.of(rings, speeds, wishes);
    Attempt attempt = null;
    for (int rung = 0; rung < rungs(sides.given); rung++) {
      attempt = attempt(sides, rung);
      if (attempt.wrong < 0) {
        return result(rings, sides, attempt);
      }
    }
    return failed(sides, attempt);
  }

  private static int rungs(int given) {
    return FEW < given && given <= MANY ? 2 * REACH.length : REACH.length;
  }

  private static Attempt attempt(Sides sides, int rung) {
    try {
      double share = REACH[rung % REACH.length];
      return sides.given <= FEW || rung >= REACH.length ? whole(sides, share) : tiled(sides, share);
    } catch (CalledOff off) {
      throw off;
    } catch (RuntimeException slip) {
      // Losing its way is one more way for an engine to fail: a drawing must never bring down the
      // program, and the next rung may do better.
      return new Attempt(null, null, 0, false);
    }
  }

  private static SweepResult failed(Sides sides, Attempt attempt) {
    int wrong = attempt.wrong;
    int side = wrong < sides.given ? wrong : sides.corner[wrong];
    return new SweepResult.Failed(
        side, attempt.stranded ? SweepResult.Reason.STRANDED : SweepResult.Reason.NOT_CLOSED);
  }

  /**
   * One run of an engine.
   *
   * @param wrong the first side that is wrong, or -1
   * @param stranded whether ground was left that nothing moves over
   */
  record Attempt(Traces traces, Faces faces, int wrong, boolean stranded) {}

  static Attempt whole(Sides sides, double share) {
    double reach = share * sides.diagonal;
    Front front = new Front(sides, new Traces(sides));
    return proved(front, new WholeFront(front, reach).run(), reach);
  }

  static Attempt tiled(Sides sides, double share) {
    double reach = share * sides.diagonal;
    Front front = new Front(sides, new Traces(sides));
    Tiles tiles = Paving.of(sides);
    if (tiles == null) {
      return new Attempt(front.traces, null, 0, false);
    }
    return proved(front, new TiledFront(front, tiles, reach).run(), reach);
  }

  private static Attempt proved(Front front, int trouble, double reach) {
    if (trouble >= 0) {
      return new Attempt(front.traces, null, trouble, front.stranded);
    }
    Faces faces = Faces.of(front.sides, front.traces, reach);
    int wrong = Proof.firstWrong(front.sides, front.traces, faces);
    return new Attempt(front.traces, faces, wrong, false);
  }

  private static SweepResult result(List<Ring> rings, Sides sides, Attempt attempt) {
    Traces traces = attempt.traces;
    Faces faces = attempt.faces;
    List<SweepResult.Node> nodes = new ArrayList<>(traces.nodes);
    for (Ring ring : rings) {
      for (Point p : ring.points()) {
        nodes.add(new SweepResult.Node(p.x(), p.y(), 0));
      }
    }
    for (int i = sides.given; i < traces.nodes; i++) {
      nodes.add(
          new SweepResult.Node(
              traces.x[i] + sides.originX, traces.y[i] + sides.originY, traces.time[i]));
    }
    List<SweepResult.Face> shared = new ArrayList<>(sides.given);
    for (int side = 0; side < sides.given; side++) {
      int[] ring = faces.ring[side];
      if (ring != null) {
        int[][] holes = faces.holes[side];
        List<List<Integer>> within =
            holes == null ? List.of() : Arrays.stream(holes).map(Sweep::boxed).toList();
        shared.add(new SweepResult.Face(side, boxed(ring), within));
      }
    }
    return new SweepResult.Solved(nodes, shared);
  }

  private static List<Integer> boxed(int[] ring) {
    Integer[] boxed = new Integer[ring.length];
    for (int i = 0; i < ring.length; i++) {
      boxed[i] = ring[i];
    }
    return List.of(boxed);
  }
}
