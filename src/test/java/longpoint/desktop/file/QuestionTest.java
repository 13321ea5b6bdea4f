package longpoint.desktop.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import longpoint.desktop.WindowDriver;
import longpoint.desktop.file.Question.Answer;
import org.junit.jupiter.api.Test;

class QuestionTest {
  /** Else it may open behind the window that waits for it. */
  @Test
  void aQuestionBelongsToTheWindowItStandsOver() {
    WindowDriver.needDisplay();
    JFrame frame =
        WindowDriver.onEvents(
            () -> {
              WindowDriver.dress();
              JFrame made = new JFrame();
              made.setBounds(40, 40, 700, 500);
              made.setVisible(true);
              return made;
            });
    AtomicReference<String> answer = new AtomicReference<>();
    SwingUtilities.invokeLater(
        () ->
            answer.set(
                Question.ask(
                    frame,
                    "Title",
                    "Words",
                    List.of(new Answer("yes", "Yes"), new Answer("no", "No")))));
    WindowDriver.until("it is asked", () -> asked(frame) != null);
    WindowDriver.onEvents(
        () -> {
          JDialog dialog = asked(frame);
          assertThat(dialog.isModal()).isTrue();
          assertThat(dialog.getRootPane().getDefaultButton().getText()).isEqualTo("Yes");
          assertThat(frame.getBounds().contains(dialog.getBounds())).isTrue();
          WindowDriver.find(dialog, "question.no", JButton.class).doClick(0);
          return null;
        });
    WindowDriver.until("it is answered", () -> answer.get() != null);
    assertThat(answer).hasValue("no");
    WindowDriver.onEvents(
        () -> {
          frame.dispose();
          return null;
        });
  }

  private static JDialog asked(JFrame frame) {
    for (Window window : frame.getOwnedWindows()) {
      if (window instanceof JDialog dialog && dialog.isShowing()) {
        return dialog;
      }
    }
    return null;
  }
}
