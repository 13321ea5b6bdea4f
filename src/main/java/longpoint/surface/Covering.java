package longpoint.surface;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import longpoint.geometry.Point;
import longpoint.plan.Join;
import longpoint.plan.Side;

/**
 * Decides for every cell of ground which roof shows and what is built beneath it.
 *
 * <p>The higher frame plane shows. Beneath it, the lower roof of an overlay is built whole; that of
 * a join framed through is not. The upper roof of a join ends in the valley, except where it passes
 * beneath an overhang that leaves room for it: there it runs on to the wall.
 */
final class Covering {
  private final Presence presence;
  private final Roles roles;
  private final boolean[][] exists;
  private final int[] top;

  private Covering(Presence presence, Roles roles, List<RunOn> runsOn) {
    this.presence = presence;
    this.roles = roles;
    exists = new boolean[presence.parts()][presence.cells()];
    top = new int[presence.cells()];
    findExisting(runsOn);
    findTops();
  }

  /** What stands over each cell, in their order. */
  static List<Standing> standing(Presence presence, Roles roles, List<RunOn> runsOn) {
    Covering covering = new Covering(presence, roles, runsOn);
    boolean[][] built = covering.built();
    List<Standing> standing = new ArrayList<>();
    for (int cell = 0; cell < presence.cells(); cell++) {
      standing.add(presence.sliver(cell) ? null : covering.at(cell, built));
    }
    Slivers.fill(presence, standing);
    return standing;
  }

  private void findExisting(List<RunOn> runsOn) {
    for (int part = 0; part < presence.parts(); part++) {
      for (int cell = 0; cell < presence.cells(); cell++) {
        exists[part][cell] = presence.own(part, cell);
      }
    }
    for (RunOn runOn : runsOn) {
      if (!runOn.passesRidge()) {
        runOn.over().forEach(cell -> exists[runOn.part()][cell] = true);
      }
    }
  }

  private void findTops() {
    for (int cell = 0; cell < presence.cells(); cell++) {
      top[cell] = -1;
      for (int part = 0; part < presence.parts(); part++) {
        if (exists[part][cell] && (top[cell] < 0 || shows(part, top[cell], cell))) {
          top[cell] = part;
        }
      }
    }
  }

  /** Flush planes show as the part whose walls stand there, then as the lower of the join. */
  private boolean shows(int part, int than, int cell) {
    if (presence.higher(part, than, cell)) {
      return true;
    }
    if (presence.higher(than, part, cell)) {
      return false;
    }
    boolean here = presence.insideWalls(part, cell);
    boolean there = presence.insideWalls(than, cell);
    return here != there ? here : roles.over(name(than), name(part));
  }

  private String name(int part) {
    return presence.roof(part).part();
  }

  private Standing at(int cell, boolean[][] built) {
    if (top[cell] < 0) {
      return Standing.NOTHING;
    }
    List<Piece> covered = new ArrayList<>();
    List<Piece> sheltered = new ArrayList<>();
    for (int part = 0; part < presence.parts(); part++) {
      if (built[part][cell]) {
        covered.add(presence.piece(part, cell));
        if (sheltered(part, cell)) {
          sheltered.add(presence.piece(part, cell));
        }
      }
    }
    return new Standing(presence.piece(top[cell], cell), covered, sheltered);
  }

  /** By part and cell: built, but not seen. */
  private boolean[][] built() {
    boolean[][] built = new boolean[presence.parts()][presence.cells()];
    for (int part = 0; part < presence.parts(); part++) {
      for (int cell = 0; cell < presence.cells(); cell++) {
        built[part][cell] = hidden(part, cell) && lowerOfOverlay(part, cell);
      }
      passBeneathOverhangs(part, built[part]);
    }
    return built;
  }

  private boolean hidden(int part, int cell) {
    return presence.own(part, cell) && top[cell] >= 0 && top[cell] != part;
  }

  private boolean lowerOfOverlay(int part, int cell) {
    String above = name(top[cell]);
    return roles.over(above, name(part)) && roles.method(above, name(part)) != Join.Method.THROUGH;
  }

  /** From where the part is seen, in beneath overhangs that clear it by the upper roof's heel. */
  private void passBeneathOverhangs(int part, boolean[] built) {
    Deque<Integer> next = new ArrayDeque<>();
    for (int cell = 0; cell < presence.cells(); cell++) {
      if (top[cell] == part) {
        next.add(cell);
      }
    }
    while (!next.isEmpty()) {
      int from = next.remove();
      for (Ground.Border border : presence.borders(from)) {
        int to = Presence.across(border, from);
        if (to != Ground.NONE
            && !built[to]
            && beneathOverhang(part, to)
            && clears(part, to, border)) {
          built[to] = true;
          next.add(to);
        }
      }
    }
  }

  private boolean beneathOverhang(int part, int cell) {
    return hidden(part, cell)
        && roles.over(name(part), name(top[cell]))
        && !presence.insideWalls(top[cell], cell);
  }

  /**
   * Outside the walls that carry what is above, with room for its tails all over: it is roofed like
   * the rest. Where the gap closes, as in a valley's mouth, it is not.
   */
  private boolean sheltered(int part, int cell) {
    if (!presence.own(top[cell], cell) || presence.insideWalls(top[cell], cell)) {
      return false;
    }
    Piece above = presence.piece(top[cell], cell);
    Piece below = presence.piece(part, cell);
    double heel = presence.roof(top[cell]).sides().get(above.side()).heel();
    return presence.borders(cell).stream()
        .allMatch(b -> Math.min(gap(above, below, b.from()), gap(above, below, b.to())) >= heel);
  }

  private boolean clears(int part, int cell, Ground.Border at) {
    Piece above = presence.piece(top[cell], cell);
    Piece below = presence.piece(part, cell);
    Side eave = presence.roof(top[cell]).sides().get(above.side());
    return Math.max(gap(above, below, at.from()), gap(above, below, at.to())) >= eave.heel();
  }

  private static double gap(Piece above, Piece below, Point p) {
    return above.plane().heightAt(p) - below.plane().heightAt(p);
  }
}
