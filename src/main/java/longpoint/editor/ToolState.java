package longpoint.editor;

import java.util.Optional;
import java.util.Set;
import longpoint.geometry.Point;

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

  /** Whether something is under way that undo takes back before anything in the plan. */
  default boolean underWay() {
    return back().isPresent();
  }

  /** Whether it holds what would be tedious to draw again, and stands by itself. */
  default boolean keeps() {
    return false;
  }

  /** What to draw over the plan. */
  Overlay overlay(Scene scene);

  /** A sentence saying what the pointer will do next. */
  String status(Scene scene);

  /** What the pointer looks like. */
  default PointerShape shape(Scene scene) {
    return PointerShape.CROSS;
  }

  /**
   * The place that the pointer is held at, where keys may stand in for it: arrow keys move it,
   * Enter clicks. Empty where they may not.
   */
  default Optional<Point> keyed(Scene scene) {
    return Optional.empty();
  }

  /** The answer to being led back to by Escape: what is to be shown once more. */
  default Step again(Scene scene) {
    return Step.revert(this);
  }

  /** Figures that may be typed now. */
  Set<Entry.Kind> wants();

  /** Figures that may be typed now, where that hangs on what is picked. */
  default Set<Entry.Kind> wants(Scene scene) {
    return wants();
  }
}
