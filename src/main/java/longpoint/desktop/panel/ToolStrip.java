package longpoint.desktop.panel;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import longpoint.desktop.Texts;
import longpoint.desktop.action.Task;
import longpoint.desktop.action.TaskAction;
import net.miginfocom.swing.MigLayout;

/** The tools down the left edge: a picture, a name and a letter each. */
public final class ToolStrip extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int ICON = 26;

  private final transient List<TaskAction> actions = new ArrayList<>();
  private final List<JToggleButton> buttons = new ArrayList<>();

  public ToolStrip(List<Task> tools) {
    super(new BorderLayout());
    getAccessibleContext().setAccessibleName(Texts.of("panel.tools"));
    JPanel column =
        new JPanel(new MigLayout("insets 8 8 8 8, gap 0 3, wrap 1", "[grow,fill,88::]"));
    column.setOpaque(false);
    ButtonGroup group = new ButtonGroup();
    for (Task tool : tools) {
      JToggleButton button = button(tool);
      group.add(button);
      column.add(button);
    }
    add(column, BorderLayout.NORTH);
    updateUI();
  }

  private JToggleButton button(Task tool) {
    TaskAction action = new TaskAction(tool);
    JToggleButton button = new JToggleButton(action);
    button.setName(tool.id());
    button.setIcon(LineIcon.of(tool.id(), ICON));
    button.setHorizontalTextPosition(SwingConstants.CENTER);
    button.setVerticalTextPosition(SwingConstants.BOTTOM);
    button.setIconTextGap(3);
    button.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    button.putClientProperty(
        FlatClientProperties.STYLE,
        "margin: 6,4,5,4; font: -1; toolbar.selectedBackground: $Longpoint.chosen;"
            + " toolbar.hoverBackground: $Longpoint.hover");
    button.setFocusable(false);
    actions.add(action);
    buttons.add(button);
    return button;
  }

  /** Shows which tool is in hand. */
  public void refresh() {
    actions.forEach(TaskAction::refresh);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createMatteBorder(0, 0, 0, 1, UIManager.getColor("Longpoint.rule")));
  }
}
