package longpoint.surface;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Jts;
import longpoint.geometry.Point;
import longpoint.plan.Join;
import longpoint.plan.Side;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/**
 * Decides for every cell of ground which part's roof shows and what is built beneath it.
 *
 * <p>The higher frame plane shows. A part exists on its own ground and, across its open sides, as
 * far as it is higher than the parts it meets there without a gap.
 */
final class Joining {
  private final Ground ground;
  private final List<PartRoof> roofs;
  private final Roles roles;
  private final Grain grain;

  /** By part, then cell: the part's piece over the cell, or null. */
  private final Piece[][] pieces;

  private final boolean[][] own;
  private final boolean[][] exists;
  private final List<List<Ground.Border>> bordersOf = new ArrayList<>();

  private Joining(Ground ground, List<PartRoof> roofs, Roles roles, Grain grain) {
    this.ground = ground;
    this.roofs = roofs;
    this.roles = roles;
    this.grain = grain;
    int cells = ground.cells().size();
    pieces = new Piece[roofs.size()][cells];
    own = new boolean[roofs.size()][cells];
    exists = new boolean[roofs.size()][cells];
  }

  /** The joined roof, and what the later steps ask of it. */
  record Joined(List<Standing> standing, List<RunOn> runsOn) {}

  /**
   * What came of a part with open sides.
   *
   * @param over cells beyond its own ground that it lies over
   * @param out borders where it runs out past every roof it lies over
   */
  record RunOn(PartRoof roof, List<Integer> over, List<Ground.Border> out) {}

  static Joined join(Ground ground, List<PartRoof> roofs, List<Join> joins, Grain grain) {
    Joining joining = new Joining(ground, roofs, new Roles(roofs, joins), grain);
    joining.findNeighbours();
    joining.findPieces();
    List<RunOn> runsOn = joining.runOn();
    return new Joined(joining.standing(), runsOn);
  }

  private void findNeighbours() {
    ground.cells().forEach(c -> bordersOf.add(new ArrayList<>()));
    for (Ground.Border border : ground.borders()) {
      if (border.left() != Ground.NONE) {
        bordersOf.get(border.left()).add(border);
      }
      if (border.right() != Ground.NONE) {
        bordersOf.get(border.right()).add(border);
      }
    }
  }

  private void findPieces() {
    for (int k = 0; k < roofs.size(); k++) {
      for (int c = 0; c < ground.cells().size(); c++) {
        Ground.Cell cell = ground.cells().get(c);
        if (!cell.sliver()) {
          pieces[k][c] = highest(roofs.get(k), cell.inside()).orElse(null);
          own[k][c] = pieces[k][c] != null && within(cell.inside(), roofs.get(k).own());
          exists[k][c] = own[k][c];
        }
      }
    }
  }

