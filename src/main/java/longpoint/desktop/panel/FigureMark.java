package longpoint.desktop.panel;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.desktop.canvas.View;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.surface.RoofLine;

/** Shows on the sheet the line or plane whose figure is picked in the panel. */
public final class FigureMark {
  private static final float WIDTH = 10;
  private static final int ALPHA = 110;

  private FigureMark() {}

  public static void paint(Figure figure, Graphics2D g, View view, CanvasColours colours) {
    Color c = colours.selection();
    g.setColor(new Color(c.getRed(), c.getGreen(), c.getBlue(), ALPHA));
    g.setStroke(new BasicStroke(WIDTH, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    if (figure instanceof Figure.OfLines of) {
      for (RoofLine line : of.lines()) {
        Point from = line.from().plan();
        Point to = line.to().plan();
        g.draw(new Line2D.Double(view.x(from), view.y(from), view.x(to), view.y(to)));
      }
    } else if (figure instanceof Figure.OfFrame of) {
      for (Segment place : of.places()) {
        Point from = place.from();
        Point to = place.to();
        g.draw(new Line2D.Double(view.x(from), view.y(from), view.x(to), view.y(to)));
      }
    } else if (figure instanceof Figure.OfPlane of) {
      for (Region region : of.plane().visible()) {
        Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        trace(shape, region.shell(), view);
        region.holes().forEach(h -> trace(shape, h, view));
        g.fill(shape);
      }
    }
  }

  private static void trace(Path2D shape, Ring ring, View view) {
    for (int i = 0; i < ring.size(); i++) {
      Point p = ring.corner(i);
      if (i == 0) {
        shape.moveTo(view.x(p), view.y(p));
      } else {
        shape.lineTo(view.x(p), view.y(p));
      }
    }
    shape.closePath();
  }
}
