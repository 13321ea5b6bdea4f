package longpoint.desktop.action;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import longpoint.desktop.Texts;
import longpoint.desktop.panel.Paragraph;
import longpoint.desktop.panel.Words;
import net.miginfocom.swing.MigLayout;

/** The page of keys: everything of the catalogue that has one, chapter by chapter. */
public final class KeysPage {
  private KeysPage() {}

  /** Opens the page over a window; it can stay open beside the work. */
  public static JDialog open(Window owner, Catalogue catalogue) {
    JDialog dialog = new JDialog(owner, Texts.of("task.help.keys"));
    dialog.setName("keys");
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    JPanel page =
        new JPanel(
            new MigLayout("insets 16 22 18 22, gap 26 4, wrap 4", "[right][grow][right][grow]"));
    catalogue
        .chapters()
        .forEach(
            (chapter, tasks) -> {
              List<Task> keyed = tasks.stream().filter(t -> !t.keyText().isEmpty()).toList();
              if (!keyed.isEmpty()) {
                page.add(new Words(Words.Rank.TITLE, Texts.of(chapter)), "span 4, gaptop 8, left");
                keyed.forEach(t -> row(page, t));
                if (keyed.size() % 2 == 1) {
                  page.add(new Words(Words.Rank.PLAIN, ""), "span 2");
                }
              }
            });
    page.add(new Words(Words.Rank.TITLE, Texts.of("keys.hand")), "span 4, gaptop 8, left");
    page.add(new Paragraph(Words.Rank.PLAIN, Texts.of("keys.hand.words"), 620), "span 4, left");
    JScrollPane scroll = new JScrollPane(page);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.getVerticalScrollBar().setUnitIncrement(24);
    dialog.add(scroll, BorderLayout.CENTER);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            e -> dialog.dispose(),
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    dialog.pack();
    Dimension size = dialog.getSize();
    dialog.setSize(size.width + 20, Math.min(size.height, Math.max(300, owner.getHeight() - 80)));
    dialog.setLocationRelativeTo(owner);
    dialog.setVisible(true);
    SwingUtilities.invokeLater(() -> scroll.getVerticalScrollBar().setValue(0));
    return dialog;
  }

  private static void row(JPanel page, Task task) {
    Words key = new Words(Words.Rank.PLAIN, task.keyText());
    key.setFont(key.getFont().deriveFont(java.awt.Font.BOLD));
    page.add(key);
    Words name = new Words(Words.Rank.PLAIN, task.name().get());
    name.setToolTipText(task.tip().get());
    page.add(name);
  }
}
