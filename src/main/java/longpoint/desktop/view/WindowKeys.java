package longpoint.desktop.view;

import java.util.List;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import longpoint.desktop.action.Task;

/** Leaves to the window the keys that tables, lists and their scroll panes take for themselves. */
final class WindowKeys {
  private static final String NONE = "none";
  private static final List<String> OF_VIEWS = List.of("F6", "F8");

  private WindowKeys() {}

  /**
   * Lets go of the keys of the views and of these tasks.
   *
   * @param inside a component in its scroll pane
   */
  static void leave(JComponent inside, List<Task> tasks) {
    JComponent around = (JComponent) SwingUtilities.getAncestorOfClass(JScrollPane.class, inside);
    // A pane with keys of its own for when it is focused would become a stop of the Tab key.
    leave(around.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT), tasks);
    leave(inside.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT), tasks);
    leave(inside.getInputMap(JComponent.WHEN_FOCUSED), tasks);
  }

  private static void leave(InputMap keys, List<Task> tasks) {
    OF_VIEWS.forEach(key -> keys.put(KeyStroke.getKeyStroke(key), NONE));
    tasks.forEach(task -> task.key().ifPresent(key -> keys.put(key, NONE)));
  }
}
