package longpoint.editor;

/** What the pointer looks like, so that it says by itself what a press would do. */
public enum PointerShape {
  /** Nothing to take hold of. */
  ARROW,
  /** A point is wanted. */
  CROSS,
  /** Something to click. */
  HAND,
  /** Something to move any way. */
  MOVE,
  /** Something to move left and right. */
  ACROSS,
  /** Something to move up and down. */
  UP,
  /** Something to move toward upper right and lower left. */
  RISING,
  /** Something to move toward upper left and lower right. */
  FALLING,
  /** Words are wanted. */
  WORDS
}
