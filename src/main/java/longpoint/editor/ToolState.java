package longpoint.editor;

import java.util.Optional;
import java.util.Set;

/**
 * One moment of a tool, named for the gesture. States are records: they change nothing, they answer
 * with the next state, and two states with the same figures are the same. Every state takes every
 * event; one that means nothing leaves things as they are.
 */
public interface ToolState {
  /** The answer to an event. A preview is made from the scene's plan and this gesture alone. */
  Step on(Event event, Scene scene);

  /** Where Escape leads: one step back, or empty when the tool has nothing more to take back. */
  Optional<ToolState> back();

  /** What to draw over the plan. */
  Overlay overlay(Scene scene);

  /** A sentence saying what the pointer will do next. */
  String status(Scene scene);

  /** Figures that may be typed now. */
  Set<Entry.Kind> wants();
}
