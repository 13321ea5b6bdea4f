package longpoint.framing.run;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.framing.Shop;
import longpoint.framing.run.FloorGrid.Block;
import longpoint.framing.run.RunProposal.Reason;
import longpoint.geometry.Point;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices.Ridge;
import longpoint.plan.Part;
import longpoint.plan.PlaceName;
import longpoint.plan.PlacePoint;
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
  private final BlockEdges edges;
  private final List<Run> runs = new ArrayList<>();
  private final List<Meeting> meetings = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private Optional<RunProposal> proposal = Optional.empty();

  /** Places that say from which end a block's layout starts. */
  private Map<Block, List<Point>> layoutStarts = Map.of();

  private PartRuns(Plan plan, Part part, FloorGrid grid, double same) {
    this.plan = plan;
    this.part = part;
    this.grid = grid;
    this.same = same;
    this.edges = new BlockEdges(plan, part, grid, same);
  }

  static FoundRuns find(Plan plan, Part part) {
    double same = Shop.of(plan.unit()).mark();
    Optional<FloorGrid> grid = FloorGrid.of(part.outline(), same);
    if (grid.isEmpty()) {
      int side = FloorGrid.crooked(part.outline(), same);
      return without(
          part,
          Side.id(part.id(), side),
          Phrase.of("framing.run.crooked", PlaceName.of(part, side)));
    }
    if (!part.holes().isEmpty()) {
      return without(
          part,
          Side.id(part.id(), part.outline().size()),
          Phrase.of("framing.run.courtyard", PlaceName.of(part)));
    }
    PartRuns found = new PartRuns(plan, part, grid.get(), same);
    return found.split();
  }

  /** Rafters are read off the solved roof: who asked for them is not told that trusses are not. */
  private static FoundRuns without(Part part, String where, Phrase why) {
    return part.frame().method() == Frame.Method.RAFTER
        ? FoundRuns.NONE
        : FoundRuns.failed(where, why);
  }

  private FoundRuns split() {
    List<Block> candidates = byRidge().stream().filter(b -> grid.beside(b).isPresent()).toList();
    for (Block block : candidates) {
      List<Block> pieces = grid.beside(block).orElseThrow();
      if (!pieces.isEmpty() && part.frame().choices().runs().whole()) {
        proposal = Optional.of(proposed("", List.of(), Reason.DECLINED, block, candidates));
        break;
      }
      layoutStarts = starts(block, pieces);
      Run main = edges.run(part.id(), block, turnOf(block));
      runs.add(main);
      pieces.forEach(piece -> addPiece(block, piece));
      propose(block, candidates);
      break;
    }
    if (!candidates.isEmpty()) {
      unheard(candidates);
      return new FoundRuns(runs, meetings, proposal.stream().toList(), problems);
    }
    return without(part, part.id(), Phrase.of("framing.run.involved", PlaceName.of(part)));
  }

  /** Each place that says where a layout starts goes to the block it lies in or nearest to. */
  private Map<Block, List<Point>> starts(Block main, List<Block> pieces) {
    Map<Block, List<Point>> starts = new HashMap<>();
    List<Block> all = new ArrayList<>(List.of(main));
    all.addAll(pieces);
    for (Point place : part.frame().choices().runs().layoutFrom()) {
      Block nearest = Collections.min(all, Comparator.comparingDouble(b -> grid.away(b, place)));
      starts.computeIfAbsent(nearest, b -> new ArrayList<>()).add(place);
    }
    return starts;
  }

  /** Whether the user has the layout start from edge k + 1 of a block, not from edge k + 3. */
  private boolean startsFar(Block b, int k) {
    Run asIs = edges.run(part.id(), b, k);
    List<Point> starts = layoutStarts.getOrDefault(b, List.of());
    return !starts.isEmpty() && asIs.axes().u(starts.get(0)) > asIs.length() / 2;
  }

  /** Says so when the leg that should go through cannot. */
  private void unheard(List<Block> candidates) {
    part.frame()
        .choices()
        .runs()
        .through()
        .filter(p -> candidates.stream().noneMatch(b -> grid.contains(b, p)))
        .ifPresent(
            p ->
                problems.add(
                    Problem.warning(
                        part.id(),
                        Phrase.of("framing.through.none", PlaceName.of(part), PlacePoint.of(p)))));
  }

  /** Blocks that could be the main run, the best first. */
  private List<Block> byRidge() {
    List<Block> roofed = grid.largest().stream().filter(b -> Double.isFinite(ridge(b))).toList();
    List<Block> ended = roofed.stream().filter(this::hasEnds).toList();
    Comparator<Block> taller = Comparator.comparingDouble(b -> -Math.rint(ridge(b) / same));
    Optional<Point> through = part.frame().choices().runs().through();
    Comparator<Block> asked =
        Comparator.comparingInt(b -> through.filter(p -> grid.contains(b, p)).isPresent() ? 0 : 1);
    return (ended.isEmpty() ? roofed : ended)
        .stream()
            .sorted(asked.thenComparing(taller).thenComparingDouble(b -> -lengthAlong(b)))
            .toList();
  }

  /**
   * Walls close at least half of one end. Without this a shallow bump, carried through to the far
   * wall, would count as a run of its own and cut the real one in two.
   */
  private boolean hasEnds(Block b) {
    int k = turnOf(b);
    return edges.walled(b, k + 1) * 2 >= edges.edgeLength(b, k + 1)
        || edges.walled(b, k + 3) * 2 >= edges.edgeLength(b, k + 3);
  }

  private double ridge(Block b) {
    return Math.min(ridgeOver(b, 0), ridgeOver(b, 1));
  }

  /** Ridge height when the bearing walls are edges k and k + 2. */
  private double ridgeOver(Block b, int k) {
    return Run.ridgeHeight(edges.bound(b, k), edges.bound(b, k + 2), edges.edgeLength(b, k + 1));
  }

  private double lengthAlong(Block b) {
    return edges.edgeLength(b, turnOf(b));
  }

  /** Edge that becomes the low bearing wall: trusses span where the ridge comes out lower. */
  private int turnOf(Block b) {
    int k = ridgeOver(b, 0) < ridgeOver(b, 1) - same ? 0 : 1;
    if (Math.abs(ridgeOver(b, 0) - ridgeOver(b, 1)) <= same) {
      k = edges.edgeLength(b, 0) >= edges.edgeLength(b, 1) - same ? 0 : 1;
    }
    boolean turned = part.frame().choices().ridge().equals(Optional.of(Ridge.HIGH));
    if (turned && Double.isFinite(ridgeOver(b, k + 1))) {
      k++;
    }
    boolean turn = opensAtStart(b, k) || !opensAtStart(b, k + 2) && index(b, k + 2) < index(b, k);
    int usual = turn ? k + 2 : k;
    return startsFar(b, usual) ? usual + 2 : usual;
  }

  private boolean opensAtStart(Block b, int k) {
    return edges.bound(b, k + 3).kind() == EdgeKind.OPEN;
  }

  private int index(Block b, int k) {
    Bound edge = edges.bound(b, k);
    return edge.isEave() ? edge.side().orElseThrow().index() : Integer.MAX_VALUE;
  }

  private void addPiece(Block main, Block piece) {
    int mouth = mouthOf(main, piece);
    Bound low = edges.bound(piece, mouth + 3);
    Bound high = edges.bound(piece, mouth + 1);
    Run lower = runs.get(0);
    Bank bank = bankOf(lower, main, mouth + 2);
    Run against = edges.run(part.id() + "." + runs.size(), piece, mouth + 3);
    if (!stands(against, lower, bank)) {
      problems.add(
          Problem.warning(part.id(), Phrase.of("framing.run.sideBySide", PlaceName.of(part))));
    } else if (low.isEave() || high.isEave()) {
      addWing(against, startsFar(piece, mouth + 3) ? against.reversed() : against, lower, bank);
    } else if (edges.bound(piece, mouth + 2).isEave() && along(lower, bank)) {
      widen(lower, bank, against, edges.bound(piece, mouth + 2));
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

  /** Whether a hipped wing has no room for its girder beside its front truss. */
  private boolean isShallow(Run wing) {
    return wing.hipRun(Bank.START) >= wing.length() && wing.length() < part.frame().spacing() / 2;
  }

  private void addWing(Run wing, Run asLaid, Run lower, Bank bank) {
    if (wing.start().isEave() && isShallow(wing)) {
      problems.add(
          Problem.warning(
              wing.start().side().orElseThrow().id(),
              Phrase.of("framing.run.shallow", PlaceName.of(part))));
    } else {
      runs.add(asLaid);
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

  private void propose(Block block, List<Block> candidates) {
    if (runs.size() > 1) {
      Run main = runs.get(0);
      List<Run> wings = runs.subList(1, runs.size());
      double tallest = wings.stream().mapToDouble(Run::ridgeHeight).max().orElseThrow();
      boolean chosen =
          part.frame().choices().runs().through().filter(p -> grid.contains(block, p)).isPresent();
      Reason proposed = main.ridgeHeight() - tallest > same ? Reason.TALLEST : Reason.LONGER;
      proposal =
          Optional.of(
              proposed(
                  main.id(),
                  wings.stream().map(Run::id).toList(),
                  chosen ? Reason.CHOSEN : proposed,
                  block,
                  candidates));
    }
  }

  private RunProposal proposed(
      String main, List<String> wings, Reason reason, Block block, List<Block> candidates) {
    return new RunProposal(
        part.id(),
        main,
        wings,
        reason,
        grid.own(block, candidates),
        candidates.stream()
            .filter(b -> !b.equals(block))
            .map(b -> grid.own(b, candidates))
            .toList());
  }
}
