package longpoint.desktop.solid;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.drawing.Ink;
import longpoint.geometry.Point3;

/** A ring on the ground with an arrow to north, so that one knows which way the house faces. */
final class CompassRose {
  private static final double RADIUS = 17;
  private static final double FROM_EDGE = 30;

  private CompassRose() {}

  /**
   * @param north degrees from up the sheet, clockwise
   */
  static void paint(Graphics2D g, Stand stand, double north, int height, CanvasColours colours) {
    double turn = Math.toRadians(north);
    Projection flat = new Projection(stand.looking(1, new Point3(0, 0, 0)), 1, 0, 0);
    Path2D ring = new Path2D.Double();
    for (int i = 0; i <= 48; i++) {
      double a = 2 * Math.PI * i / 48;
      double[] p = at(flat, height, 0, Math.cos(a), Math.sin(a));
      if (i == 0) {
        ring.moveTo(p[0], p[1]);
      } else {
        ring.lineTo(p[0], p[1]);
      }
    }
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(colours.of(Ink.QUIET));
    g.setStroke(new BasicStroke(1));
    g.draw(ring);
    double[] tip = at(flat, height, turn, 0, 1);
    double[] left = at(flat, height, turn, -0.3, 0.1);
    double[] right = at(flat, height, turn, 0.3, 0.1);
    Path2D arrow = new Path2D.Double();
    arrow.moveTo(tip[0], tip[1]);
    arrow.lineTo(left[0], left[1]);
    arrow.lineTo(right[0], right[1]);
    arrow.closePath();
    g.fill(arrow);
    double[] tail = at(flat, height, turn, 0, -0.75);
    double[] neck = at(flat, height, turn, 0, 0.1);
    g.draw(new Line2D.Double(tail[0], tail[1], neck[0], neck[1]));
  }

  private static double[] at(Projection flat, int height, double turn, double x, double y) {
    double east = x * Math.cos(turn) + y * Math.sin(turn);
    double up = y * Math.cos(turn) - x * Math.sin(turn);
    double[] p = flat.of(new Point3(east * RADIUS, up * RADIUS, 0));
    return new double[] {p[0] + FROM_EDGE, p[1] + height - FROM_EDGE};
  }
}
