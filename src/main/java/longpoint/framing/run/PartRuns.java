package longpoint.framing.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.framing.run.FloorGrid.Block;
import longpoint.geometry.Point;
import longpoint.plan.EdgeKind;
import longpoint.plan.FrameChoices.Ridge;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.wording.Phrase;

/**
 * The runs of one part. A rectangle is one run. Of an L, T, U or cross the rectangle with the
 * tallest ridge is the main run, the longer one when two are as tall; what is left are wings whose
 * ridges run square into it, over a girder along their mouth. A bump with an eave out front and no
 * eaves at its sides only widens the main run.
 */
final class PartRuns {
  private final Plan plan;
  private final Part part;
  private final FloorGrid grid;
  private final double same;
  private final List<Run> runs = new ArrayList<>();
  private final List<Meeting> meetings = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private Optional<RunProposal> proposal = Optional.empty();

  private PartRuns(Plan plan, Part part, FloorGrid grid, double same) {
    this.plan = plan;
    this.part = part;
    this.grid = grid;
    this.same = same;
  }

  static FoundRuns find(Plan plan, Part part) {
    double same = Shop.of(plan.unit()).mark();
    Optional<FloorGrid> grid = FloorGrid.of(part.outline(), same);
    if (grid.isEmpty()) {
      int side = FloorGrid.crooked(part.outline(), same);
      return FoundRuns.failed(
          Side.id(part.id(), side), Phrase.of("framing.run.crooked", PlaceName.of(part, side)));
    }
    if (!part.holes().isEmpty()) {
      return FoundRuns.failed(
          Side.id(part.id(), part.outline().size()),
          Phrase.of("framing.run.courtyard", PlaceName.of(part)));
    }
    PartRuns found = new PartRuns(plan, part, grid.get(), same);
    return found.split();
  }

  private FoundRuns split() {
    for (Block block : byRidge()) {
      Optional<List<Block>> pieces = grid.beside(block);
      if (pieces.isPresent()) {
        Run main = run(part.id(), block, turnOf(block));
        runs.add(main);
        pieces.get().forEach(piece -> addPiece(block, piece));
        propose(runs.get(0));
        return new FoundRuns(runs, meetings, proposal.stream().toList(), problems);
      }
    }
    return FoundRuns.failed(part.id(), Phrase.of("framing.run.involved", PlaceName.of(part)));
  }

  /** Blocks that could be the main run, the best first. */
  private List<Block> byRidge() {
    List<Block> roofed = grid.largest().stream().filter(b -> Double.isFinite(ridge(b))).toList();
    List<Block> ended = roofed.stream().filter(this::hasEnds).toList();
    Comparator<Block> taller = Comparator.comparingDouble(b -> -Math.rint(ridge(b) / same));
    return (ended.isEmpty() ? roofed : ended)
        .stream().sorted(taller.thenComparingDouble(b -> -lengthAlong(b))).toList();
  }

  /**
   * Walls close at least half of one end. Without this a shallow bump, carried through to the far
   * wall, would count as a run of its own and cut the real one in two.
   */
  private boolean hasEnds(Block b) {
    int k = turnOf(b);
    return walled(b, k + 1) * 2 >= edgeLength(b, k + 1)
        || walled(b, k + 3) * 2 >= edgeLength(b, k + 3);
  }

  private double ridge(Block b) {
    return Math.min(ridgeOver(b, 0), ridgeOver(b, 1));
  }

  /** Ridge height when the bearing walls are edges k and k + 2. */
  private double ridgeOver(Block b, int k) {
    return Run.ridgeHeight(bound(b, k), bound(b, k + 2), edgeLength(b, k + 1));
  }

  private double lengthAlong(Block b) {
    return edgeLength(b, turnOf(b));
  }

  /** Edge that becomes the low bearing wall: trusses span where the ridge comes out lower. */
  private int turnOf(Block b) {
    int k = ridgeOver(b, 0) < ridgeOver(b, 1) - same ? 0 : 1;
    if (Math.abs(ridgeOver(b, 0) - ridgeOver(b, 1)) <= same) {
      k = edgeLength(b, 0) >= edgeLength(b, 1) - same ? 0 : 1;
    }
    boolean turned = part.frame().choices().ridge().equals(Optional.of(Ridge.HIGH));
    if (turned && Double.isFinite(ridgeOver(b, k + 1))) {
      k++;
    }
    return opensAtStart(b, k) || (!opensAtStart(b, k + 2) && index(b, k + 2) < index(b, k))
        ? k + 2
        : k;
  }

  private boolean opensAtStart(Block b, int k) {
    return bound(b, k + 3).kind() == EdgeKind.OPEN;
  }

