package longpoint.deck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.deck.nest.CourseBound;
import longpoint.deck.nest.Nest;
import longpoint.geometry.Ring;
import longpoint.stop.CalledOff;

/**
 * Chooses a rhythm for every plane so that the whole roof takes few sheets.
 *
 * <p>Planes with one rhythm keep it. For the others: each plane's rhythms are ranked by the sheets
 * they need on their own; then plane by plane the best few are tried with everything else in place,
 * offcuts shared over the whole roof; last, the outcome is held against every plane started at the
 * left, at the right and at the centre, so that it is never worse than a plain start. Rules come
 * before sheets: a rhythm that keeps more of the rules for joints wins.
 */
final class LeastSheets {
  /** How many of a plane's rhythms are tried against the whole roof. */
  private static final int TRIED = 6;

  /** The first three rhythms of a free plane are the plain starts. */
  private static final int PLAIN = 3;

  private record Score(int kept, int sheets, int pieces) implements Comparable<Score> {
    @Override
    public int compareTo(Score other) {
      return Comparator.comparingInt(Score::kept)
          .thenComparingInt(Score::sheets)
          .thenComparingInt(Score::pieces)
          .compare(this, other);
    }
  }

  private final List<Sheathing.Choice> choices;
  private Map<Panel, Integer> bounds;

  private LeastSheets(List<Sheathing.Choice> choices) {
    this.choices = choices;
    this.bounds = Cutting.bounds(choices, CourseBound::sheets);
  }

  /** One laying for each plane, in order. */
  static Refining.Found choose(List<Sheathing.Choice> choices) {
    return new LeastSheets(choices).choose();
  }

  private Refining.Found choose() {
    List<List<Laying>> open = new ArrayList<>();
    for (Sheathing.Choice choice : choices) {
      open.add(choice.rhythms().stream().map(choice::laying).toList());
    }
    List<Laying> best = new ArrayList<>(open.stream().map(l -> l.get(0)).toList());
    if (open.stream().allMatch(l -> l.size() == 1)) {
      return new Refining.Found(best, Map.of(), bounds);
    }
    List<List<Laying>> ranked = new ArrayList<>();
    for (int i = 0; i < open.size(); i++) {
      ranked.add(ranked(i, open.get(i)));
      best.set(i, ranked.get(i).get(0));
    }
    Score least = score(best, Nest.Effort.QUICK);
    for (int i = 0; i < ranked.size() && !reached(least); i++) {
      for (Laying laying : ranked.get(i).subList(1, ranked.get(i).size())) {
        CalledOff.check();
        List<Laying> tried = new ArrayList<>(best);
        tried.set(i, laying);
        Score score = score(tried, Nest.Effort.QUICK);
        if (score.compareTo(least) < 0) {
          least = score;
          best = tried;
        }
      }
    }
    best = heldAgainstPlain(open, best);
    CalledOff.check();
    if (!reached(score(best, Nest.Effort.QUICK))) {
      bounds = Cutting.bounds(choices, CourseBound::best);
    }
    return Refining.of(choices, best, bounds);
  }

  private List<Laying> heldAgainstPlain(List<List<Laying>> open, List<Laying> found) {
    List<Laying> best = found;
    Score least = score(best, Nest.Effort.THOROUGH);
    for (int plain = 0; plain < PLAIN && !reached(least); plain++) {
      int start = plain;
      List<Laying> tried = open.stream().map(l -> l.size() == 1 ? l.get(0) : l.get(start)).toList();
      Score score = score(tried, Nest.Effort.THOROUGH);
      if (score.compareTo(least) < 0) {
        least = score;
        best = tried;
      }
    }
    return best;
  }

  private List<Laying> ranked(int plane, List<Laying> layings) {
    if (layings.size() == 1) {
      return layings;
    }
    record Ranked(Laying laying, Score score) {}
    List<Ranked> ranked = new ArrayList<>();
    for (Laying laying : layings) {
      CalledOff.check();
      if (ranked.stream().noneMatch(r -> r.laying.courses().equals(laying.courses()))) {
        Panel panel = choices.get(plane).ground().panel();
        int sheets = sheets(panel, outlines(laying), 0, Nest.Effort.QUICK);
        ranked.add(
            new Ranked(laying, new Score(laying.kept().ordinal(), sheets, laying.pieces().size())));
      }
    }
    ranked.sort(Comparator.comparing(Ranked::score));
    return ranked.stream().limit(TRIED).map(Ranked::laying).toList();
  }

  private boolean reached(Score score) {
    return score.kept == 0
        && score.sheets <= bounds.values().stream().mapToInt(Integer::intValue).sum();
  }

  private Score score(List<Laying> layings, Nest.Effort effort) {
    Map<Panel, List<Ring>> outlines = new LinkedHashMap<>();
    int kept = 0;
    int pieces = 0;
    for (int i = 0; i < layings.size(); i++) {
      outlines
          .computeIfAbsent(choices.get(i).ground().panel(), p -> new ArrayList<>())
          .addAll(outlines(layings.get(i)));
      kept += layings.get(i).kept().ordinal();
      pieces += layings.get(i).pieces().size();
    }
    int sheets = 0;
    for (Map.Entry<Panel, List<Ring>> entry : outlines.entrySet()) {
      sheets += sheets(entry.getKey(), entry.getValue(), bounds.get(entry.getKey()), effort);
    }
    return new Score(kept, sheets, pieces);
  }

  private static int sheets(Panel panel, List<Ring> outlines, int enough, Nest.Effort effort) {
    return Nest.pack(outlines, panel.length(), panel.width(), panel.rounding(), enough, effort)
        .size();
  }

  private static List<Ring> outlines(Laying laying) {
    return laying.pieces().stream().map(c -> c.outline().shell()).toList();
  }
}
