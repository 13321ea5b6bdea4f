package longpoint.desktop.canvas;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;

/** Words on a dark rounded ground. */
final class Bubble {
  /** From the edge of the ground to the words, pixels. */
  static final int PAD = 8;

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

  /** Draws it, moved left if need be to stay in sight, and says where its left edge is. */
  double draw(double x, double y) {
    double left = Math.max(4, Math.min(x, g.getClipBounds().getMaxX() - width() - 4));
    g.setColor(colours.bubble());
    g.fill(new RoundRectangle2D.Double(left, y, width(), height(), 10, 10));
    g.setColor(colours.bubbleText());
    g.setFont(lettering);
    g.drawString(text, (float) left + PAD, (float) y + 3 + metrics.getAscent());
    return left;
  }
}
