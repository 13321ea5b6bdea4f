package longpoint.desktop.view;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
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

/** A line of small buttons made from tasks, with a rule below it. */
public final class Strip extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int ICON = 20;

  private final String name;
  private final List<AbstractButton> worded = new ArrayList<>();
  private final transient List<TaskAction> actions = new ArrayList<>();

  /**
   * @param name what the names of its buttons begin with, before the ids of their tasks
   */
  public Strip(String name) {
    super(new MigLayout("insets 4 8 4 8, gapx 2, fillx, hidemode 3"));
    this.name = name;
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            giveWay();
          }
        });
    updateUI();
  }

  /** Adds a picture for a task; a switch stays down while it is on. */
  public AbstractButton picture(Task task, String constraints) {
    AbstractButton button = button(task);
    button.setHideActionText(true);
    add(button, constraints);
    return button;
  }

  /** Adds a picture and the task's name, which gives way where the strip is narrow. */
  public AbstractButton worded(Task task, String constraints) {
    AbstractButton button = button(task);
    button.setIconTextGap(6);
    add(button, constraints);
    worded.add(button);
    return button;
  }

  /** Names stand beside the pictures when all of them have room. */
  private void giveWay() {
    worded.forEach(b -> b.setHideActionText(false));
    boolean narrow = getWidth() < getPreferredSize().width;
    worded.forEach(b -> b.setHideActionText(narrow));
    revalidate();
  }

  private AbstractButton button(Task task) {
    TaskAction action = new TaskAction(task);
    actions.add(action);
    AbstractButton button = task.on().isPresent() ? new JToggleButton(action) : new JButton(action);
    button.setName(name + "." + task.id());
    button.setIcon(LineIcon.of(task.id(), ICON));
    button.setFocusable(false);
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
    setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, UIManager.getColor("Longpoint.rule")));
  }
}
