package longpoint.desktop.solid;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.function.Predicate;
import javax.swing.SwingUtilities;
import javax.swing.event.MouseInputAdapter;

/**
 * Mouse and keys on the house. Dragging turns and tilts it; with shift or the middle button it
 * moves; the wheel brings it nearer. A click picks, with shift one more, twice the whole part.
 * Arrow keys turn, with shift they move; plus and minus bring nearer and farther; Home shows all of
 * it.
 */
final class SolidHand extends MouseInputAdapter {
  private static final double DEGREES_PER_PIXEL = 0.45;
  private static final double DEGREES_PER_KEY = 7.5;
  private static final double PIXELS_PER_KEY = 32;
  private static final double ZOOM_PER_CLICK = 1.15;

  /** A hand that trembles less than this while it clicks has not dragged, pixels. */
  private static final double TREMBLE = 4;

  private final SolidView view;
  private final Predicate<Character> letters;
  private Point pressed;
  private Point last;
  private boolean dragging;

  SolidHand(SolidView view, Predicate<Character> letters) {
    this.view = view;
    this.letters = letters;
  }

  void take() {
    view.addMouseListener(this);
    view.addMouseMotionListener(this);
    view.addMouseWheelListener(this);
    view.addKeyListener(new Keys());
  }

  @Override
  public void mousePressed(MouseEvent e) {
    view.requestFocusInWindow();
    pressed = e.getPoint();
    last = pressed;
    dragging = false;
  }

  @Override
  public void mouseDragged(MouseEvent e) {
    if (pressed == null) {
      return;
    }
    if (!dragging && pressed.distance(e.getPoint()) < TREMBLE) {
      return;
    }
    dragging = true;
    double right = e.getX() - last.x;
    double down = e.getY() - last.y;
    last = e.getPoint();
    if (e.isShiftDown() || !SwingUtilities.isLeftMouseButton(e)) {
      view.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
      view.move(view.stand().panned(right, down));
    } else {
      view.turn(view.stand().turned(right * DEGREES_PER_PIXEL, down * DEGREES_PER_PIXEL));
    }
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    view.setCursor(Cursor.getDefaultCursor());
    if (pressed != null && !dragging && SwingUtilities.isLeftMouseButton(e)) {
      view.pick(pressed.x, pressed.y, how(e));
    }
    pressed = null;
  }

  private static SolidPickListener.How how(MouseEvent e) {
    if (e.getClickCount() == 2) {
      return SolidPickListener.How.WHOLE_PART;
    }
    return e.isShiftDown() ? SolidPickListener.How.TOO : SolidPickListener.How.ALONE;
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent e) {
    zoom(Math.pow(ZOOM_PER_CLICK, -e.getPreciseWheelRotation()), e.getX(), e.getY());
  }

  private void zoom(double factor, double x, double y) {
    view.move(view.stand().zoomed(factor, x - view.getWidth() / 2.0, y - view.getHeight() / 2.0));
  }

  private final class Keys extends KeyAdapter {
    @Override
    public void keyPressed(KeyEvent e) {
      if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
        return;
      }
      switch (e.getKeyCode()) {
        case KeyEvent.VK_LEFT, KeyEvent.VK_KP_LEFT -> step(e, -1, 0);
        case KeyEvent.VK_RIGHT, KeyEvent.VK_KP_RIGHT -> step(e, 1, 0);
        case KeyEvent.VK_UP, KeyEvent.VK_KP_UP -> step(e, 0, -1);
        case KeyEvent.VK_DOWN, KeyEvent.VK_KP_DOWN -> step(e, 0, 1);
        case KeyEvent.VK_HOME -> view.fit();
        default -> {
          return;
        }
      }
      e.consume();
    }

    private void step(KeyEvent e, int right, int down) {
      if ((e.getModifiersEx() & InputEvent.SHIFT_DOWN_MASK) != 0) {
        view.move(view.stand().panned(right * PIXELS_PER_KEY, down * PIXELS_PER_KEY));
      } else {
        view.turn(view.stand().turned(right * DEGREES_PER_KEY, down * DEGREES_PER_KEY));
      }
    }

    @Override
    public void keyTyped(KeyEvent e) {
      if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
        return;
      }
      char c = e.getKeyChar();
      double middleX = view.getWidth() / 2.0;
      double middleY = view.getHeight() / 2.0;
      if (c == '+' || c == '=') {
        zoom(ZOOM_PER_CLICK, middleX, middleY);
        e.consume();
      } else if (c == '-') {
        zoom(1 / ZOOM_PER_CLICK, middleX, middleY);
        e.consume();
      } else if (letters.test(c)) {
        e.consume();
      }
    }
  }
}
