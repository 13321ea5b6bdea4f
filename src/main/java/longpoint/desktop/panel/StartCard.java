package longpoint.desktop.panel;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.RenderingHints;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import longpoint.desktop.Samples;
import longpoint.desktop.Texts;
import longpoint.desktop.action.Task;
import longpoint.desktop.canvas.PlanCanvas;

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

  private final Lines lines;
  private int row = -1;
  private int column;
  private int gap;
  private int above;

  /** How its lines stand, by the room there is. */
  public enum Lines {
    TWO_COLUMNS(2, WORDS),
    ONE_COLUMN(1, NARROW_WORDS);

    private final int columns;
    private final int words;

    Lines(int columns, int words) {
      this.columns = columns;
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
    // The plain layout of the JDK: this card stands in the first window, and is to be there soon.
    super(new GridBagLayout());
    this.lines = lines;
    setOpaque(false);
    setBorder(
        BorderFactory.createEmptyBorder(
            UIScale.scale(22), UIScale.scale(26), UIScale.scale(20), UIScale.scale(26)));
    setName("start");
    getAccessibleContext().setAccessibleName(Texts.of("start.title"));
    across(new Words(Words.Rank.TITLE, Texts.of("start.title")), 0);
    across(new Paragraph(Words.Rank.QUIET, Texts.of("start.words"), lines.words), 2);
    gap(10);
    for (Task task : begin) {
      JButton button = link("start." + task.id(), task.name().get() + keyOf(task), task::perform);
      button.setIcon(LineIcon.of(task.id(), ICON));
      button.setToolTipText(task.tip().get());
      cell(button);
    }
    if (!recent.isEmpty()) {
      across(new Words(Words.Rank.QUIET, Texts.of("menu.recent")), 12);
      for (Path path : recent.subList(0, Math.min(MOST_RECENT, recent.size()))) {
        JButton button =
            link("start.recent", path.getFileName().toString(), () -> open.accept(path));
        button.setToolTipText(path.toString());
        cell(button);
      }
    }
    across(new Words(Words.Rank.QUIET, Texts.of("start.samples")), 12);
    for (String name : Samples.NAMES) {
      cell(link("start.sample." + name, Samples.words(name), () -> sample.accept(name)));
    }
    across(new Paragraph(Words.Rank.QUIET, Texts.of("start.caution"), lines.words), 12);
  }

  /** A line of its own, so far below the one before. */
  private void across(JComponent line, int below) {
    gap(below);
    add(line, at(GridBagConstraints.REMAINDER));
    column = 0;
  }

  private void gap(int below) {
    gap += below;
  }

  /** The next place in a row of cells. */
  private void cell(JComponent cell) {
    GridBagConstraints at = at(1);
    at.fill = GridBagConstraints.HORIZONTAL;
    at.insets.left = column == 0 ? 0 : UIScale.scale(14);
    add(cell, at);
    column = (column + 1) % lines.columns;
  }

  /** Where the next component goes: a new row, unless the last has another column. */
  private GridBagConstraints at(int width) {
    boolean beside = width == 1 && column > 0;
    row = beside ? row : row + 1;
    above = beside ? above : UIScale.scale(row == 0 ? 0 : 3 + gap);
    gap = 0;
    GridBagConstraints at = new GridBagConstraints();
    at.gridx = width == 1 ? column : 0;
    at.gridy = row;
    at.gridwidth = width;
    at.anchor = GridBagConstraints.LINE_START;
    at.insets.top = above;
    return at;
  }

  /** How its lines stand. */
  public Lines lines() {
    return lines;
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

  /** Smooths nothing but the corners: to smooth all of the card takes longer than the rest. */
  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    round(g, UIManager.getColor("Longpoint.rule"), 0);
    round(g, UIManager.getColor("Longpoint.card"), 1);
    g.dispose();
  }

  private void round(Graphics2D g, Color colour, int inset) {
    int w = getWidth() - 2 * inset;
    int h = getHeight() - 2 * inset;
    int corner = ARC / 2;
    g.setColor(colour);
    g.fillRect(inset + corner, inset, w - 2 * corner, h);
    g.fillRect(inset, inset + corner, w, h - 2 * corner);
    for (int x : new int[] {inset, inset + w - corner}) {
      for (int y : new int[] {inset, inset + h - corner}) {
        Graphics2D c = (Graphics2D) g.create();
        c.clipRect(x, y, corner, corner);
        c.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        c.fillRoundRect(inset, inset, w, h, ARC - 2 * inset, ARC - 2 * inset);
        c.dispose();
      }
    }
  }
}
