package longpoint.desktop.canvas;

import java.awt.Cursor;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.function.Predicate;
import longpoint.geometry.Bounds;

/** Marks looked at under a {@link View}: dragging and the arrow keys move them. */
public abstract class FlatSight extends LookedAt implements Movable {
  private static final long serialVersionUID = 1;
  private static final double PIXELS_PER_KEY = 48;

  private transient View view = new View(2, 0, 0);
  private final transient Navigation navigation = new Navigation(this);

  /**
   * @param letters does what a letter stands for elsewhere in the window
   */
  protected FlatSight(String name, Predicate<Character> letters) {
    super(name, letters);
  }

  @Override
  public final View view() {
    return view;
  }

  @Override
  public void show(View view) {
    this.view = view;
    setFitted(false);
    repaint();
  }

  /** The view that has a box whole, with a margin in pixels around it. */
  protected final View whole(Bounds box, int margin) {
    Rectangle window = new Rectangle(getWidth(), getHeight());
    window.grow(-margin, -margin);
    return View.fit(box, window);
  }

  @Override
  public final Cursor drag(MouseEvent e, int right, int down) {
    show(view.panned(right, down));
    return Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR);
  }

  /** An arrow looks that way, so what is seen moves the other. */
  @Override
  public final void step(Hand.Way way, int right, int down) {
    show(view.panned(-right * PIXELS_PER_KEY, -down * PIXELS_PER_KEY));
  }

  @Override
  public final void wheel(MouseWheelEvent e) {
    navigation.wheel(e);
  }

  @Override
  public final void zoom(double factor) {
    show(view.zoomed(factor, getWidth() / 2.0, getHeight() / 2.0));
  }

  @Override
  public final void restoreCursor() {
    setCursor(Cursor.getDefaultCursor());
  }
}
