package longpoint.desktop.action;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;

/** A task as Swing's buttons and menus want it. */
public final class TaskAction extends AbstractAction {
  private static final long serialVersionUID = 1;
  private final transient Task task;

  public TaskAction(Task task) {
    this.task = task;
    task.key().ifPresent(k -> putValue(Action.ACCELERATOR_KEY, k));
    refresh();
  }

  /** Brings name, tip, switch and possibility up to date. */
  public void refresh() {
    putValue(Action.NAME, task.name().get());
    String keys = task.keyText();
    putValue(
        Action.SHORT_DESCRIPTION, task.tip().get() + (keys.isEmpty() ? "" : "  (" + keys + ")"));
    setEnabled(task.enabled().getAsBoolean());
    task.on().ifPresent(on -> putValue(Action.SELECTED_KEY, on.getAsBoolean()));
  }

  public Task task() {
    return task;
  }

  @Override
  public void actionPerformed(ActionEvent e) {
    task.perform();
  }
}
