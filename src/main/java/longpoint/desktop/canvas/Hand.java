package longpoint.desktop.canvas;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.event.MouseInputAdapter;

/**
 * Mouse and keys on something that is looked at but not drawn on: dragging and the arrow keys move
 * it, the wheel, plus and minus zoom, Home shows all of it, a click picks: with Shift one more,
 * twice the whole part.
 */
public final class Hand extends MouseInputAdapter implements KeyListener {
  private static final double ZOOM_PER_KEY = 1.25;

  /** A hand that trembles less than this while it clicks has not dragged, pixels. */
  public static final double TREMBLE = 4;

  /** What the hand does to a thing. */
  public interface Held {
    /**
     * A drag went on by some pixels.
     *
     * @return the pointer's shape meanwhile
     */
    Cursor drag(MouseEvent e, int right, int down);

    /**
     * An arrow key.
     *
     * @param right 1, −1 or 0: where the arrow points
     * @param down likewise
     */
    void step(Way way, int right, int down);

    void wheel(MouseWheelEvent e);

    /** Nearer (above 1) or farther about the middle. */
    void zoom(double factor);

    /** All of it in sight. */
    void fit();

    /** A click that was no drag. */
    void clicked(Point at, PickListener.How how);
  }

  /** Which way of moving an arrow key asks for. */
  public enum Way {
    PLAIN,
    /** With Shift held. */
    SHIFTED
  }

  private final JComponent component;
  private final Held held;
  private final Predicate<Character> letters;
  private Point pressed;
  private Point last;
  private boolean dragging;

  private Hand(JComponent component, Held held, Predicate<Character> letters) {
    this.component = component;
    this.held = held;
    this.letters = letters;
  }

  /**
   * Takes a component in hand.
   *
   * @param letters does what a letter stands for elsewhere in the window; says whether there was
   *     one
   */
  static <C extends JComponent & Held> void on(C component, Predicate<Character> letters) {
    Hand hand = new Hand(component, component, letters);
    component.setFocusable(true);
    component.addMouseListener(hand);
    component.addMouseMotionListener(hand);
    component.addMouseWheelListener(hand);
    component.addKeyListener(hand);
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
    component.setCursor(held.drag(e, e.getX() - last.x, e.getY() - last.y));
    last = e.getPoint();
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    component.setCursor(Cursor.getDefaultCursor());
    if (pressed != null && !dragging && SwingUtilities.isLeftMouseButton(e)) {
      held.clicked(pressed, how(e));
    }
    pressed = null;
  }

  private static PickListener.How how(MouseEvent e) {
    if (e.getClickCount() == 2) {
      return PickListener.How.WHOLE_PART;
    }
    return e.isShiftDown() ? PickListener.How.TOO : PickListener.How.ALONE;
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent e) {
    held.wheel(e);
  }

  @Override
  public void keyPressed(KeyEvent e) {
    if (isCommand(e)) {
      return;
    }
    switch (e.getKeyCode()) {
      case KeyEvent.VK_LEFT, KeyEvent.VK_KP_LEFT -> step(e, -1, 0);
      case KeyEvent.VK_RIGHT, KeyEvent.VK_KP_RIGHT -> step(e, 1, 0);
      case KeyEvent.VK_UP, KeyEvent.VK_KP_UP -> step(e, 0, -1);
      case KeyEvent.VK_DOWN, KeyEvent.VK_KP_DOWN -> step(e, 0, 1);
      case KeyEvent.VK_HOME -> held.fit();
      default -> {
        return;
      }
    }
    e.consume();
  }

  private void step(KeyEvent e, int right, int down) {
    boolean shifted = (e.getModifiersEx() & InputEvent.SHIFT_DOWN_MASK) != 0;
    held.step(shifted ? Way.SHIFTED : Way.PLAIN, right, down);
  }

  @Override
  public void keyTyped(KeyEvent e) {
    if (isCommand(e)) {
      return;
    }
    char c = e.getKeyChar();
    if (c == '+' || c == '=') {
      held.zoom(ZOOM_PER_KEY);
    } else if (c == '-') {
      held.zoom(1 / ZOOM_PER_KEY);
    } else if (!letters.test(c)) {
      return;
    }
    e.consume();
  }

  private static boolean isCommand(KeyEvent e) {
    return e.isControlDown() || e.isAltDown() || e.isMetaDown();
  }

  @Override
  public void keyReleased(KeyEvent e) {
    // Keys act when they go down.
  }
}
