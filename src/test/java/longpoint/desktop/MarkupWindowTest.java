package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JTextArea;
import longpoint.editor.Houses;
import longpoint.plan.Markup;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Notes and dimensions by mouse and keys in the real window. */
class MarkupWindowTest {
  @TempDir Path folder;
  private WindowDriver window;

  @BeforeEach
  void open() {
    window = new WindowDriver(Houses.house());
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private Markup markup() {
    return window.plan().markup();
  }

  @Test
  void everyLetterOfANoteIsPartOfIt() {
    Plan house = window.plan();
    // Letters and the space that pick up tools and move the sheet elsewhere.
    window.type("w").click(96, 96).click(96, 96).type("more ice shield");
    window.stroke(KeyEvent.VK_ENTER, InputEvent.SHIFT_DOWN_MASK).type("at valleys").enter();
    assertThat(markup().notes()).hasSize(1);
    assertThat(markup().notes().get(0).text()).isEqualTo("more ice shield\nat valleys");
    assertThat(window.plan().parts()).isEqualTo(house.parts());
    assertThat(window.design().plan()).isEqualTo(window.plan());
    assertThat(window.window().job().picture().drawing().marks())
        .anyMatch(
            m -> m instanceof longpoint.drawing.Mark.Text t && t.text().equals("more ice shield"));
  }

  @Test
  void aNoteIsRewordedInItsField() {
    window.type("w").click(96, 96).click(96, 96).type("hatch").enter();
    JTextArea area = window.find("note", JTextArea.class);
    WindowDriver.onEvents(
        () -> {
          area.setText("Attic hatch");
          area.dispatchEvent(
              new KeyEvent(
                  area,
                  KeyEvent.KEY_PRESSED,
                  1,
                  InputEvent.CTRL_DOWN_MASK,
                  KeyEvent.VK_ENTER,
                  '\n'));
          return null;
        });
    assertThat(markup().notes().get(0).text()).isEqualTo("Attic hatch");
  }

  @Test
  void aDimensionFollowsItsWallAndIsSavedWithThePlan() throws Exception {
    window.type("n").click(0, 0).click(480, 0).move(240, -60).click(240, -60);
    assertThat(markup().dimensions()).hasSize(1);
    window.type("s").escape().escape().click(480, 168).press(480, 168);
    window.dragTo(500, 168).dragTo(528, 168).release(528, 168);
    double length = markup().dimensions().get(0).line(window.plan()).orElseThrow().length();
    assertThat(length).isEqualTo(window.plan().parts().get(0).outline().bounds().width());
    assertThat(length).isGreaterThan(480);
    Path file = folder.resolve("dimensioned.json");
    window.dialogs().save = Optional.of(file);
    window.control(KeyEvent.VK_S);
    assertThat(PlanFile.read(file).plan()).isEqualTo(window.plan());
  }
}
