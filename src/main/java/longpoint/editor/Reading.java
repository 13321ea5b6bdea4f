package longpoint.editor;

/** What became of typed text. */
public sealed interface Reading {
  /** Text that could be read. */
  record Good(Entry entry) implements Reading {}

  /**
   * Text that could not.
   *
   * @param why a sentence or two for the user, with the cure
   */
  record Bad(String why) implements Reading {}
}
