package longpoint.drawing;

/** Which point of a line of lettering sits on its place. */
public enum Anchor {
  START,
  MIDDLE,
  END,
  /** Middle of the line both ways. */
  CENTRE
}
