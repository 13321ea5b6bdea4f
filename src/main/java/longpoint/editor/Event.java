package longpoint.editor;

import java.util.Set;

/**
 * Something the user did. Pointer events speak of the main button only; the window keeps panning
 * and zooming to itself.
 */
public sealed interface Event {
  /** Something done with the pointer. */
  sealed interface Pointing extends Event {
    Pointer pointer();
  }

  /** The pointer moved with no button down. */
  record Moved(Pointer pointer) implements Pointing {}

  /** The button went down. */
  record Pressed(Pointer pointer) implements Pointing {}

  /** The pointer moved with the button down. */
  record Dragged(Pointer pointer) implements Pointing {}

  /** The button came up. */
  record Released(Pointer pointer) implements Pointing {}

  /** The second press of a double click came up; comes after its own pressed and released. */
  record DoubleClicked(Pointer pointer) implements Pointing {}

  /**
   * A key that means something by itself.
   *
   * @param held keys held down with it
   */
  record Pressing(Key key, Set<Modifier> held) implements Event {
    public Pressing {
      held = Set.copyOf(held);
    }

    public Pressing(Key key) {
      this(key, Set.of());
    }

    public boolean holds(Modifier modifier) {
      return held.contains(modifier);
    }
  }

  /** Typed figures, read and found good, confirmed with Enter. */
  record Typed(Entry entry) implements Event {}

  /** Keys that tools know. Escape is the runner's own and never reaches a tool. */
  enum Key {
    ENTER,
    ESCAPE,
    BACKSPACE,
    DELETE,
    UP,
    DOWN,
    LEFT,
    RIGHT,
    /** On to whatever else lies under the pointer. */
    TAB,
    /** On to the next thing there is. */
    NEXT,
    /** Back to the one before. */
    PREVIOUS
  }
}
