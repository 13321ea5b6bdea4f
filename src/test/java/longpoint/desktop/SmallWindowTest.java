package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import longpoint.desktop.panel.Words;
import longpoint.editor.tools.Tools;
import longpoint.packet.Packet;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The window as small as on an old laptop, and large again. */
class SmallWindowTest {
  private static final Path SAMPLE = Path.of("sample-plans", "sable-lane-garden-wing.json");
  private WindowDriver window;

  @BeforeEach
  void open() throws Exception {
    window = new WindowDriver(PlanFile.read(SAMPLE).plan(), Packet::write);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private void size(int width, int height) {
    WindowDriver.onEvents(
        () -> {
          window.window().frame().setSize(width, height);
          window.window().frame().validate();
          return null;
        });
  }

  private boolean whole(String name) {
    return WindowDriver.onEvents(() -> isWhole(window.find(name, JComponent.class)));
  }

  private static boolean isWhole(JComponent c) {
    return c.isShowing()
        && c.getVisibleRect().equals(new Rectangle(0, 0, c.getWidth(), c.getHeight()));
  }

  @Test
  void everyToolAndButtonStaysInSight() {
    size(1100, 700);
    for (Tools tool : Tools.values()) {
      String name = "tool." + tool.name().toLowerCase(Locale.ROOT);
      WindowDriver.until(name + " is in sight", () -> isWhole(window.find(name, JComponent.class)));
    }
    for (String name : new String[] {"header.title", "header.help.find", "header.file.packet"}) {
      WindowDriver.until(name + " is in sight", () -> isWhole(window.find(name, JComponent.class)));
    }
    AbstractButton note = window.find("tool.note", AbstractButton.class);
    assertThat(WindowDriver.onEvents(note::getHeight)).isLessThan(40);
    size(1400, 900);
    WindowDriver.until("the tools are large again", () -> note.getHeight() > 40);
    AbstractButton packet = window.find("header.file.packet", AbstractButton.class);
    WindowDriver.until("words stand on buttons again", () -> !packet.getText().isEmpty());
    assertThat(whole("tool.note")).isTrue();
  }

  @Test
  void theSentenceRunsIntoNothing() {
    size(1100, 700);
    window.type("r").move(100, 100);
    Words sentence = window.find("status", Words.class);
    WindowDriver.until("the tool has spoken", () -> sentence.getText().contains("first corner"));
    for (String name : new String[] {"status.place", "status.state"}) {
      WindowDriver.until(
          name + " keeps clear",
          () -> box(sentence).intersection(box(window.find(name, Words.class))).isEmpty());
    }
    assertThat(
            WindowDriver.onEvents(
                () ->
                    sentence.getFontMetrics(sentence.getFont()).stringWidth(sentence.getText())
                        <= sentence.getWidth()))
        .isTrue();
  }

  private Rectangle box(Component c) {
    return SwingUtilities.convertRectangle(
        c.getParent(), c.getBounds(), window.window().frame().getContentPane());
  }
}
