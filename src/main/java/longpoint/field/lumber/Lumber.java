package longpoint.field.lumber;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longpoint.framing.FramingSet;
import longpoint.framing.Shop;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.stop.CalledOff;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthFigure;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/**
 * Front door of this package: what is cut on site and the boards for it.
 *
 * @param cuts every piece, like ones together
 * @param stock boards to buy, a section after another
 * @param problems pieces longer than any board
 */
public record Lumber(List<Cut> cuts, List<BoardStock> stock, List<Problem> problems) {
  /** How many of the pieces that are too long are named. */
  private static final int NAMED = 4;

  public static final Lumber NONE = new Lumber(List.of(), List.of(), List.of());

  public Lumber {
    cuts = List.copyOf(cuts);
    stock = List.copyOf(stock);
    problems = List.copyOf(problems);
  }

  /** The lists of a plan's frame. */
  public static Lumber of(
      Plan plan, RoofSurface surface, FramingSet framing, LumberChoices choices) {
    CalledOff.check();
    List<Cut> cuts = CutList.of(plan, surface, framing, choices);
    double mark = Shop.of(plan.unit()).mark();
    Map<Section, List<Cut>> sections = new LinkedHashMap<>();
    for (Cut cut : cuts) {
      if (cut.spliced() != Cut.Splice.TOO_LONG) {
        sections.computeIfAbsent(cut.section(), s -> new ArrayList<>()).add(cut);
      }
    }
    List<BoardStock> stock =
        sections.entrySet().stream()
            .map(e -> Stocking.of(e.getKey(), e.getValue(), choices, mark))
            .toList();
    return new Lumber(cuts, stock, tooLong(cuts, choices, plan));
  }

  /** All of them at once: what cures one most often cures the rest. */
  private static List<Problem> tooLong(List<Cut> cuts, LumberChoices choices, Plan plan) {
    List<Cut> over = cuts.stream().filter(c -> c.spliced() == Cut.Splice.TOO_LONG).toList();
    if (over.isEmpty()) {
      return List.of();
    }
    String first = over.stream().limit(NAMED).map(Cut::mark).collect(Collectors.joining(", "));
    Worded marks =
        over.size() > NAMED
            ? Phrase.of("field.board.more", first, over.size() - NAMED)
            : Worded.plain(first);
    double longest = over.stream().mapToDouble(Cut::board).max().orElseThrow();
    return List.of(
        Problem.warning(
            where(over, plan),
            Phrase.of(
                "field.board.tooLong",
                marks,
                new LengthFigure(longest, plan.unit()),
                new LengthFigure(choices.longest(), plan.unit()))));
  }

  /** The part they all belong to, if they do. */
  private static String where(List<Cut> cuts, Plan plan) {
    List<String> parts =
        cuts.stream().flatMap(c -> c.at().stream()).map(at -> part(at, plan)).distinct().toList();
    return parts.size() == 1 ? parts.get(0) : "plan";
  }

  /** What runs, sides and lines are named after. */
  private static String part(String at, Plan plan) {
    return plan.parts().stream()
        .map(Part::id)
        .filter(id -> at.equals(id) || at.startsWith(id + "/") || at.startsWith(id + "."))
        .max(Comparator.comparingInt(String::length))
        .orElse("plan");
  }
}
