package longpoint.field.lumber;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.framing.FramingSet;
import longpoint.framing.Shop;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.stop.CalledOff;
import longpoint.surface.RoofSurface;
import longpoint.wording.Phrase;

/**
 * Front door of this package: what is cut on site and the boards for it.
 *
 * @param cuts every piece, like ones together
 * @param stock boards to buy, a section after another
 * @param problems pieces longer than any board
 */
public record Lumber(List<Cut> cuts, List<BoardStock> stock, List<Problem> problems) {
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
    return new Lumber(cuts, stock, tooLong(cuts));
  }

  private static List<Problem> tooLong(List<Cut> cuts) {
    return cuts.stream()
        .filter(c -> c.spliced() == Cut.Splice.TOO_LONG)
        .map(c -> Problem.warning("plan", Phrase.of("field.board.tooLong", c.mark())))
        .toList();
  }
}
