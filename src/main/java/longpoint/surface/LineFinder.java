package longpoint.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Side;
import longpoint.stop.CalledOff;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;

/** Finds the roof's lines along the borders between cells. */
final class LineFinder {
  /**
   * A stretch of a line, not yet joined with its neighbours.
   *
   * @param planes ids of the planes that meet, sorted
   * @param on the piece whose plane the line lies in
   */
  record Stretch(LineKind kind, List<String> planes, Piece on, Segment line) {}

  private final Map<String, PartRoof> roofs = new HashMap<>();
  private final Grain grain;
  private final List<Stretch> found = new ArrayList<>();

  private LineFinder(List<PartRoof> roofs, Grain grain) {
    roofs.forEach(r -> this.roofs.put(r.part(), r));
    this.grain = grain;
  }

  static List<Stretch> find(
      Ground ground, List<Standing> standing, List<PartRoof> roofs, Grain grain) {
    LineFinder finder = new LineFinder(roofs, grain);
    for (Ground.Border border : ground.borders()) {
      CalledOff.check();
      Standing left = at(standing, border.left());
      Standing right = at(standing, border.right());
      Segment line = new Segment(border.from(), border.to());
      finder.seen(line, left, right);
      finder.beneathOverhangs(line, left, right);
      finder.wallOnRoof(line, left, right);
      finder.abutments(line, left, right);
      finder.abutments(new Segment(line.to(), line.from()), right, left);
    }
    return finder.found;
  }

  private static Standing at(List<Standing> standing, int cell) {
    return cell == Ground.NONE ? Standing.NOTHING : standing.get(cell);
  }

  private void seen(Segment line, Standing left, Standing right) {
    Segment back = new Segment(line.to(), line.from());
    if (left.empty() || right.empty()) {
      if (!left.empty()) {
        edge(line, left.top());
      } else if (!right.empty()) {
        edge(back, right.top());
      }
      return;
    }
    if (left.top().id().equals(right.top().id())) {
      return;
    }
    double step = gap(left.top(), right.top(), line);
    if (level(step, left.top(), right.top())) {
      meeting(line, left.top(), right.top());
    } else if (step > 0) {
      edge(line, left.top());
      step(line, right.top(), left);
    } else {
      edge(back, right.top());
      step(line, left.top(), right);
    }
  }

  private boolean level(double step, Piece a, Piece b) {
    return Math.abs(step) <= grain.height(a.plane(), b.plane());
  }

  /** Hips, valleys, eaves and rakes go on where an overhang above hides them but clears them. */
  private void beneathOverhangs(Segment line, Standing left, Standing right) {
    Set<String> parts = new TreeSet<>();
    left.sheltered().forEach(p -> parts.add(p.part()));
    right.sheltered().forEach(p -> parts.add(p.part()));
    for (String part : parts) {
      Piece here = left.outdoors(part);
      Piece there = right.outdoors(part);
      if (here != null && there != null) {
        if (!here.id().equals(there.id()) && level(gap(here, there, line), here, there)) {
          meeting(line, here, there);
        }
      } else if (here != null) {
        ownEdge(line, here, right);
      } else {
        ownEdge(new Segment(line.to(), line.from()), there, left);
      }
    }
  }

  private void ownEdge(Segment line, Piece piece, Standing beyond) {
    boolean eaveOrRake =
        sideAt(line, piece)
            .filter(s -> s.kind() == EdgeKind.EAVE || s.kind() == EdgeKind.GABLE)
            .isPresent();
    if (eaveOrRake && !beyond.holds(piece.id())) {
      edge(line, piece);
    }
  }

  /** The greater of the gaps at the two ends, with its sign. */
  private static double gap(Piece a, Piece b, Segment line) {
    double from = a.plane().heightAt(line.from()) - b.plane().heightAt(line.from());
    double to = a.plane().heightAt(line.to()) - b.plane().heightAt(line.to());
    return Math.abs(from) > Math.abs(to) ? from : to;
  }

