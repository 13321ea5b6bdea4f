package longpoint.surface;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * How far a part with open sides runs on over the others: across its open sides, as far as it is
 * higher than every roof there, without a gap.
 *
 * @param part number of the part
 * @param over cells it lies over beyond its own ground
 * @param out borders past which it would go on with no roof beneath it
 * @param height of the highest point it reaches beyond its own ground
 * @param met height of the highest roof it lies over
 */
record RunOn(int part, Set<Integer> over, List<Ground.Border> out, double height, double met) {

  /** A roof that comes out on the far side has passed over the ridge of what it should meet. */
  boolean passesRidge() {
    return !out.isEmpty() && height > met;
  }

  static List<RunOn> all(Presence presence) {
    List<RunOn> all = new ArrayList<>();
    for (int part = 0; part < presence.parts(); part++) {
      if (presence.roof(part).runOn() > 0) {
        all.add(of(presence, part));
      }
    }
    return all;
  }

  private static RunOn of(Presence presence, int part) {
    Set<Integer> over = over(presence, part);
    List<Ground.Border> out = new ArrayList<>();
    Set<Integer> lower = new HashSet<>();
    double height = Double.NEGATIVE_INFINITY;
    for (int cell : over) {
      height = Math.max(height, presence.top(part, cell));
      for (int other = 0; other < presence.parts(); other++) {
        if (other != part && presence.own(other, cell)) {
          lower.add(other);
        }
      }
      for (Ground.Border border : presence.borders(cell)) {
        if (runsOut(presence, part, Presence.across(border, cell))) {
          out.add(border);
        }
      }
    }
    double met = lower.stream().mapToDouble(presence::summit).max().orElse(height);
    // A ridge as high as the one it meets does not pass over it, whatever the last digit says.
    boolean even = Math.abs(height - met) <= presence.levelWithin();
    return new RunOn(part, over, out, even ? met : height, met);
  }

  private static boolean runsOut(Presence presence, int part, int to) {
    return to != Ground.NONE
        && !presence.sliver(to)
        && presence.piece(part, to) != null
        && !presence.own(part, to)
        && !presence.ownedByOther(part, to);
  }

  private static Set<Integer> over(Presence presence, int part) {
    Set<Integer> over = new TreeSet<>();
    Set<Integer> seen = new HashSet<>();
    Deque<Integer> next = new ArrayDeque<>();
    for (int cell = 0; cell < presence.cells(); cell++) {
      if (presence.own(part, cell)) {
        next.add(cell);
      }
    }
    while (!next.isEmpty()) {
      int from = next.remove();
      for (Ground.Border border : presence.borders(from)) {
        int to = Presence.across(border, from);
        if (to == Ground.NONE || presence.own(part, to) || !seen.add(to)) {
          continue;
        }
        // A sliver is no ground of its own; the roof reaches across it.
        if (presence.sliver(to)) {
          next.add(to);
        } else if (isHighest(presence, part, to)) {
          over.add(to);
          next.add(to);
        }
      }
    }
    return over;
  }

  private static boolean isHighest(Presence presence, int part, int cell) {
    if (presence.piece(part, cell) == null || !presence.ownedByOther(part, cell)) {
      return false;
    }
    for (int other = 0; other < presence.parts(); other++) {
      if (other != part && presence.own(other, cell) && !presence.higher(part, other, cell)) {
        return false;
      }
    }
    return true;
  }
}
