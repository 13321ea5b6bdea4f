package longpoint.editor;

import java.util.Objects;
import java.util.Optional;
import longpoint.plan.Plan;

/**
 * A state's answer to an event.
 *
 * @param next state that takes the next event
 * @param outcome for the plan
 * @param selection what is to be selected from now on; empty leaves it
 */
public record Step(ToolState next, Outcome outcome, Optional<Selection> selection) {
  public Step {
    Objects.requireNonNull(next);
    Objects.requireNonNull(outcome);
    Objects.requireNonNull(selection);
  }

  public static Step to(ToolState next) {
    return new Step(next, Outcome.NONE, Optional.empty());
  }

  public static Step preview(ToolState next, Plan plan) {
    return new Step(next, new Outcome.Preview(plan), Optional.empty());
  }

  public static Step commit(ToolState next, String name, Plan plan) {
    return new Step(next, new Outcome.Commit(name, plan), Optional.empty());
  }

  public static Step revert(ToolState next) {
    return new Step(next, Outcome.REVERT, Optional.empty());
  }

  public static Step refuse(ToolState next, String why) {
    return new Step(next, new Outcome.Refuse(why), Optional.empty());
  }

  /** The plan it shows or settles on; empty when it leaves the plan alone. */
  public Optional<Plan> plan() {
    if (outcome instanceof Outcome.Commit commit) {
      return Optional.of(commit.plan());
    }
    if (outcome instanceof Outcome.Amend amend) {
      return Optional.of(amend.plan());
    }
    return outcome instanceof Outcome.Preview preview
        ? Optional.of(preview.plan())
        : Optional.empty();
  }

  public Step selecting(Selection selection) {
    return new Step(next, outcome, Optional.of(selection));
  }
}