  private void meeting(Segment line, Piece left, Piece right) {
    LineNaming.between(line, left.plane(), right.plane())
        .ifPresent(kind -> add(kind, first(left, right), line, left, right));
  }

  /** Either plane will do for the heights; always the same one, so that stretches join up. */
  private static Piece first(Piece a, Piece b) {
    return a.id().compareTo(b.id()) <= 0 ? a : b;
  }

  private void edge(Segment line, Piece piece) {
    LineKind kind = LineNaming.edge(line, piece.plane(), piece.side(), sideAt(line, piece));
    if (kind != LineKind.ABUTMENT) {
      add(kind, piece, line, piece);
    }
  }

  /** The lower plane stops against what stands higher, unless it is built on beneath. */
  private void step(Segment line, Piece lower, Standing higher) {
    if (!higher.holds(lower.id())) {
      add(LineKind.STEP, lower, line, lower, higher.top());
    }
  }

  /** Where a wall of the roof that shows, a dormer's, stands on a roof that is built beneath. */
  private void wallOnRoof(Segment line, Standing left, Standing right) {
    if (left.empty() || right.empty() || !left.top().part().equals(right.top().part())) {
      return;
    }
    PartRoof upper = roofs.get(left.top().part());
    for (Piece lower : left.covered()) {
      PartRoof beneath = roofs.get(lower.part());
      if (right.holds(lower.id())
          && inside(line.middle(), beneath)
          && upper.sides().stream().anyMatch(s -> standsAlong(line, s))) {
        add(LineKind.STEP, lower, line, lower, left.top());
      }
    }
  }

  private boolean standsAlong(Segment line, Side side) {
    double near = grain.near();
    return (side.kind() == EdgeKind.EAVE || side.kind() == EdgeKind.GABLE)
        && side.wall().distance(line.from()) < near
        && side.wall().distance(line.to()) < near;
  }

  /** Within the walls, not along one: there two walls stand back to back. */
  private boolean inside(Point place, PartRoof roof) {
    return SimplePointInAreaLocator.isContained(Jts.coordinate(place), roof.walls())
        && roof.sides().stream().allMatch(s -> s.wall().distance(place) > grain.near());
  }

  /**
   * A roof that stops against a wall is flashed whether or not an overhang above hides it; an open
   * side stops so where it passes beneath the overhang of the roof it was meant to meet.
   */
  private void abutments(Segment line, Standing in, Standing out) {
    if (!in.empty()) {
      abutment(line, in.top(), out, EdgeKind.ABUTMENT);
      for (Piece hidden : in.covered()) {
        abutment(line, hidden, out, EdgeKind.ABUTMENT);
        abutment(line, hidden, out, EdgeKind.OPEN);
      }
    }
  }

  private void abutment(Segment line, Piece piece, Standing beyond, EdgeKind kind) {
    if (!beyond.holds(piece.id())
        && sideAt(line, piece).filter(s -> s.kind() == kind).isPresent()) {
      add(LineKind.ABUTMENT, piece, line, piece);
    }
  }

  /** The side of the piece's part on whose roof edge a line lies: its own eave before others. */
  private Optional<Side> sideAt(Segment line, Piece piece) {
    return roofs.get(piece.part()).sides().stream()
        .filter(s -> lies(line, s))
        .min(
            Comparator.comparingInt((Side s) -> s.index() == piece.side() ? 0 : 1)
                .thenComparingDouble(s -> s.wall().distance(line.middle())));
  }

  private boolean lies(Segment line, Side side) {
    double near = grain.near();
    return Math.abs(-side.wall().offset(line.from()) - side.reach()) < near
        && Math.abs(-side.wall().offset(line.to()) - side.reach()) < near;
  }

  private void add(LineKind kind, Piece on, Segment line, Piece... planes) {
    List<String> ids = Arrays.stream(planes).map(Piece::id).sorted().toList();
    found.add(new Stretch(kind, ids, on, line));
  }
}
