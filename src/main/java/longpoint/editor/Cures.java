package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;
import longpoint.units.LengthFigure;
import longpoint.wording.Phrase;

/**
 * What would put right what is wrong at a place of a plan. Looked for in the plan itself, not in
 * the words of a problem: a cure is offered only where its fault is there, and only if it can be
 * carried out.
 */
public final class Cures {
  private Cures() {}

  /**
   * The cures for a place.
   *
   * @param where id of a part or side, or {@code plan}, as a problem names it
   */
  public static List<Cure> at(Plan plan, String where) {
    List<Cure> cures = new ArrayList<>();
    for (Part part : plan.parts()) {
      if (part.id().equals(where)) {
        cures.addAll(PartCures.of(plan, part));
      }
      for (int i = 0; i < part.sideCount(); i++) {
        if (Side.id(part.id(), i).equals(where)) {
          cures.addAll(SideCures.of(plan, part, i));
        }
      }
    }
    cures.addAll(JoinCures.of(plan, where));
    return cures.stream().filter(c -> c.command().on(plan) instanceof Outcome.Commit).toList();
  }

  /** As {@link #at(Plan, String)}, and what problems found further on say would put them right. */
  public static List<Cure> at(Plan plan, String where, List<Problem> problems) {
    List<Cure> cures = new ArrayList<>(at(plan, where));
    for (Part part : plan.parts()) {
      for (int i = 0; i < part.sideCount(); i++) {
        if (Side.id(part.id(), i).equals(where)) {
          List<Ref.OfSide> ref = List.of(new Ref.OfSide(part.id(), i));
          problems.stream()
              .flatMap(p -> ripped(p).stream())
              .forEach(w -> cures.add(cure(plan, ref, w)));
        }
      }
    }
    return cures;
  }

  private static Cure cure(Plan plan, List<Ref.OfSide> side, double firstCourse) {
    Command rip = SideCommands.firstCourse(plan, side, Optional.of(firstCourse));
    return cure("firstCourse", rip, Naming.length(plan, firstCourse));
  }

  /** The first course that a problem about a last one names. */
  private static Optional<Double> ripped(Problem problem) {
    return problem.mend() instanceof Phrase cure
            && cure.key().equals("deck.lastCourse.cure")
            && cure.parts().get(2) instanceof LengthFigure width
        ? Optional.of(width.length())
        : Optional.empty();
  }

  /** A cure with its words from the messages. */
  static Cure cure(String key, Command command, Object... parts) {
    return new Cure(Messages.text("cure." + key, parts), command);
  }
}
