package longpoint.surface;

import java.util.List;

/** Gives cells too thin to be looked at to the neighbour they share most of their border with. */
final class Slivers {
  private Slivers() {}

  /**
   * Fills the gaps.
   *
   * @param standing what stands over each cell; null for a sliver, which is changed here
   */
  static void fill(Presence presence, List<Standing> standing) {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int cell = 0; cell < standing.size(); cell++) {
        if (standing.get(cell) == null) {
          standing.set(cell, alongLongestBorder(presence, cell, standing));
          changed |= standing.get(cell) != null;
        }
      }
    }
    standing.replaceAll(s -> s == null ? Standing.NOTHING : s);
  }

  private static Standing alongLongestBorder(Presence presence, int cell, List<Standing> standing) {
    Standing best = null;
    double longest = 0;
    for (Ground.Border border : presence.borders(cell)) {
      int to = Presence.across(border, cell);
      Standing there = to == Ground.NONE ? Standing.NOTHING : standing.get(to);
      if (there != null && border.length() > longest) {
        longest = border.length();
        best = there;
      }
    }
    return best;
  }
}
