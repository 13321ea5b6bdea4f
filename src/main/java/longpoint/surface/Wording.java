package longpoint.surface;

import java.util.List;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.wording.Worded;

/**
 * How messages name parts and sides.
 *
 * <p>A part's roof is remembered under its shape alone, so a message holds the part's id between
 * marks until the plan's names are put in at the very end.
 */
final class Wording {
  private static final char OPEN = '\u27e6';
  private static final char CLOSE = '\u27e7';

  private Wording() {}

  static String part(String id) {
    return OPEN + id + CLOSE;
  }

  /** As people count: the first side is side 1. */
  static String side(Side side) {
    return "side " + (side.index() + 1) + " of " + part(side.part());
  }

  /** The problems with every part called what its user calls it. */
  static List<Problem> named(List<Problem> problems, Plan plan) {
    return problems.stream()
        .map(p -> new Problem(p.level(), p.where(), said(p.wrong(), plan), said(p.mend(), plan)))
        .map(p -> p.in(plan))
        .toList();
  }

  private static Worded said(Worded words, Plan plan) {
    return words instanceof Worded.Plain plain ? Worded.plain(named(plain.text(), plan)) : words;
  }

  private static String named(String text, Plan plan) {
    String named = text;
    for (Part part : plan.parts()) {
      String name = part.name().isBlank() ? "part “" + part.id() + "”" : part.name();
      named = named.replace(part(part.id()), name);
    }
    return named;
  }
}