  private int index(Block b, int k) {
    Bound edge = bound(b, k);
    return edge.isEave() ? edge.side().orElseThrow().index() : Integer.MAX_VALUE;
  }

  private void addPiece(Block main, Block piece) {
    int mouth = mouthOf(main, piece);
    Bound low = bound(piece, mouth + 3);
    Bound high = bound(piece, mouth + 1);
    Run lower = runs.get(0);
    Bank bank = bankOf(lower, main, mouth + 2);
    Run against = run(part.id() + "." + runs.size(), piece, mouth + 3);
    if (!stands(against, lower, bank)) {
      problems.add(
          Problem.warning(part.id(), Phrase.of("framing.run.sideBySide", PlaceName.of(part))));
    } else if (low.isEave() || high.isEave()) {
      addWing(against, lower, bank);
    } else if (bound(piece, mouth + 2).isEave() && along(lower, bank)) {
      widen(lower, bank, against, bound(piece, mouth + 2));
    } else {
      problems.add(Problem.warning(part.id(), Phrase.of("framing.run.noEave", PlaceName.of(part))));
    }
  }

  private static boolean along(Run lower, Bank bank) {
    return bank == Bank.LOW || bank == Bank.HIGH;
  }

  private void widen(Run lower, Bank bank, Run bump, Bound front) {
    double[] mouth = mouth(bump, lower, bank, 0);
    runs.set(
        0, lower.withExtension(new Run.Extension(bank, mouth[0], mouth[1], bump.length(), front)));
  }

  /** The two ends of a piece's width along the run it comes in against, rising. */
  private static double[] mouth(Run piece, Run lower, Bank bank, double u) {
    double a = along(lower, bank, piece.axes().at(u, 0));
    double b = along(lower, bank, piece.axes().at(u, piece.width()));
    return new double[] {Math.min(a, b), Math.max(a, b)};
  }

  /** Whether a piece stands wholly against the main run and not past its end. */
  private boolean stands(Run piece, Run lower, Bank bank) {
    double[] mouth = mouth(piece, lower, bank, piece.length());
    double reach = along(lower, bank) ? lower.length() : lower.width();
    return mouth[0] > -same && mouth[1] < reach + same;
  }

  private void addWing(Run wing, Run lower, Bank bank) {
    if (wing.start().isEave() && wing.hipRun(Bank.START) >= wing.length()) {
      problems.add(
          Problem.warning(
              wing.start().side().orElseThrow().id(),
              Phrase.of("framing.run.shallow", PlaceName.of(part))));
    } else {
      runs.add(wing);
      addMeeting(wing, lower, bank);
    }
  }

  private void addMeeting(Run wing, Run lower, Bank bank) {
    double[] mouth = mouth(wing, lower, bank, wing.length());
    meetings.add(new Meeting(wing, lower, bank, mouth[0], mouth[1], 0, Meeting.Manner.THROUGH));
  }

  static double along(Run lower, Bank bank, Point p) {
    return bank == Bank.LOW || bank == Bank.HIGH ? lower.axes().u(p) : lower.axes().v(p);
  }

  private static int mouthOf(Block main, Block piece) {
    if (piece.v1() == main.v0()) {
      return 2;
    }
    if (piece.u0() == main.u1()) {
      return 3;
    }
    return piece.v0() == main.v1() ? 0 : 1;
  }

  /** Which bank of the main run an edge of its block became. */
  private Bank bankOf(Run main, Block block, int edge) {
    int k = Math.floorMod(edge - turnOf(block), 4);
    return List.of(Bank.LOW, Bank.END, Bank.HIGH, Bank.START).get(k);
  }

  private void propose(Run main) {
    if (runs.size() > 1) {
      Run tallest =
          runs.stream().skip(1).max(Comparator.comparingDouble(Run::ridgeHeight)).orElseThrow();
      double taller = main.ridgeHeight() - tallest.ridgeHeight();
      String reason =
          taller > same ? "its ridge is the tallest" : "it is the longer of equal ridges";
      proposal =
          Optional.of(
              new RunProposal(
                  part.id(), main.id(), runs.stream().skip(1).map(Run::id).toList(), reason));
    }
  }

  // Edges of a block are numbered 0 bottom, 1 right, 2 top, 3 left, and round again.

  /** A run whose low bearing wall is edge k of a block. */
  private Run run(String id, Block b, int k) {
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

  private double edgeLength(Block b, int k) {
    return Math.floorMod(k, 2) == 0
        ? grid.us()[b.u1()] - grid.us()[b.u0()]
        : grid.vs()[b.v1()] - grid.vs()[b.v0()];
  }

  private Bound bound(Block b, int k) {
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

  private double walled(Block b, int k) {
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
