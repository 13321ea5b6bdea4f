package longpoint.desktop.file;

import java.awt.Component;
import java.awt.Dialog;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import longpoint.desktop.panel.Paragraph;
import longpoint.desktop.panel.Words;
import net.miginfocom.swing.MigLayout;

/**
 * A question with a button for each answer. The first answer is the one Enter gives, the last the
 * one Escape and the window's close button give.
 */
final class Question {
  /**
   * One answer.
   *
   * @param id returned when it is chosen; its button is named {@code question.<id>}
   */
  record Answer(String id, String label) {}

  private static final int WIDTH = 440;

  private Question() {}

  /** Asks, and waits for the answer. */
  static String ask(Component over, String title, String words, List<Answer> answers) {
    return ask(over, title, words, Optional.empty(), answers);
  }

  /**
   * Asks, and waits for the answer.
   *
   * @param shown between the words and the answers
   */
  static String ask(
      Component over,
      String title,
      String words,
      Optional<JComponent> shown,
      List<Answer> answers) {
    Window owner =
        over instanceof Window w ? w : over == null ? null : SwingUtilities.getWindowAncestor(over);
    JDialog dialog = new JDialog(owner, title, Dialog.ModalityType.APPLICATION_MODAL);
    dialog.setName("question");
    String[] chosen = {answers.get(answers.size() - 1).id()};
    JPanel pane = new JPanel(new MigLayout("insets 20 22 18 22, gapy 8, wrap 1", "[grow,fill]"));
    pane.add(new Words(Words.Rank.TITLE, title));
    Paragraph text = new Paragraph(Words.Rank.PLAIN, words, WIDTH);
    text.setName("question.words");
    pane.add(text, "gapbottom 12");
    shown.ifPresent(s -> pane.add(s, "gapbottom 12"));
    JPanel buttons = new JPanel(new MigLayout("insets 0, gapx 8", "push[]"));
    for (int i = answers.size() - 1; i >= 0; i--) {
      Answer answer = answers.get(i);
      JButton button = new JButton(answer.label());
      button.setName("question." + answer.id());
      button.addActionListener(
          e -> {
            chosen[0] = answer.id();
            dialog.dispose();
          });
      buttons.add(button);
      if (i == 0) {
        dialog.getRootPane().setDefaultButton(button);
        dialog.addWindowListener(
            new WindowAdapter() {
              @Override
              public void windowOpened(WindowEvent e) {
                button.requestFocusInWindow();
              }
            });
      }
    }
    pane.add(buttons);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            e -> dialog.dispose(),
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    dialog.setContentPane(pane);
    dialog.pack();
    dialog.setResizable(false);
    dialog.setLocationRelativeTo(owner);
    dialog.setVisible(true);
    return chosen[0];
  }
}
