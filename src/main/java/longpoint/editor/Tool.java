package longpoint.editor;

/** Something to pick from the tool bar. */
public interface Tool {
  /** The state in which the tool waits for its first event. */
  ToolState start();

  /** One or two words for a button. */
  String label();

  /** A sentence for a tool tip and the help page. */
  String hint();
}
