package longpoint.desktop;

import java.awt.Point;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.function.Consumer;
import longpoint.desktop.canvas.PlanCanvas;

/** The menu key, or Shift and F10, in the place of the second button. */
final class MenuKey extends KeyAdapter {
  private final PlanCanvas canvas;
  private final Consumer<MouseEvent> menu;

  MenuKey(PlanCanvas canvas, Consumer<MouseEvent> menu) {
    this.canvas = canvas;
    this.menu = menu;
  }

  @Override
  public void keyPressed(KeyEvent e) {
    boolean asks =
        e.getKeyCode() == KeyEvent.VK_CONTEXT_MENU
            || e.getKeyCode() == KeyEvent.VK_F10 && e.isShiftDown();
    if (!asks) {
      return;
    }
    e.consume();
    Point at = canvas.pointer();
    int x = at == null ? canvas.getWidth() / 2 : at.x;
    int y = at == null ? canvas.getHeight() / 2 : at.y;
    menu.accept(
        new MouseEvent(
            canvas, MouseEvent.MOUSE_PRESSED, e.getWhen(), 0, x, y, 1, true, MouseEvent.BUTTON3));
  }
}
