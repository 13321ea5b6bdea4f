package longpoint.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import longpoint.geometry.Bounds;
import longpoint.geometry.Jts;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.EdgeKind;
import longpoint.plan.InLine;
import longpoint.plan.PlaceName;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.surface.sweep.Sweep;
import longpoint.surface.sweep.SweepResult;
import longpoint.wording.Phrase;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/**
 * Solves one part alone: set out the base of every side, sweep the eaves inward, run them down to
 * their fascias, and cut each plane at its own reach.
 *
 * <p>Never throws for what a user can draw: a part that cannot be solved comes back without pieces
 * and with a problem that names a side.
 */
final class PartSolver {
  /** Halvings that find the room beyond open sides to a ten-thousandth of the plan's extent. */
  private static final int RUN_ON_STEPS = 14;

  private final PartSpec spec;
  private final List<Side> sides;
  private final double grain;

  private PartSolver(PartSpec spec) {
    this.spec = spec;
    this.sides = spec.sides();
    this.grain = Grain.of(Bounds.of(sides.stream().map(s -> s.wall().from()).toList())).place();
  }

  static PartRoof solve(PartSpec spec) {
    PartSolver solver = new PartSolver(spec);
    Optional<Problem> unfit = PartFitness.check(spec);
    return unfit.map(solver::unsolved).orElseGet(solver::attempt);
  }

  /** An overlay that rounding upsets leaves the part unsolved, like any other trouble with it. */
  private PartRoof attempt() {
    try {
      return solve();
    } catch (TopologyException upset) {
      return unsolved(
          Problem.error(
              spec.part(), Phrase.of("surface.notWorkedOut", PlaceName.part(spec.part()))));
    }
  }

  private PartRoof solve() {
    double runOn = roomBeyond();
    Contour contour = Contour.of(spec.rings(), runOn, grain);
    Optional<Problem> tangled = tangled(contour);
    if (tangled.isPresent()) {
      return unsolved(tangled.get());
    }
    SweepResult swept = Sweep.solve(bases(contour), speeds(contour), wishes(contour));
    if (swept instanceof SweepResult.Failed failed) {
      return unsolved(failed(contour, failed));
    }
    List<Piece> pieces = faces(contour, (SweepResult.Solved) swept);
    List<Piece> strips = strips(contour);
    Contour outline = Contour.outline(spec.rings(), runOn, grain);
    Optional<Problem> folded = tangled(outline);
    boolean endsInside = contour.runs().stream().anyMatch(this::endsInside);
    // A base that lies beyond its own fascia is no overhang; what is cut back is looked over below.
    boolean apart = folded.isEmpty() && (endsInside || fill(strips, contour, outline));
    List<Problem> crowding =
        !apart && crowded(contour, strips)
            ? Crowding.find(strips, pieces, sides, spec.unit(), grain)
            : List.of();
    pieces.addAll(strips);
    List<Problem> problems = new ArrayList<>(crowding);
    if (endsInside) {
      if (folded.isPresent()) {
        return unsolved(folded.get());
      }
      pieces = new Trim(contour, polygon(outline), grain, () -> standing(contour)).apply(pieces);
    }
    if (crowding.isEmpty() && folded.isEmpty()) {
      List<Problem> faults = PartCheck.check(spec, pieces, polygon(outline), grain);
      if (!faults.isEmpty()) {
        pieces = new Trim(contour, polygon(outline), grain, () -> standing(contour)).apply(pieces);
        faults = PartCheck.check(spec, pieces, polygon(outline), grain);
      }
      problems.addAll(faults);
    }
    return new PartRoof(
        spec.part(),
        sides,
        spec.runOn(),
        pieces,
        ownGround(!crowding.isEmpty()),
        walls(),
        !crowding.isEmpty(),
        problems);
  }

  /**
   * How far the open sides can be moved out before sides that run together beyond them meet: all
   * the way where none do, or to just short of the meeting.
   */
  private double roomBeyond() {
    double clear = 0;
    double far = spec.runOn();
    if (far == 0 || fits(far)) {
      return far;
    }
    for (int i = 0; i < RUN_ON_STEPS; i++) {
      double middle = (clear + far) / 2;
      if (fits(middle)) {
        clear = middle;
      } else {
        far = middle;
      }
    }
    return clear;
  }

  private boolean fits(double runOn) {
    return tangled(Contour.of(spec.rings(), runOn, grain)).isEmpty();
  }

  private PartRoof unsolved(Problem problem) {
    Geometry none = Jts.FACTORY.createPolygon();
    return new PartRoof(
        spec.part(), sides, spec.runOn(), List.of(), none, none, false, List.of(problem));
  }

  private static List<Ring> bases(Contour contour) {
    return contour.loops().stream().map(Contour.Loop::base).toList();
  }

  private static double[] speeds(Contour contour) {
    return contour.runs().stream().mapToDouble(r -> r.upright() ? 0 : 1 / r.slope()).toArray();
  }

  private int[] wishes(Contour contour) {
    return contour.runs().stream()
        .mapToInt(r -> r.side() == Contour.Run.RETURN ? 0 : wish(sides.get(r.side())))
        .toArray();
  }

  private static int wish(Side side) {
    return side.inLine().map(l -> l == InLine.GOES_ON ? 1 : -1).orElse(0);
  }

  private static Polygon polygon(Contour contour) {
    List<LinearRing> rings =
        contour.loops().stream().map(Contour.Loop::base).map(Jts::linearRing).toList();
    return Jts.FACTORY.createPolygon(
        rings.get(0), rings.subList(1, rings.size()).toArray(LinearRing[]::new));
  }

