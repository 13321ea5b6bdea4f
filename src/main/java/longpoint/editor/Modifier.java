package longpoint.editor;

/** A key held down while pointing. */
public enum Modifier {
  /** Add to the selection; let go of square guidance while drawing. */
  SHIFT,
  /** Let go of every snap. */
  ALT,
  /** Copy instead of move, where that makes sense. */
  CONTROL
}
