package longpoint.desktop.panel;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.ActionListener;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.UIManager;
import longpoint.desktop.Texts;
import net.miginfocom.swing.MigLayout;

/**
 * Says what the pointer will do, where it is, and whether the roof is worked out; while something
 * takes its time, what that is, with a button that calls it off.
 */
public final class StatusLine extends JPanel {
  private static final long serialVersionUID = 1;
  private final Words sentence = new Words(Words.Rank.PLAIN, " ");
  private final Words place = new Words(Words.Rank.QUIET, "");
  private static final int PAD = 6;
  private static final int GAP = 24;

  /** Points by which a sentence that has no room may be smaller. */
  private static final float SMALLER = 3;

  private final Words state = new Words(Words.Rank.QUIET, "");
  private final Words work = new Words(Words.Rank.PLAIN, "");
  private final JProgressBar bar = new JProgressBar();
  private final JButton off = new JButton(Texts.of("state.callOff"));

  public StatusLine() {
    super(
        new MigLayout(
            "insets 6 14 6 14, fillx, gapx 24, hidemode 3",
            "[grow,0:0:][right,180::][right][][90!][]",
            "[grow]"));
    sentence.setName("status");
    place.setName("status.place");
    state.setName("status.state");
    work.setName("status.work");
    off.setName("status.callOff");
    bar.setName("status.bar");
    bar.setIndeterminate(true);
    bar.getAccessibleContext().setAccessibleName(Texts.of("state.progress"));
    sentence.getAccessibleContext().setAccessibleName(Texts.of("panel.status"));
    add(sentence, "growx");
    add(place);
    add(state);
    add(work, "wmax 340");
    add(bar);
    add(off);
    rest();
    updateUI();
  }

  public void say(String words) {
    String text = words.isEmpty() ? " " : words;
    if (!text.equals(sentence.getText())) {
      sentence.setText(text);
      revalidate();
      sentence.setToolTipText(text);
      sentence.getAccessibleContext().setAccessibleDescription(text);
    }
  }

  public void place(String words) {
    place.setText(words);
  }

  public void state(String words) {
    if (!words.equals(state.getText())) {
      state.setText(words);
    }
  }

  /**
   * Shows that something takes its time.
   *
   * @param words what it is
   * @param done how much of it, at most {@code of}
   * @param of how much there is; 0 if nobody can say
   * @param callOff what the button does
   */
  public void work(String words, int done, int of, Runnable callOff) {
    for (ActionListener old : off.getActionListeners()) {
      off.removeActionListener(old);
    }
    off.addActionListener(e -> callOff.run());
    work.setText(words);
    bar.setIndeterminate(of == 0);
    bar.setMaximum(Math.max(1, of));
    bar.setValue(done);
    setWorking(true);
  }

  /** Nothing takes its time any more. */
  public void rest() {
    setWorking(false);
  }

  private void setWorking(boolean working) {
    work.setVisible(working);
    bar.setVisible(working);
    off.setVisible(working);
    state.setVisible(!working);
    place.setVisible(!working);
  }

  /**
   * How high it is, at rest as at work: the sheet above is not to jump when a button comes and
   * goes.
   *
   * @param letters height of a line of ordinary lettering, in pixels
   */
  public static int height(int letters) {
    return letters + 2 * (UIScale.scale(4) + UIScale.scale(2)) + 2 * UIScale.scale(PAD) + 1;
  }

  /**
   * The sentence comes first: where it has no room, the place and then the state give way, and at
   * last its lettering becomes smaller.
   */
  @Override
  public void doLayout() {
    super.doLayout();
    if (off.isVisible()) {
      return;
    }
    int left = sentence.getX();
    int right = getWidth() - left;
    int wanted = sentence.getFontMetrics(Words.Rank.PLAIN.font()).stringWidth(sentence.getText());
    for (Words besides : new Words[] {state, place}) {
      int wide = besides.getPreferredSize().width;
      boolean fits = wide > 0 && left + wanted + GAP + wide <= right;
      besides.setBounds(
          fits ? right - wide : right, besides.getY(), fits ? wide : 0, besides.getHeight());
      right -= fits ? wide + GAP : 0;
    }
    float size = Words.Rank.PLAIN.font().getSize2D();
    float fitting = size * Math.min(1, (float) (right - left) / Math.max(1, wanted));
    sentence.setFont(Words.Rank.PLAIN.font().deriveFont(Math.max(size - SMALLER, fitting)));
    sentence.setBounds(left, sentence.getY(), Math.max(0, right - left), sentence.getHeight());
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createMatteBorder(1, 0, 0, 0, UIManager.getColor("Longpoint.rule")));
  }
}
