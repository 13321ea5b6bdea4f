package longpoint.desktop.panel;

import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.UIManager;
import longpoint.desktop.Texts;
import net.miginfocom.swing.MigLayout;

/** Says what the pointer will do, where it is, and whether the roof is worked out. */
public final class StatusLine extends JPanel {
  private static final long serialVersionUID = 1;
  private final Words sentence = new Words(Words.Rank.PLAIN, " ");
  private final Words place = new Words(Words.Rank.QUIET, "");
  private final Words state = new Words(Words.Rank.QUIET, "");

  public StatusLine() {
    super(new MigLayout("insets 6 14 6 14, fillx, gapx 24", "[grow,0:0:][right,180::][right]"));
    sentence.setName("status");
    place.setName("status.place");
    state.setName("status.state");
    sentence.getAccessibleContext().setAccessibleName(Texts.of("panel.status"));
    add(sentence, "growx");
    add(place);
    add(state);
    updateUI();
  }

  public void say(String words) {
    String text = words.isEmpty() ? " " : words;
    if (!text.equals(sentence.getText())) {
      sentence.setText(text);
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

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createMatteBorder(1, 0, 0, 0, UIManager.getColor("Longpoint.rule")));
  }
}
