package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Cursor;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractButton;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.MenuSelectionManager;
import javax.swing.text.JTextComponent;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.desktop.panel.Words;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.geometry.Point;
import longpoint.packet.Packet;
import longpoint.plan.EdgeKind;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Keys, the second button, double clicks and pointer shapes in the real window. */
class SketchKeysTest {
  private WindowDriver window;

  @BeforeEach
  void open() {
    window = new WindowDriver(Plan.empty(LengthUnit.INCH), Packet::write);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private PlanCanvas canvas() {
    return window.window().canvas();
  }

  private Selection selection() {
    return WindowDriver.onEvents(() -> window.window().job().document().selection());
  }

  private WindowDriver house() {
    return window.type("r").click(0, 0).move(60, 60).type("40' x 28'").enter().type("s").escape();
  }

  /** A house with a wing, the mouse never touched. */
  @Test
  void aHouseWithAWingIsDrawnByKeysAlone() {
    window.type("o").enter();
    for (String side : new String[] {"RIGHT 40'", "UP 28'", "LEFT 40'"}) {
      String[] words = side.split(" ");
      window.stroke(
          switch (words[0]) {
            case "RIGHT" -> KeyEvent.VK_RIGHT;
            case "UP" -> KeyEvent.VK_UP;
            default -> KeyEvent.VK_LEFT;
          },
          0);
      window.type(words[1]).enter();
    }
    window.enter().type("s");
    window.stroke(KeyEvent.VK_PAGE_DOWN, 0).enter();
    assertThat(selection().refs()).containsExactly(Ref.side("main", 0));
    window.type("a").type("12' x 8'").enter();
    Plan plan = window.plan();
    assertThat(plan.parts()).hasSize(2);
    assertThat(plan.parts().get(0).region().area()).isEqualTo(480.0 * 336);
    assertThat(plan.parts().get(1).outline().bounds().minX()).isEqualTo(168);
    assertThat(plan.joins()).hasSize(1);
  }

  @Test
  void whatKeysDrawOutOfSightIsBroughtIntoSight() {
    window.type("o").enter().stroke(KeyEvent.VK_RIGHT, 0).type("300'").enter();
    assertThat(WindowDriver.onEvents(() -> canvas().seen().contains(new Point(3600, 0)))).isTrue();
    assertThat(WindowDriver.onEvents(() -> canvas().seen().contains(new Point(0, 0)))).isTrue();
  }

  @Test
  void controlZTakesTheLastCornerBackAndTheMenuSaysSo() {
    window.type("o").click(0, 0).click(120, 0).click(120, 120);
    JMenuItem undo =
        WindowDriver.find(
            window.window().frame().getJMenuBar().getMenu(1).getPopupMenu(),
            "menu.edit.undo",
            JMenuItem.class);
    window.control(KeyEvent.VK_Z).click(60, 120).enter();
    assertThat(window.plan().parts().get(0).outline().size()).isEqualTo(3);
    assertThat(window.plan().parts().get(0).outline().corner(2)).isEqualTo(new Point(60, 120));
    window.click(300, 0);
    WindowDriver.until("the menu follows", () -> undo.getText().contains("last step"));
  }

  @Test
  void controlYDoesAgainAndControlDDuplicates() {
    house().click(240, 60).control(KeyEvent.VK_D);
    assertThat(window.plan().parts()).hasSize(2);
    assertThat(selection().parts()).containsExactly(window.plan().parts().get(1).id());
    Plan two = window.plan();
    Point far = two.parts().get(1).outline().corner(2);
    assertThat(WindowDriver.onEvents(() -> canvas().seen().contains(far))).isTrue();
    window.control(KeyEvent.VK_Z);
    assertThat(window.plan().parts()).hasSize(1);
    window.control(KeyEvent.VK_Y);
    assertThat(window.plan()).isSameAs(two);
  }

  @Test
  void thePointerShowsWhatAPressWouldDo() {
    house().move(240, 60);
    cursor(Cursor.HAND_CURSOR);
    window.move(240, 0);
    cursor(Cursor.N_RESIZE_CURSOR);
    window.move(480, 60);
    cursor(Cursor.E_RESIZE_CURSOR);
    window.move(-90, 60);
    cursor(Cursor.DEFAULT_CURSOR);
    window.type("r");
    cursor(Cursor.CROSSHAIR_CURSOR);
  }

  private void cursor(int type) {
    assertThat(WindowDriver.onEvents(() -> canvas().getCursor().getType())).isEqualTo(type);
  }

  @Test
  void arrowsMoveTheSheetOnlyWhileNothingIsPicked() {
    house();
    Plan before = window.plan();
    double x = WindowDriver.onEvents(() -> canvas().view().originX());
    window.escape().stroke(KeyEvent.VK_RIGHT, 0);
    assertThat(WindowDriver.onEvents(() -> canvas().view().originX())).isLessThan(x);
    assertThat(window.plan()).isSameAs(before);
    double moved = WindowDriver.onEvents(() -> canvas().view().originX());
    window.click(240, 60).stroke(KeyEvent.VK_RIGHT, InputEvent.ALT_DOWN_MASK);
    assertThat(WindowDriver.onEvents(() -> canvas().view().originX())).isEqualTo(moved);
    assertThat(window.plan().parts().get(0).outline().bounds().minX()).isEqualTo(1);
  }

  @Test
  void aDoubleClickPutsTheKeyboardIntoTheFiguresAndEscapeBack() {
    house().click(240, 0);
    window.doubleClick(240, 0);
    WindowDriver.until("the length has the keyboard", () -> "length".equals(focused()));
    WindowDriver.onEvents(
        () -> {
          JTextComponent field = window.find("length", JTextComponent.class);
          field.dispatchEvent(
              new KeyEvent(field, KeyEvent.KEY_PRESSED, 0, 0, KeyEvent.VK_ESCAPE, (char) 27));
          return null;
        });
    WindowDriver.until("the sheet has the keyboard", () -> "canvas".equals(focused()));
  }

  private String focused() {
    java.awt.Component owner = window.window().frame().getMostRecentFocusOwner();
    return owner == null ? "" : owner.getName();
  }

  @Test
  void theSecondButtonEndsAGestureAndLosesNothingElse() {
    window.type("o").click(0, 0).click(120, 0).click(120, 120);
    popup(60, 60, "popup.gesture.back");
    assertThat(WindowDriver.onEvents(() -> window.window().job().runner().engaged())).isTrue();
    window.click(120, 90);
    popup(60, 60, "popup.gesture.finish");
    assertThat(window.plan().parts()).hasSize(1);
    window.click(300, 0).click(400, 0);
    popup(300, 60, "popup.gesture.drop");
    assertThat(WindowDriver.onEvents(() -> window.window().job().runner().engaged())).isFalse();
    assertThat(window.plan().parts()).hasSize(1);
  }

  @Test
  void theSecondButtonOverEmptyGroundPicksNothing() {
    house().click(240, 60);
    assertThat(selection().isEmpty()).isFalse();
    popup(-100, -60, "popup.edit.all");
    assertThat(selection().parts()).containsExactly("main");
  }

  @Test
  void theMenuOfASideSplitsItInTheMiddle() {
    house();
    popup(240, 0, "popup.edit.split");
    assertThat(window.plan().parts().get(0).outline().points()).contains(new Point(240, 0));
  }

  private void popup(double x, double y, String item) {
    window.secondButton(x, y);
    WindowDriver.onEvents(
        () -> {
          JPopupMenu menu = (JPopupMenu) MenuSelectionManager.defaultManager().getSelectedPath()[0];
          WindowDriver.find(menu, item, JMenuItem.class).doClick(0);
          MenuSelectionManager.defaultManager().clearSelectedPath();
          return null;
        });
  }

  @Test
  void holdsAndStepsAreSwitchedAndKept() {
    house().type("r").move(478, 334);
    assertThat(snap()).isEqualTo(new Point(480, 336));
    hold("hold.corner");
    hold("hold.on_side");
    hold("hold.in_line");
    hold("hold.crossing");
    hold("holds.grid.5"); // two feet
    window.move(470, 330);
    assertThat(snap()).isEqualTo(new Point(480, 336));
    window.move(463, 330);
    assertThat(snap()).isEqualTo(new Point(456, 336));
    hold("holds.edge.1"); // always an eave
    window.type("e").move(480, 60).click(480, 60);
    assertThat(window.plan().parts().get(0).edges().get(1).kind()).isEqualTo(EdgeKind.EAVE);
    Settings kept = WindowDriver.onEvents(() -> window.window().settings());
    assertThat(kept.holdsOff())
        .containsExactlyInAnyOrder("CORNER", "CROSSING", "IN_LINE", "ON_SIDE");
    assertThat(kept.grid(LengthUnit.INCH)).contains(24.0);
    assertThat(kept.grid(LengthUnit.MILLIMETRE)).isEmpty();
  }

  private Point snap() {
    return WindowDriver.onEvents(
        () -> window.window().job().runner().overlay().snap().orElseThrow().at());
  }

  private void hold(String name) {
    window.menu("view.holds");
    WindowDriver.onEvents(
        () -> {
          JPopupMenu menu = (JPopupMenu) MenuSelectionManager.defaultManager().getSelectedPath()[0];
          WindowDriver.find(menu, name, AbstractButton.class).doClick(0);
          MenuSelectionManager.defaultManager().clearSelectedPath();
          return null;
        });
  }

  @Test
  void aDragBeyondTheEdgeTakesTheSheetAlong() {
    house();
    double x = WindowDriver.onEvents(() -> canvas().view().originX());
    double right = WindowDriver.onEvents(() -> canvas().seen().maxX());
    window.press(480, 60).dragTo(560, 60).dragTo(right + 60, 60);
    WindowDriver.until("the sheet moves along", () -> canvas().view().originX() < x - 60);
    window.release(700, 60);
    assertThat(window.plan().parts().get(0).outline().bounds().maxX()).isGreaterThan(560);
    double still = WindowDriver.onEvents(() -> canvas().view().originX());
    assertThat(WindowDriver.onEvents(() -> canvas().view().originX())).isEqualTo(still);
  }

  @Test
  void theStatusLineIsTrueOnAnEmptySheetAndWithASidePicked() {
    Words status = window.find("status", Words.class);
    window.move(10, 10);
    WindowDriver.until("nothing to pick", () -> status.getText().startsWith("Take a tool"));
    house().click(240, 0);
    WindowDriver.until("a length may be typed", () -> status.getText().contains("Type a length"));
    window.type("44'");
    WindowDriver.until("Enter takes it", () -> status.getText().contains("Press Enter"));
    assertThat(window.shownPlan().parts().get(0).outline().bounds().maxX()).isEqualTo(528);
    window.escape();
    assertThat(window.shownPlan()).isSameAs(window.plan());
  }

  @Test
  void thePlaceInTheStatusLineIsWhereAClickWouldCount() {
    Words place = window.find("status.place", Words.class);
    house().type("r").move(481, 337);
    WindowDriver.until("held on the corner", () -> place.getText().startsWith("40'-0\" across"));
  }
}
