package longpoint.desktop.panel;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.UIManager;
import longpoint.desktop.action.Catalogue;
import longpoint.desktop.action.Task;
import longpoint.desktop.action.TaskAction;
import net.miginfocom.swing.MigLayout;

/** The line over the sheet: the job's title, and the few things one reaches for all day. */
public final class Header extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int ICON = 20;

  private final Words title = new Words(Words.Rank.TITLE, "");
  private final Words saved = new Words(Words.Rank.QUIET, "");
  private final transient List<TaskAction> actions = new ArrayList<>();
  private final List<JButton> worded = new ArrayList<>();
  private int words;

  public Header(Catalogue catalogue) {
    super(new MigLayout("insets 7 14 7 12, fillx, gapx 6"));
    title.setName("header.title");
    saved.setName("header.saved");
    add(title, "wmin 40");
    add(saved, "gapleft 6, pushx, growx, wmin 0");
    for (String id :
        List.of(
            "edit.undo",
            "edit.redo",
            "view.fit",
            "beside.turn",
            "view.holds",
            "view.layers",
            "view.theme")) {
      add(button(catalogue.task(id), FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON));
    }
    JButton find = worded(catalogue.task("help.find"));
    add(find, "gapleft 10");
    worded.add(find);
    JButton packet = worded(catalogue.task("file.packet"));
    packet.putClientProperty(FlatClientProperties.STYLE, "background: $Longpoint.chosen");
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            fitWords();
          }
        });
    add(packet, "gapleft 4");
    worded.add(packet);
    updateUI();
  }

  private JButton worded(Task task) {
    JButton button = button(task, FlatClientProperties.BUTTON_TYPE_ROUND_RECT);
    button.setHideActionText(false);
    return button;
  }

  private JButton button(Task task, String type) {
    TaskAction action = new TaskAction(task);
    actions.add(action);
    JButton button = new JButton(action);
    button.setName("header." + task.id());
    button.setHideActionText(true);
    button.setIcon(LineIcon.of(task.id(), ICON));
    button.putClientProperty(FlatClientProperties.BUTTON_TYPE, type);
    button.getAccessibleContext().setAccessibleName(task.name().get());
    button.setFocusable(false);
    return button;
  }

  /** In a narrow window the words of buttons give way, not the buttons or the title. */
  private void fitWords() {
    int full = getPreferredSize().width + words;
    boolean tight = getWidth() < full;
    if (getWidth() == 0) {
      return;
    }
    if (tight && words == 0) {
      int before = getPreferredSize().width;
      worded.forEach(b -> b.setHideActionText(true));
      words = before - getPreferredSize().width;
    } else if (!tight && words > 0) {
      worded.forEach(b -> b.setHideActionText(false));
      words = 0;
    }
  }

  /**
   * Shows the title and whether there is something to save.
   *
   * @param state in words
   */
  public void show(String title, String state) {
    this.title.setText(title);
    this.saved.setText(state);
    actions.forEach(TaskAction::refresh);
    fitWords();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createMatteBorder(1, 0, 1, 0, UIManager.getColor("Longpoint.rule")));
  }
}
