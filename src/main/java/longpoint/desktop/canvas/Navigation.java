package longpoint.desktop.canvas;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import javax.swing.SwingUtilities;

/**
 * Moves and zooms the sheet. The middle button drags it, so does any button while the space bar is
 * down. A wheel that clicks zooms about the pointer; two fingers on a touch pad, which turn the
 * wheel by fractions, move the sheet, and with Control held (what a pinch sends) they zoom.
 */
public final class Navigation {
  private static final double ZOOM_PER_CLICK = 1.2;
  private static final double PIXELS_PER_TURN = 60;

  private final Movable canvas;
  private Point dragFrom;
  private boolean spaceDown;

  public Navigation(Movable canvas) {
    this.canvas = canvas;
  }

  /** Whether the event was about moving the sheet, and so is nobody else's. */
  public boolean takes(MouseEvent e) {
    return switch (e.getID()) {
      case MouseEvent.MOUSE_PRESSED -> press(e);
      case MouseEvent.MOUSE_DRAGGED -> drag(e);
      case MouseEvent.MOUSE_RELEASED -> release();
      default -> dragFrom != null;
    };
  }

  private boolean press(MouseEvent e) {
    if (SwingUtilities.isMiddleMouseButton(e) || spaceDown) {
      dragFrom = e.getPoint();
      canvas.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
      return true;
    }
    return false;
  }

  private boolean drag(MouseEvent e) {
    if (dragFrom == null) {
      return false;
    }
    canvas.show(canvas.view().panned(e.getX() - dragFrom.x, e.getY() - dragFrom.y));
    dragFrom = e.getPoint();
    return true;
  }

  private boolean release() {
    if (dragFrom == null) {
      return false;
    }
    dragFrom = null;
    canvas.restoreCursor();
    return true;
  }

  /** Space held down turns the pointer into a hand. */
  public boolean takes(KeyEvent e) {
    if (e.getKeyCode() != KeyEvent.VK_SPACE) {
      return false;
    }
    boolean down = e.getID() == KeyEvent.KEY_PRESSED;
    if (down != spaceDown && e.getID() != KeyEvent.KEY_TYPED) {
      spaceDown = down;
      if (down) {
        canvas.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
      } else {
        canvas.restoreCursor();
      }
    }
    return true;
  }

  /** Key releases get lost when another window takes the keyboard. */
  public void forgetKeys() {
    spaceDown = false;
  }

  public void wheel(MouseWheelEvent e) {
    double turn = e.getPreciseWheelRotation();
    boolean zooms = (e.getModifiersEx() & InputEvent.CTRL_DOWN_MASK) != 0;
    boolean sideways = (e.getModifiersEx() & InputEvent.SHIFT_DOWN_MASK) != 0;
    boolean touchPad = turn != Math.rint(turn);
    if (!zooms && sideways) {
      canvas.show(canvas.view().panned(-turn * PIXELS_PER_TURN, 0));
    } else if (!zooms && touchPad) {
      canvas.show(canvas.view().panned(0, -turn * PIXELS_PER_TURN));
    } else {
      canvas.show(canvas.view().zoomed(Math.pow(ZOOM_PER_CLICK, -turn), e.getX(), e.getY()));
    }
  }
}
