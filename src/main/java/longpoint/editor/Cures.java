package longpoint.editor;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.plan.Side;

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
    if (where.equals("plan")) {
      cures.addAll(PlanCures.of(plan));
    }
    cures.addAll(IdCures.of(plan, where));
    cures.addAll(JoinCures.of(plan, where));
    return cures.stream().filter(c -> c.command().on(plan) instanceof Outcome.Commit).toList();
  }

  /** As {@link #at(Plan, String)}, and what problems found further on say would put them right. */
  public static List<Cure> at(Plan plan, String where, List<Problem> problems) {
    List<Cure> cures = new ArrayList<>(at(plan, where));
    for (Part part : plan.parts()) {
      if (part.id().equals(where)) {
        cures.addAll(SaidCures.of(plan, part, Optional.empty(), problems));
      }
      for (int i = 0; i < part.sideCount(); i++) {
        if (Side.id(part.id(), i).equals(where)) {
          cures.addAll(SaidCures.of(plan, part, Optional.of(i), problems));
        }
      }
    }
    problems.forEach(p -> cures.addAll(BuyingCures.of(plan, p)));
    Set<String> labels = new HashSet<>();
    return cures.stream()
        .filter(c -> c.command().on(plan) instanceof Outcome.Commit)
        .filter(c -> labels.add(c.label()))
        .toList();
  }

  /** As {@link #cure}, and called by the same words when it is undone. */
  static Cure named(String key, Command command, Object... parts) {
    String label = Messages.text("cure." + key, parts);
    return new Cure(
        label,
        plan ->
            command.on(plan) instanceof Outcome.Commit done
                ? new Outcome.Commit(label, done.plan())
                : command.on(plan));
  }

  /** A cure with its words from the messages. */
  static Cure cure(String key, Command command, Object... parts) {
    return new Cure(Messages.text("cure." + key, parts), command);
  }
}