  /** The base of a part folds over itself where a rake or a high heel has no room to stand out. */
  private Optional<Problem> tangled(Contour contour) {
    for (Contour.Loop loop : contour.loops()) {
      OptionalInt lost = loop.lost();
      if (lost.isPresent()) {
        return Optional.of(noRoom(loop, lost.getAsInt()));
      }
    }
    TopologyValidationError error = new IsValidOp(polygon(contour)).getValidationError();
    if (error == null) {
      return Optional.empty();
    }
    Point where = Jts.point(error.getCoordinate());
    Side near = nearest(where);
    return Optional.of(
        Problem.error(near.id(), Phrase.of("surface.tangled", PlaceName.wall(near))));
  }

  private Problem noRoom(Contour.Loop loop, int lost) {
    int i = lost;
    while (loop.run(i).side() == Contour.Run.RETURN) {
      i++;
    }
    Side side = sides.get(loop.run(i).side());
    return Problem.error(side.id(), Phrase.of("surface.noRoom", PlaceName.wall(side)));
  }

  private Side nearest(Point where) {
    Side best = sides.get(0);
    for (Side side : sides) {
      if (side.wall().distance(where) < best.wall().distance(where)) {
        best = side;
      }
    }
    return best;
  }

  private Problem failed(Contour contour, SweepResult.Failed failed) {
    int side = contour.runs().get(failed.side()).side();
    Side near = sides.get(Math.max(0, side));
    return Problem.error(
        near.id(), Phrase.of("surface.sweep." + failed.reason().key(), PlaceName.wall(near)));
  }

  private List<Piece> faces(Contour contour, SweepResult.Solved swept) {
    List<Piece> faces = new ArrayList<>();
    List<Contour.Run> runs = contour.runs();
    for (SweepResult.Face face : swept.faces()) {
      Contour.Run run = runs.get(face.side());
      if (!run.upright() && face.nodes().size() > 2) {
        List<Ring> holes = face.holes().stream().map(h -> ring(h, swept)).toList();
        faces.add(piece(run, Jts.polygon(new Region(ring(face.nodes(), swept), holes))));
      }
    }
    return faces;
  }

  private static Ring ring(List<Integer> nodes, SweepResult.Solved swept) {
    return new Ring(
        nodes.stream().map(n -> swept.nodes().get(n)).map(n -> new Point(n.x(), n.y())).toList());
  }

  /** The planes while every side that ends inside its base stands still at its reach. */
  private List<Piece> standing(Contour contour) {
    Contour standing = contour.standing(grain);
    if (tangled(standing).isEmpty()
        && moves(standing)
        && Sweep.solve(bases(standing), speeds(standing), wishes(standing))
            instanceof SweepResult.Solved solved) {
      List<Piece> pieces = faces(standing, solved);
      pieces.addAll(strips(standing));
      return pieces;
    }
    return List.of();
  }

  private static boolean moves(Contour contour) {
    return contour.runs().stream().anyMatch(r -> !r.upright());
  }

  private List<Piece> strips(Contour contour) {
    List<Piece> strips = new ArrayList<>();
    for (Contour.Loop loop : contour.loops()) {
      for (int i = 0; i < loop.runs().size(); i++) {
        Contour.Run run = loop.run(i);
        Strips.strip(loop, i, grain).ifPresent(ground -> strips.add(piece(run, ground)));
      }
    }
    return strips;
  }

  private Piece piece(Contour.Run run, Polygon ground) {
    Plane plane = sides.get(run.side()).framePlane();
    return new Piece(spec.part(), run.side(), plane, ground);
  }

  private boolean endsInside(Contour.Run run) {
    return run.spare() < -grain;
  }

  /** The roof's own ground, with open sides where they were drawn. */
  private Geometry ownGround(boolean crowded) {
    Contour outline = Contour.outline(spec.rings(), 0, grain);
    if (!crowded && tangled(outline).isEmpty()) {
      return polygon(outline);
    }
    Contour drawn = Contour.of(spec.rings(), 0, grain);
    List<Geometry> all = new ArrayList<>();
    all.add(polygon(drawn));
    strips(drawn).forEach(s -> all.add(s.ground()));
    return Overlay.union(all, grain);
  }

  private Geometry walls() {
    List<LinearRing> rings =
        spec.rings().stream()
            .map(r -> new Ring(r.stream().map(s -> s.wall().from()).toList()))
            .map(Jts::linearRing)
            .toList();
    return Jts.FACTORY.createPolygon(
        rings.get(0), rings.subList(1, rings.size()).toArray(LinearRing[]::new));
  }

  /**
   * Whether the strips fill the room between base and outline, neither of which crosses itself.
   * Going round all strips goes round the outline and back round the base, so strips that run all
   * the way out, none cut short by the next, cover each point between the two just once.
   */
  private boolean fill(List<Piece> strips, Contour contour, Contour outline) {
    double between = polygon(outline).getArea() - polygon(contour).getArea();
    double filled = strips.stream().mapToDouble(s -> s.ground().getArea()).sum();
    return Math.abs(between - filled) <= grain * polygon(outline).getLength();
  }

  /** Whether the strips lie over each other or over the base. */
  private boolean crowded(Contour contour, List<Piece> strips) {
    List<Geometry> all = new ArrayList<>();
    all.add(polygon(contour));
    strips.forEach(s -> all.add(s.ground()));
    double apart = all.stream().mapToDouble(Geometry::getArea).sum();
    Geometry together = Overlay.union(all, grain);
    return apart - together.getArea() > grain * together.getLength();
  }

  static boolean isEave(Side side) {
    return side.kind() == EdgeKind.EAVE;
  }
}
