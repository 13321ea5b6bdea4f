package longpoint.editor;

import java.util.Objects;
import longpoint.plan.Plan;

/** What an event came to. */
public sealed interface Outcome {
  Outcome NONE = new None();
  Outcome REVERT = new Revert();

  /** Nothing for the plan; a preview stays. */
  record None() implements Outcome {}

  /** Show this plan for now; it was made from the settled plan and the gesture alone. */
  record Preview(Plan plan) implements Outcome {
    public Preview {
      Objects.requireNonNull(plan);
    }
  }

  /**
   * This plan it is.
   *
   * @param name what was done, in the user's words, for undo
   */
  record Commit(String name, Plan plan) implements Outcome {
    public Commit {
      Objects.requireNonNull(name);
      Objects.requireNonNull(plan);
    }
  }

  /**
   * This plan it is, and if the last thing done was the same step of the same selection, both count
   * as one for undo.
   *
   * @param name what was done, in the user's words, for undo
   */
  record Amend(String name, Plan plan) implements Outcome {
    public Amend {
      Objects.requireNonNull(name);
      Objects.requireNonNull(plan);
    }
  }

  /** Back to the settled plan. */
  record Revert() implements Outcome {}

  /**
   * Could not be done; the settled plan stands.
   *
   * @param why in the user's words, with the cure
   */
  record Refuse(String why) implements Outcome {
    public Refuse {
      Objects.requireNonNull(why);
    }
  }
}