  private static Optional<Piece> highest(PartRoof roof, Point at) {
    Piece best = null;
    for (Piece piece : roof.pieces()) {
      if (within(at, piece.ground())
          && (best == null || piece.plane().heightAt(at) > best.plane().heightAt(at))) {
        best = piece;
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean within(Point p, Geometry ground) {
    Coordinate c = Jts.coordinate(p);
    return ground.getEnvelopeInternal().contains(c)
        && SimplePointInAreaLocator.locate(c, ground) != Location.EXTERIOR;
  }

  private List<RunOn> runOn() {
    List<RunOn> all = new ArrayList<>();
    List<List<Integer>> found = new ArrayList<>();
    for (int k = 0; k < roofs.size(); k++) {
      found.add(roofs.get(k).runOn() > 0 ? beyond(k) : List.of());
    }
    for (int k = 0; k < roofs.size(); k++) {
      if (roofs.get(k).runOn() > 0) {
        List<Ground.Border> out = runningOut(k, found.get(k));
        all.add(new RunOn(roofs.get(k), found.get(k), out));
        if (!passesRidge(k, found.get(k), out)) {
          for (int c : found.get(k)) {
            exists[k][c] = true;
          }
        }
      }
    }
    return all;
  }

  /** Cells across the open sides of a part where it is the highest, without a gap. */
  private List<Integer> beyond(int k) {
    boolean[] seen = own[k].clone();
    Deque<Integer> next = new ArrayDeque<>();
    for (int c = 0; c < seen.length; c++) {
      if (seen[c]) {
        next.add(c);
      }
    }
    List<Integer> beyond = new ArrayList<>();
    while (!next.isEmpty()) {
      int from = next.remove();
      for (Ground.Border border : bordersOf.get(from)) {
        int to = other(border, from);
        if (to != Ground.NONE && !seen[to] && higherThere(k, to)) {
          seen[to] = true;
          next.add(to);
          beyond.add(to);
        }
      }
    }
    Collections.sort(beyond);
    return beyond;
  }

  private static int other(Ground.Border border, int cell) {
    return border.left() == cell ? border.right() : border.left();
  }

  private boolean higherThere(int k, int cell) {
    Piece mine = pieces[k][cell];
    if (mine == null) {
      return false;
    }
    boolean meets = false;
    for (int m = 0; m < roofs.size(); m++) {
      if (m != k && own[m][cell]) {
        meets = true;
        if (!higher(mine, pieces[m][cell], cell)) {
          return false;
        }
      }
    }
    return meets;
  }

  private boolean higher(Piece a, Piece b, int cell) {
    return gap(a, b, cell) > grain.height(a.plane(), b.plane());
  }

  /** How far {@code a} stands above {@code b} at most over a cell. */
  private double gap(Piece a, Piece b, int cell) {
    Point p = ground.cells().get(cell).inside();
    return a.plane().heightAt(p) - b.plane().heightAt(p);
  }

  private List<Ground.Border> runningOut(int k, List<Integer> over) {
    List<Ground.Border> out = new ArrayList<>();
    for (int cell : over) {
      for (Ground.Border border : bordersOf.get(cell)) {
        int to = other(border, cell);
        if (to != Ground.NONE && pieces[k][to] != null && !own[k][to] && !met(k, to)) {
          out.add(border);
        }
      }
    }
    return out;
  }

  private boolean met(int k, int cell) {
    for (int m = 0; m < roofs.size(); m++) {
      if (m != k && own[m][cell]) {
        return true;
      }
    }
    return ground.cells().get(cell).sliver();
  }

  /** A roof that runs out on the far side of all it lies over passes over their ridge. */
  private boolean passesRidge(int k, List<Integer> over, List<Ground.Border> out) {
    if (out.isEmpty()) {
      return false;
    }
    double mine = Double.NEGATIVE_INFINITY;
    double theirs = Double.NEGATIVE_INFINITY;
    for (int cell : over) {
      mine = Math.max(mine, top(pieces[k][cell], cell));
      for (int m = 0; m < roofs.size(); m++) {
        if (m != k && own[m][cell]) {
          theirs = Math.max(theirs, summit(m));
        }
      }
    }
    return mine > theirs;
  }

  private double top(Piece piece, int cell) {
    return Arrays.stream(ground.cells().get(cell).shape().getCoordinates())
        .mapToDouble(c -> piece.plane().heightAt(Jts.point(c)))
        .max()
        .orElseThrow();
  }

  private double summit(int m) {
    double summit = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < own[m].length; c++) {
      if (own[m][c]) {
        summit = Math.max(summit, top(pieces[m][c], c));
      }
    }
    return summit;
  }

  private List<Standing> standing() {
    List<Standing> standing = new ArrayList<>();
    for (int c = 0; c < ground.cells().size(); c++) {
      standing.add(ground.cells().get(c).sliver() ? null : standing(c));
    }
    fillSlivers(standing);
    return standing;
  }

  private Standing standing(int cell) {
    int top = -1;
    for (int k = 0; k < roofs.size(); k++) {
      if (exists[k][cell] && (top < 0 || shows(k, top, cell))) {
        top = k;
      }
    }
    if (top < 0) {
      return Standing.NOTHING;
    }
    List<Piece> covered = new ArrayList<>();
    for (int k = 0; k < roofs.size(); k++) {
      if (k != top && own[k][cell] && built(k, top, cell)) {
        covered.add(pieces[k][cell]);
      }
    }
    return new Standing(pieces[top][cell], covered);
  }

  /** Flush planes show as the part whose walls stand there, then as the lower of the join. */
  private boolean shows(int k, int than, int cell) {
    Piece a = pieces[k][cell];
    Piece b = pieces[than][cell];
    if (higher(a, b, cell) || higher(b, a, cell)) {
      return higher(a, b, cell);
    }
    Point p = ground.cells().get(cell).inside();
    boolean inA = within(p, roofs.get(k).walls());
    boolean inB = within(p, roofs.get(than).walls());
    return inA != inB ? inA : roles.over(b.part(), a.part());
  }

  /** Whether the roof of part {@code k} is built although part {@code top} shows above it. */
  private boolean built(int k, int top, int cell) {
    String under = roofs.get(k).part();
    String upper = roofs.get(top).part();
    if (roles.over(upper, under)) {
      return roles.method(upper, under) != Join.Method.THROUGH;
    }
    // The upper part of the join dips below the lower one. Under an overhang that clears it, its
    // roof runs on to the wall; anywhere else it ends where it meets the lower roof.
    Point p = ground.cells().get(cell).inside();
    Side eave = roofs.get(top).sides().get(pieces[top][cell].side());
    return !within(p, roofs.get(top).walls())
        && clearance(pieces[top][cell], pieces[k][cell], cell) >= eave.heel();
  }

  private double clearance(Piece above, Piece below, int cell) {
    double most = Double.NEGATIVE_INFINITY;
    for (Coordinate c : ground.cells().get(cell).shape().getCoordinates()) {
      Point p = Jts.point(c);
      most = Math.max(most, above.plane().heightAt(p) - below.plane().heightAt(p));
    }
    return most;
  }

  /** A sliver is an error of rounding: it goes with the neighbour it shares most border with. */
  private void fillSlivers(List<Standing> standing) {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int c = 0; c < standing.size(); c++) {
        if (standing.get(c) == null) {
          Standing from = alongLongestBorder(c, standing);
          changed |= from != null;
          standing.set(c, from);
        }
      }
    }
    standing.replaceAll(s -> s == null ? Standing.NOTHING : s);
  }

  private Standing alongLongestBorder(int cell, List<Standing> standing) {
    Standing best = null;
    double longest = 0;
    for (Ground.Border border : bordersOf.get(cell)) {
      int to = other(border, cell);
      Standing there = to == Ground.NONE ? Standing.NOTHING : standing.get(to);
      if (there != null && border.length() > longest) {
        longest = border.length();
        best = there;
      }
    }
    return best;
  }
}
