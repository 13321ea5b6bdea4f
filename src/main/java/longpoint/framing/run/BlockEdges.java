package longpoint.framing.run;

import java.util.List;
import longpoint.framing.run.FloorGrid.Block;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;

/**
 * The four edges of a block of a part's grid: 0 bottom, 1 right, 2 top, 3 left, and round again.
 *
 * @param same how far two corners may be apart and still stand on one line
 */
record BlockEdges(Plan plan, Part part, FloorGrid grid, double same) {

  /** A run whose low bearing wall is edge k of a block. */
  Run run(String id, Block b, int k) {
    double[] u = {grid.us()[b.u0()], grid.us()[b.u1()], grid.us()[b.u1()], grid.us()[b.u0()]};
    double[] v = {grid.vs()[b.v0()], grid.vs()[b.v0()], grid.vs()[b.v1()], grid.vs()[b.v1()]};
    int turn = Math.floorMod(k, 4);
    Axes axes = new Axes(grid.axes().at(u[turn], v[turn]), grid.axes().along());
    for (int i = 0; i < turn; i++) {
      axes = axes.turnedLeft(axes.origin());
    }
    return new Run(
        id,
        part,
        axes,
        edgeLength(b, k),
        edgeLength(b, k + 1),
        bound(b, k),
        bound(b, k + 2),
        bound(b, k + 3),
        bound(b, k + 1),
        List.of());
  }

  double edgeLength(Block b, int k) {
    return Math.floorMod(k, 2) == 0
        ? grid.us()[b.u1()] - grid.us()[b.u0()]
        : grid.vs()[b.v1()] - grid.vs()[b.v0()];
  }

  Bound bound(Block b, int k) {
    Bound longest = Bound.MOUTH;
    double most = same;
    for (Side side : plan.sides(part)) {
      double shared = shared(b, k, side);
      if (shared > most) {
        most = shared;
        longest = Bound.of(side);
      }
    }
    return longest;
  }

  double walled(Block b, int k) {
    return plan.sides(part).stream().mapToDouble(s -> Math.max(0, shared(b, k, s))).sum();
  }

  /** Length of wall that a side lays along edge k of a block; 0 or less if none. */
  private double shared(Block b, int k, Side side) {
    boolean level = Math.floorMod(k, 2) == 0;
    double line =
        switch (Math.floorMod(k, 4)) {
          case 0 -> grid.vs()[b.v0()];
          case 1 -> grid.us()[b.u1()];
          case 2 -> grid.vs()[b.v1()];
          default -> grid.us()[b.u0()];
        };
    double off0 = level ? grid.axes().v(side.wall().from()) : grid.axes().u(side.wall().from());
    double off1 = level ? grid.axes().v(side.wall().to()) : grid.axes().u(side.wall().to());
    if (Math.abs(off0 - line) > same || Math.abs(off1 - line) > same) {
      return 0;
    }
    double a = level ? grid.axes().u(side.wall().from()) : grid.axes().v(side.wall().from());
    double c = level ? grid.axes().u(side.wall().to()) : grid.axes().v(side.wall().to());
    double from = level ? grid.us()[b.u0()] : grid.vs()[b.v0()];
    double to = level ? grid.us()[b.u1()] : grid.vs()[b.v1()];
    return Math.min(Math.max(a, c), to) - Math.max(Math.min(a, c), from);
  }
}
