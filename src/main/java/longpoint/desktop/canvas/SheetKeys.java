package longpoint.desktop.canvas;

import java.awt.event.KeyEvent;

/** Keys that whoever draws has no use for: arrows move the sheet, Tab leaves it. */
final class SheetKeys {
  /** Pixels to an arrow key. */
  private static final int STEP = 60;

  private SheetKeys() {}

  static boolean take(PlanCanvas canvas, KeyEvent e) {
    if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
      return false;
    }
    switch (e.getKeyCode()) {
      case KeyEvent.VK_LEFT -> canvas.show(canvas.view().panned(STEP, 0));
      case KeyEvent.VK_RIGHT -> canvas.show(canvas.view().panned(-STEP, 0));
      case KeyEvent.VK_UP -> canvas.show(canvas.view().panned(0, STEP));
      case KeyEvent.VK_DOWN -> canvas.show(canvas.view().panned(0, -STEP));
      case KeyEvent.VK_TAB -> {
        if (e.isShiftDown()) {
          canvas.transferFocusBackward();
        } else {
          canvas.transferFocus();
        }
      }
      default -> {
        return false;
      }
    }
    return true;
  }
}
