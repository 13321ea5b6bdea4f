package longpoint.desktop.view;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.Icon;
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
  private final transient Map<AbstractButton, Icon> worded = new LinkedHashMap<>();
  private final transient List<TaskAction> actions = new ArrayList<>();

  /**
   * @param name what the names of its buttons begin with, before the ids of their tasks
   */
  public Strip(String name) {
    super(new MigLayout("insets 4 8 4 8, gapx 2, hidemode 3"));
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
    button.setIconTextGap(4);
    add(button, constraints);
    worded.put(button, button.getIcon());
    return button;
  }

  /** Names and pictures where both have room, names alone where they have, else pictures. */
  private void giveWay() {
    dress(Dress.BOTH);
    if (getWidth() < getPreferredSize().width) {
      dress(Dress.NAME);
    }
    if (getWidth() < getPreferredSize().width) {
      dress(Dress.PICTURE);
    }
    revalidate();
  }

  private enum Dress {
    BOTH,
    NAME,
    PICTURE
  }

  private void dress(Dress dress) {
    worded.forEach(
        (button, icon) -> {
          button.setHideActionText(dress == Dress.PICTURE);
          button.setIcon(dress == Dress.NAME ? null : icon);
        });
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
        "margin: 4,4,4,4; toolbar.selectedBackground: $Longpoint.chosen; toolbar.hoverBackground: $Longpoint.hover");
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
