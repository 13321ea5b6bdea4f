package longpoint.desktop.canvas;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Words on a dark rounded ground. */
final class Bubble {
  /** From the edge of the ground to the words, pixels. */
  static final int PAD = 8;

  private static final int MARGIN = 4;

  private final Graphics2D g;
  private final CanvasColours colours;
  private final String text;
  private final Font lettering;
  private final FontMetrics metrics;

  Bubble(Graphics2D g, CanvasColours colours, String text, Font lettering) {
    this.g = g;
    this.colours = colours;
    this.text = text;
    this.lettering = lettering;
    this.metrics = g.getFontMetrics(lettering);
  }

  double width() {
    return metrics.stringWidth(text) + 2.0 * PAD;
  }

  double height() {
    return metrics.getHeight() + 6.0;
  }

  /** Draws it, moved if need be to stay clear of rulers and edges, and says where. */
  Rectangle2D draw(double x, double y) {
    double left = within(x, g.getClipBounds().getMaxX() - width() - MARGIN);
    double top = within(y, g.getClipBounds().getMaxY() - height() - MARGIN);
    g.setColor(colours.bubble());
    g.fill(new RoundRectangle2D.Double(left, top, width(), height(), 10, 10));
    g.setColor(colours.bubbleText());
    g.setFont(lettering);
    g.drawString(text, (float) left + PAD, (float) top + 3 + metrics.getAscent());
    return new Rectangle2D.Double(left, top, width(), height());
  }

  private static double within(double at, double most) {
    return Math.max(GridPainter.RULER + MARGIN, Math.min(at, most));
  }
}
