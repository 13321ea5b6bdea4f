package longpoint.editor;

import java.util.List;
import java.util.Optional;
import longpoint.plan.Plan;

/** What Enter would do with the figures typed so far. */
final class Foresight {
  private Optional<Step> step = Optional.empty();

  void forget() {
    step = Optional.empty();
  }

  /** Works it out; nothing where figures cannot be read or would be refused. */
  void work(Optional<Entry> figures, ToolState state, Scene scene) {
    step =
        figures
            .map(f -> state.on(new Event.Typed(f), scene))
            .filter(s -> !(s.outcome() instanceof Outcome.Refuse));
  }

  boolean isPresent() {
    return step.isPresent();
  }

  Optional<Plan> plan() {
    return step.flatMap(Step::plan);
  }

  /**
   * What to draw over it. Where figures would finish the gesture, its lines stay beside what they
   * make, but not what the figures overrule: lengths to the pointer, and handles of what was there
   * before.
   */
  Overlay overlay(ToolState state, Scene scene) {
    boolean finishes = step.filter(s -> s.outcome() instanceof Outcome.Commit).isPresent();
    return finishes
        ? state.overlay(scene).withDimensions(List.of()).withHandles(List.of())
        : step.map(Step::next).orElse(state).overlay(scene);
  }
}
