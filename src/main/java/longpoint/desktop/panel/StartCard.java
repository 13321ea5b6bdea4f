package longpoint.desktop.panel;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GridBagLayout;
import java.awt.RenderingHints;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import longpoint.desktop.Samples;
import longpoint.desktop.Texts;
import longpoint.desktop.action.Task;
import longpoint.desktop.canvas.PlanCanvas;
import net.miginfocom.swing.MigLayout;

/**
 * What stands on an empty sheet: how to begin, the plans worked on lately, and sample plans to look
 * at. It goes as soon as anything is drawn.
 */
public final class StartCard extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int ARC = 16;
  private static final int ICON = 22;
  private static final int MOST_RECENT = 4;

  private static final int WORDS = 470;
  private static final int NARROW_WORDS = 300;

  /** How its lines stand, by the room there is. */
  public enum Lines {
    TWO_COLUMNS("wrap 2", WORDS),
    ONE_COLUMN("wrap 1", NARROW_WORDS);

    private final String wrap;
    private final int words;

    Lines(String wrap, int words) {
      this.wrap = wrap;
      this.words = words;
    }
  }

  /**
   * @param lines how they stand
   * @param begin tasks that begin a plan, the best first
   * @param sample opens a sample by its name
   * @param recent plans worked on lately
   * @param open opens one of them
   */
  public StartCard(
      Lines lines,
      List<Task> begin,
      Consumer<String> sample,
      List<Path> recent,
      Consumer<Path> open) {
    super(new MigLayout("insets 22 26 20 26, gap 14 3, fillx, " + lines.wrap));
    setOpaque(false);
    setName("start");
    getAccessibleContext().setAccessibleName(Texts.of("start.title"));
    add(new Words(Words.Rank.TITLE, Texts.of("start.title")), "spanx, gapbottom 2");
    add(
        new Paragraph(Words.Rank.QUIET, Texts.of("start.words"), lines.words),
        "spanx, gapbottom 10");
    for (Task task : begin) {
      JButton button = link("start." + task.id(), task.name().get() + keyOf(task), task::perform);
      button.setIcon(LineIcon.of(task.id(), ICON));
      button.setToolTipText(task.tip().get());
      add(button, "growx");
    }
    if (!recent.isEmpty()) {
      add(new Words(Words.Rank.QUIET, Texts.of("menu.recent")), "newline, spanx, gaptop 12");
      for (Path path : recent.subList(0, Math.min(MOST_RECENT, recent.size()))) {
        JButton button =
            link("start.recent", path.getFileName().toString(), () -> open.accept(path));
        button.setToolTipText(path.toString());
        add(button, "growx");
      }
    }
    add(new Words(Words.Rank.QUIET, Texts.of("start.samples")), "newline, spanx, gaptop 12");
    for (String name : Samples.NAMES) {
      add(link("start.sample." + name, Samples.words(name), () -> sample.accept(name)), "growx");
    }
    add(
        new Paragraph(Words.Rank.QUIET, Texts.of("start.caution"), lines.words),
        "newline, spanx, gaptop 12");
  }

  private static String keyOf(Task task) {
    return task.keyText().isEmpty() ? "" : "   " + task.keyText();
  }

  private static JButton link(String name, String words, Runnable work) {
    JButton button = new JButton(words);
    button.setName(name);
    button.setHorizontalAlignment(SwingConstants.LEADING);
    button.setIconTextGap(9);
    button.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    button.putClientProperty(
        FlatClientProperties.STYLE, "margin: 5,8,5,8; toolbar.hoverBackground: $Longpoint.hover");
    button.addActionListener(e -> work.run());
    return button;
  }

  /** Stands in the middle of the sheet. */
  public void on(PlanCanvas canvas) {
    canvas.setLayout(new GridBagLayout());
    canvas.add(this);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(UIManager.getColor("Longpoint.card"));
    g.fillRoundRect(0, 0, getWidth(), getHeight(), ARC, ARC);
    g.setColor(UIManager.getColor("Longpoint.rule"));
    g.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, ARC, ARC);
    g.dispose();
  }
}
