package longpoint.desktop.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JFrame;
import javax.swing.JPanel;
import longpoint.desktop.WindowDriver;
import net.miginfocom.swing.MigLayout;
import org.junit.jupiter.api.Test;

class ChoiceRowsTest {
  private static JPanel panel(int... widths) {
    JPanel panel = new JPanel(new ChoiceRows());
    for (int width : widths) {
      JPanel button = new JPanel();
      button.setPreferredSize(new Dimension(width, 20));
      panel.add(button);
    }
    return panel;
  }

  private static void laidOut(JPanel panel, int width, int high) {
    panel.setSize(width, 500);
    panel.doLayout();
    assertThat(panel.getPreferredSize().height).isEqualTo(high);
    for (Component one : panel.getComponents()) {
      assertThat(one.getWidth()).isGreaterThanOrEqualTo(one.getPreferredSize().width);
      assertThat(one.getX() + one.getWidth()).isLessThanOrEqualTo(width);
      for (Component other : panel.getComponents()) {
        assertThat(one != other && one.getBounds().intersects(other.getBounds())).isFalse();
      }
    }
  }

  /** Long words, as French has them, take a row each and never lie over one another. */
  @Test
  void buttonsStandInTwosWhereTheirWordsHaveRoom() {
    laidOut(panel(60, 80, 70), 200, 44);
    laidOut(panel(60, 124, 70), 200, 44);
    laidOut(panel(124, 80, 70, 140), 200, 68);
    laidOut(panel(60, 98), 200, 20);
    laidOut(panel(110, 99), 200, 44);
  }

  /** The form asks for their room before it knows how wide it is. */
  @Test
  void aFormGivesThemTheRoomTheyTurnOutToNeed() {
    WindowDriver.needDisplay();
    JPanel buttons = panel(140, 124, 140, 150);
    JFrame frame =
        WindowDriver.onEvents(
            () -> {
              JPanel form = new JPanel(new MigLayout("fillx, wrap 2", "[right,100::][grow,fill]"));
              form.add(new JPanel());
              form.add(buttons, "wmin 0");
              JFrame made = new JFrame();
              made.add(form);
              made.setBounds(0, 0, 320, 400);
              made.setVisible(true);
              return made;
            });
    WindowDriver.until(
        "all stand inside",
        () ->
            buttons.getWidth() > 0
                && buttons.getComponent(3).getY() + 20 <= buttons.getHeight()
                && buttons.getComponent(3).getY() == 3 * 24);
    WindowDriver.onEvents(
        () -> {
          frame.dispose();
          return null;
        });
  }
}
