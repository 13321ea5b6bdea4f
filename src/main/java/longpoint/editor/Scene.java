package longpoint.editor;

import java.util.Objects;
import longpoint.plan.Plan;

/**
 * All that a state may look at besides its own figures.
 *
 * @param plan the settled plan, never a preview
 */
public record Scene(Plan plan, Selection selection, Settings settings) {
  public Scene {
    Objects.requireNonNull(plan);
    Objects.requireNonNull(selection);
    Objects.requireNonNull(settings);
  }
}
