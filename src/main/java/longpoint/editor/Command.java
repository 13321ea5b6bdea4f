package longpoint.editor;

import java.util.function.UnaryOperator;
import longpoint.plan.Plan;

/** An edit as a panel or a menu makes it, carried out through {@link ToolRunner#apply}. */
@FunctionalInterface
public interface Command {
  /**
   * Carries the edit out on a settled plan: a commit, a refusal in words, or nothing when the plan
   * already is that way.
   */
  Outcome on(Plan plan);

  /**
   * An edit that cannot fail.
   *
   * @param name in the user's words, for undo
   */
  static Command of(String name, UnaryOperator<Plan> edit) {
    return plan -> {
      Plan changed = edit.apply(plan);
      return changed.equals(plan) ? Outcome.NONE : new Outcome.Commit(name, changed);
    };
  }
}
