package longpoint.desktop.canvas;

import java.awt.Rectangle;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;

/**
 * Where the plan lies on the screen. y runs up in the plan and down on the screen.
 *
 * @param scale pixels per plan unit, within {@link #MIN_SCALE} and {@link #MAX_SCALE}
 * @param originX screen x of the plan's origin
 * @param originY screen y of the plan's origin
 */
public record View(double scale, double originX, double originY) {
  /** A mile of inches still fits on a screen. */
  static final double MIN_SCALE = 0.01;

  /** A sixty-fourth of an inch is as wide as a finger; nothing is built finer. */
  static final double MAX_SCALE = 2000;

  public View {
    scale = Math.max(MIN_SCALE, Math.min(MAX_SCALE, scale));
  }

  /** The view that shows a box as large as it fits into a window on the screen. */
  public static View fit(Bounds box, Rectangle window) {
    // A box without width (or height) is bound by the other side alone.
    double across = box.width() > 0 ? Math.max(1, window.width) / box.width() : Double.MAX_VALUE;
    double up = box.height() > 0 ? Math.max(1, window.height) / box.height() : Double.MAX_VALUE;
    double scale = new View(Math.min(across, up), 0, 0).scale;
    return new View(
        scale,
        window.getCenterX() - scale * box.middle().x(),
        window.getCenterY() + scale * box.middle().y());
  }

  /** The same scale with a point of the plan in the middle of the screen. */
  public View centred(Point middle, int width, int height) {
    return new View(scale, width / 2.0 - scale * middle.x(), height / 2.0 + scale * middle.y());
  }

  public double x(Point p) {
    return originX + scale * p.x();
  }

  public double y(Point p) {
    return originY - scale * p.y();
  }

  public Point toPlan(double screenX, double screenY) {
    return new Point((screenX - originX) / scale, (originY - screenY) / scale);
  }

  public View panned(double dx, double dy) {
    return new View(scale, originX + dx, originY + dy);
  }

  /** Nearer (factor above 1) or farther, with the plan point under a screen point staying put. */
  public View zoomed(double factor, double screenX, double screenY) {
    View next = new View(scale * factor, 0, 0);
    Point kept = toPlan(screenX, screenY);
    return new View(next.scale, screenX - next.scale * kept.x(), screenY + next.scale * kept.y());
  }

  /** The piece of plan that shows in a window. */
  public Bounds seen(int width, int height) {
    Point low = toPlan(0, height);
    Point high = toPlan(width, 0);
    return new Bounds(low.x(), low.y(), high.x(), high.y());
  }
}
