package longpoint.desktop.canvas;

import java.awt.event.MouseEvent;
import java.util.function.Consumer;
import javax.swing.Timer;

/** Moves the sheet while something is dragged beyond its edge, the faster the farther beyond. */
final class EdgePan {
  private static final int PACE_MILLIS = 30;
  private static final double SHARE = 0.25;
  private static final double FASTEST = 40;

  private final PlanCanvas canvas;
  private final Timer timer;
  private MouseEvent last;

  /**
   * @param again hands on a drag to the same place, beneath which the sheet has moved
   */
  EdgePan(PlanCanvas canvas, Consumer<MouseEvent> again) {
    this.canvas = canvas;
    timer = new Timer(PACE_MILLIS, e -> step(again));
  }

  /** Follows the mouse. */
  void follow(MouseEvent e) {
    last = e;
    boolean beyond = e.getID() == MouseEvent.MOUSE_DRAGGED && !canvas.contains(e.getPoint());
    if (beyond && canvas.gestures().engaged()) {
      timer.start();
    } else {
      timer.stop();
    }
  }

  private void step(Consumer<MouseEvent> again) {
    if (!canvas.gestures().engaged()) {
      timer.stop();
      return;
    }
    double dx = beyond(last.getX(), canvas.getWidth());
    double dy = beyond(last.getY(), canvas.getHeight());
    canvas.show(canvas.view().panned(-dx, -dy));
    again.accept(last);
  }

  private static double beyond(int at, int size) {
    double past = at < 0 ? at : Math.max(0, at - size);
    return Math.max(-FASTEST, Math.min(FASTEST, SHARE * past));
  }
}
