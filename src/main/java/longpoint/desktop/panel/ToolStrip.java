package longpoint.desktop.panel;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import longpoint.desktop.Texts;
import longpoint.desktop.action.Task;
import longpoint.desktop.action.TaskAction;
import longpoint.editor.tools.Tools;
import net.miginfocom.swing.MigLayout;

/** The tools down the left edge: a picture, a name and a letter each. */
public final class ToolStrip extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int ICON = 26;
  private static final int LOW_ICON = 18;

  /** Width of a button, at least. */
  private static final int LEAST = 88;

  private final transient List<TaskAction> actions = new ArrayList<>();
  private final List<JToggleButton> buttons = new ArrayList<>();
  private boolean low;
  private int comfortable;

  public ToolStrip(List<Task> tools) {
    super(new BorderLayout());
    getAccessibleContext().setAccessibleName(Texts.of("panel.tools"));
    JPanel column = new JPanel(new MigLayout("insets 8 8 8 8, gap 0 3, wrap 1", "[grow,fill]"));
    column.setOpaque(false);
    ButtonGroup group = new ButtonGroup();
    for (Task tool : tools) {
      JToggleButton button = button(tool);
      group.add(button);
      column.add(button);
    }
    JScrollPane scroll =
        new JScrollPane(
            column,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setOpaque(false);
    scroll.getViewport().setOpaque(false);
    scroll.getVerticalScrollBar().setUnitIncrement(24);
    add(scroll, BorderLayout.CENTER);
    updateUI();
  }

  /** In a low window pictures and names are smaller, so that all tools stay in sight. */
  @Override
  public void doLayout() {
    if (!low) {
      comfortable = getPreferredSize().height;
    }
    if (low != getHeight() < comfortable) {
      low = !low;
      buttons.forEach(b -> dress(b, low ? Shape.LOW : Shape.HIGH));
      invalidate();
      getParent().revalidate();
    }
    super.doLayout();
  }

  private enum Shape {
    HIGH(ICON, 3, 1),
    LOW(LOW_ICON, 0, 3);

    private final int icon;
    private final int room;
    private final int smaller;

    /**
     * @param room above, below and between picture and name, pixels
     * @param smaller by how many points the name is smaller than ordinary lettering
     */
    Shape(int icon, int room, int smaller) {
      this.icon = icon;
      this.room = room;
      this.smaller = smaller;
    }
  }

  private static void dress(JToggleButton button, Shape shape) {
    button.setIcon(LineIcon.of(button.getName(), shape.icon));
    button.setIconTextGap(shape.room);
    button.putClientProperty(
        FlatClientProperties.STYLE,
        String.format(
            Locale.ROOT,
            "toolbar.margin: %1$d,3,%1$d,3; font: -%2$d;"
                + " toolbar.selectedBackground: $Longpoint.chosen;"
                + " toolbar.hoverBackground: $Longpoint.hover",
            shape.room,
            shape.smaller));
  }

  private JToggleButton button(Task tool) {
    TaskAction action = new TaskAction(tool);
    JToggleButton button = new ToolButton(action);
    button.setName(tool.id());
    button.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    button.setHorizontalTextPosition(SwingConstants.CENTER);
    button.setVerticalTextPosition(SwingConstants.BOTTOM);
    dress(button, Shape.HIGH);
    button.setFocusable(false);
    actions.add(action);
    buttons.add(button);
    return button;
  }

  /** A tool's button, with its letter in the corner. */
  private static final class ToolButton extends JToggleButton {
    private static final long serialVersionUID = 1;
    private final String letter;

    ToolButton(TaskAction action) {
      super(action);
      letter = action.task().keyText();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      super.paintComponent(graphics);
      Graphics2D g = (Graphics2D) graphics.create();
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      g.setFont(getFont().deriveFont(getFont().getSize2D() - 2));
      g.setColor(UIManager.getColor("Longpoint.quiet"));
      int base = Math.min(17, (getHeight() + g.getFontMetrics().getAscent()) / 2 - 1);
      g.drawString(letter, getWidth() - g.getFontMetrics().stringWidth(letter) - 8, base);
      g.dispose();
    }
  }

  /**
   * How wide it is with the names of all tools in it.
   *
   * @param on what it stands on
   */
  public static int width(JComponent on) {
    Font font = UIManager.getFont("defaultFont");
    FontMetrics metrics = on.getFontMetrics(font.deriveFont(font.getSize2D() - 1));
    int name = 0;
    for (Tools tool : Tools.values()) {
      name = Math.max(name, metrics.stringWidth(tool.label()));
    }
    return Math.max(UIScale.scale(LEAST), name + UIScale.scale(10)) + UIScale.scale(16) + 1;
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
