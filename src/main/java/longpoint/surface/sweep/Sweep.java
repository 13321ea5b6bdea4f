package longpoint.surface.sweep;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/**
 * Front door of the sweep. Sides are numbered through all rings in order: outer first.
 *
 * <p>Every result is looked over by {@link Proof} before it is handed out. What does not pass is
 * tried again with a coarser idea of "the same point", and if nothing passes the answer is a side
 * near the trouble.
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
    SweepResult.Failed flaw = Flaws.first(rings, speeds);
    if (flaw != null) {
      return flaw;
    }
    Sides sides = Sides.of(rings, speeds);
    int wrong = 0;
    for (double share : REACH) {
      Attempt attempt = sides.given <= FEW ? whole(sides, share) : tiled(sides, share);
      if (attempt.wrong < 0) {
        return result(rings, sides, attempt);
      }
      wrong = attempt.wrong;
    }
    for (int i = 0; i < REACH.length && FEW < sides.given && sides.given <= MANY; i++) {
      Attempt attempt = whole(sides, REACH[i]);
      if (attempt.wrong < 0) {
        return result(rings, sides, attempt);
      }
    }
    int side = wrong < sides.given ? wrong : sides.corner[wrong];
    return new SweepResult.Failed(
        side, "the roof over this wall cannot be closed: change a slope or a corner near it");
  }

  /** One run of an engine: what it left behind, and the first side that is wrong or -1. */
  record Attempt(Traces traces, Faces faces, int wrong) {}

  static Attempt whole(Sides sides, double share) {
    double reach = share * sides.diagonal;
    Traces traces = new Traces(sides);
    return proved(sides, traces, new WholeFront(new Front(sides, traces), reach).run(), reach);
  }

  static Attempt tiled(Sides sides, double share) {
    double reach = share * sides.diagonal;
    Traces traces = new Traces(sides);
    Tiles tiles = Paving.of(sides);
    if (tiles == null) {
      return new Attempt(traces, null, 0);
    }
    int trouble = new TiledFront(new Front(sides, traces), tiles, reach).run();
    return proved(sides, traces, trouble, reach);
  }

  private static Attempt proved(Sides sides, Traces traces, int trouble, double reach) {
    if (trouble >= 0) {
      return new Attempt(traces, null, trouble);
    }
    Faces faces = Faces.of(sides, traces, reach);
    return new Attempt(traces, faces, Proof.firstWrong(sides, traces, faces));
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
        Integer[] boxed = new Integer[ring.length];
        for (int i = 0; i < ring.length; i++) {
          boxed[i] = ring[i];
        }
        shared.add(new SweepResult.Face(side, List.of(boxed)));
      }
    }
    return new SweepResult.Solved(nodes, shared);
  }
}
