package longpoint.desktop.canvas;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** The stretch of a line that shows in a window. */
final class InSight {
  private InSight() {}

  /** The middle of that stretch, where a figure of the line can be read; empty if none shows. */
  static Optional<Point2D> middle(Line2D line, Rectangle2D window) {
    double dx = line.getX2() - line.getX1();
    double dy = line.getY2() - line.getY1();
    double[] toward = {-dx, dx, -dy, dy};
    double[] room = {
      line.getX1() - window.getMinX(),
      window.getMaxX() - line.getX1(),
      line.getY1() - window.getMinY(),
      window.getMaxY() - line.getY1()
    };
    double low = 0;
    double high = 1;
    for (int i = 0; i < toward.length; i++) {
      if (toward[i] == 0 && room[i] < 0) {
        return Optional.empty();
      }
      if (toward[i] < 0) {
        low = Math.max(low, room[i] / toward[i]);
      } else if (toward[i] > 0) {
        high = Math.min(high, room[i] / toward[i]);
      }
    }
    double at = (low + high) / 2;
    return low > high
        ? Optional.empty()
        : Optional.of(new Point2D.Double(line.getX1() + at * dx, line.getY1() + at * dy));
  }
}
