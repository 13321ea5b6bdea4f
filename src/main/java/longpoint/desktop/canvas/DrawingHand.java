package longpoint.desktop.canvas;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.event.MouseInputAdapter;

/**
 * Mouse and keys on a drawing that is looked at but not drawn on: dragging moves it, the wheel
 * zooms, a click picks; arrow keys move it too, plus and minus zoom, Home shows all of it.
 */
public final class DrawingHand extends MouseInputAdapter implements KeyListener {
  private static final double PIXELS_PER_KEY = 48;
  private static final double ZOOM_PER_KEY = 1.25;

  /** A hand that trembles less than this while it clicks has not dragged, pixels. */
  private static final double TREMBLE = 4;

  /** What the hand does to a drawing beyond moving it. */
  public interface Held extends Movable {
    /** All of it in sight. */
    void fit();

    /** A click that was no drag. */
    void clicked(MouseEvent e);
  }

  private final JComponent component;
  private final Held held;
  private final Navigation navigation;
  private final Predicate<Character> letters;
  private Point pressed;
  private Point last;
  private boolean dragging;

  private DrawingHand(JComponent component, Held held, Predicate<Character> letters) {
    this.component = component;
    this.held = held;
    this.letters = letters;
    this.navigation = new Navigation(held);
  }

  /**
   * Takes a component in hand.
   *
   * @param letters does what a letter stands for elsewhere in the window
   */
  public static <C extends JComponent & Held> void on(C component, Predicate<Character> letters) {
    DrawingHand hand = new DrawingHand(component, component, letters);
    component.setFocusable(true);
    component.addMouseListener(hand);
    component.addMouseMotionListener(hand);
    component.addMouseWheelListener(hand);
    component.addKeyListener(hand);
    component.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            component.repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            hand.navigation.forgetKeys();
            component.repaint();
          }
        });
  }

  @Override
  public void mousePressed(MouseEvent e) {
    component.requestFocusInWindow();
    pressed = e.getPoint();
    last = pressed;
    dragging = false;
  }

  @Override
  public void mouseDragged(MouseEvent e) {
    if (pressed == null || !dragging && pressed.distance(e.getPoint()) < TREMBLE) {
      return;
    }
    dragging = true;
    held.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
    held.show(held.view().panned(e.getX() - last.x, e.getY() - last.y));
    last = e.getPoint();
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    held.restoreCursor();
    if (pressed != null && !dragging && SwingUtilities.isLeftMouseButton(e)) {
      held.clicked(e);
    }
    pressed = null;
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent e) {
    navigation.wheel(e);
  }

  @Override
  public void keyPressed(KeyEvent e) {
    if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
      return;
    }
    switch (e.getKeyCode()) {
      case KeyEvent.VK_LEFT, KeyEvent.VK_KP_LEFT -> move(1, 0);
      case KeyEvent.VK_RIGHT, KeyEvent.VK_KP_RIGHT -> move(-1, 0);
      case KeyEvent.VK_UP, KeyEvent.VK_KP_UP -> move(0, 1);
      case KeyEvent.VK_DOWN, KeyEvent.VK_KP_DOWN -> move(0, -1);
      case KeyEvent.VK_HOME -> held.fit();
      default -> {
        return;
      }
    }
    e.consume();
  }

  private void move(int right, int down) {
    held.show(held.view().panned(right * PIXELS_PER_KEY, down * PIXELS_PER_KEY));
  }

  @Override
  public void keyTyped(KeyEvent e) {
    if (e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
      return;
    }
    char c = e.getKeyChar();
    if (c == '+' || c == '=') {
      zoom(ZOOM_PER_KEY);
    } else if (c == '-') {
      zoom(1 / ZOOM_PER_KEY);
    } else if (!letters.test(c)) {
      return;
    }
    e.consume();
  }

  private void zoom(double factor) {
    double x = component.getWidth() / 2.0;
    double y = component.getHeight() / 2.0;
    held.show(held.view().zoomed(factor, x, y));
  }

  @Override
  public void keyReleased(KeyEvent e) {
    // Keys act when they go down.
  }
}
