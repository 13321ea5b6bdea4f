package longpoint.desktop.solid;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.UIManager;
import longpoint.desktop.action.Task;
import longpoint.desktop.action.TaskAction;
import longpoint.desktop.panel.LineIcon;
import net.miginfocom.swing.MigLayout;

/** The house with a line of buttons over it: what is shown, and from where. */
public final class SolidPane extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int ICON = 20;

  private final JPanel strip = new JPanel(new MigLayout("insets 4 8 4 8, gapx 2, fillx"));
  private final transient List<TaskAction> actions = new ArrayList<>();

  public SolidPane(SolidView view) {
    super(new BorderLayout());
    add(strip, BorderLayout.NORTH);
    add(view, BorderLayout.CENTER);
    updateUI();
  }

  /**
   * Puts the buttons in.
   *
   * @param layers switches, on the left
   * @param views on the right
   */
  public void furnish(List<Task> layers, List<Task> views) {
    for (Task task : layers) {
      strip.add(dressed(new JToggleButton(action(task)), task));
    }
    for (Task task : views) {
      strip.add(
          dressed(new JButton(action(task)), task), task == views.get(0) ? "gapleft push" : "");
    }
  }

  private TaskAction action(Task task) {
    TaskAction action = new TaskAction(task);
    actions.add(action);
    return action;
  }

  private static AbstractButton dressed(AbstractButton button, Task task) {
    button.setName("solid." + task.id());
    button.setHideActionText(true);
    button.setIcon(LineIcon.of(task.id(), ICON));
    button.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    button.putClientProperty(
        FlatClientProperties.STYLE,
        "toolbar.selectedBackground: $Longpoint.chosen; toolbar.hoverBackground: $Longpoint.hover");
    button.getAccessibleContext().setAccessibleName(task.name().get());
    return button;
  }

  /** Brings the buttons up to date. */
  public void refresh() {
    actions.forEach(TaskAction::refresh);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (strip != null) {
      strip.setBorder(
          BorderFactory.createMatteBorder(0, 0, 1, 0, UIManager.getColor("Longpoint.rule")));
    }
  }
}
