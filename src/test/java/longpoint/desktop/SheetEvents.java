package longpoint.desktop;

import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.geometry.Point;

/** Mouse and key events as the sheet gets them. For the event thread. */
final class SheetEvents {
  /** Apart so far that two clicks are never taken for a double click, milliseconds. */
  private static final int APART = 250;

  private final PlanCanvas canvas;
  private long clock = System.currentTimeMillis();

  SheetEvents(PlanCanvas canvas) {
    this.canvas = canvas;
  }

  void mouse(int id, Point at, int held, int button, int clicks) {
    mouse(id, x(at), y(at), held, button, clicks);
  }

  private void mouse(int id, int x, int y, int held, int button, int clicks) {
    clock += APART;
    canvas.dispatchEvent(new MouseEvent(canvas, id, clock, held, x, y, clicks, false, button));
  }

  void menu(Point at) {
    clock += APART;
    canvas.dispatchEvent(
        new MouseEvent(
            canvas,
            MouseEvent.MOUSE_PRESSED,
            clock,
            InputEvent.BUTTON3_DOWN_MASK,
            x(at),
            y(at),
            1,
            true,
            MouseEvent.BUTTON3));
  }

  /** The middle button held and moved, in pixels. */
  void dragSheet(int dx, int dy) {
    int x = canvas.getWidth() / 2;
    int y = canvas.getHeight() / 2;
    int held = InputEvent.BUTTON2_DOWN_MASK;
    mouse(MouseEvent.MOUSE_PRESSED, x, y, held, MouseEvent.BUTTON2, 1);
    mouse(MouseEvent.MOUSE_DRAGGED, x + dx, y + dy, held, 0, 0);
    mouse(MouseEvent.MOUSE_RELEASED, x + dx, y + dy, 0, MouseEvent.BUTTON2, 1);
  }

  void wheel(Point at, int clicks) {
    canvas.dispatchEvent(
        new MouseWheelEvent(
            canvas,
            MouseEvent.MOUSE_WHEEL,
            clock++,
            0,
            x(at),
            y(at),
            0,
            false,
            MouseWheelEvent.WHEEL_UNIT_SCROLL,
            3,
            clicks));
  }

  void key(int id, int keyCode, int held, char ch) {
    KeyboardFocusManager.getCurrentKeyboardFocusManager()
        .redispatchEvent(canvas, new KeyEvent(canvas, id, clock++, held, keyCode, ch));
  }

  private int x(Point at) {
    return (int) Math.round(canvas.view().x(at));
  }

  private int y(Point at) {
    return (int) Math.round(canvas.view().y(at));
  }
}
