package longpoint.desktop.panel;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.plaf.basic.BasicGraphicsUtils;

/**
 * A few lines of words for a row of a list, which says them to screen readers itself. Swing would
 * have them in HTML, and make that anew for every row and every figure that changes in a drag.
 */
final class Lines extends JComponent {
  private static final long serialVersionUID = 1;
  private transient List<String> lines = List.of();

  /**
   * @param words lines between line feeds
   */
  void setText(String words) {
    lines = words.isEmpty() ? List.of() : List.of(words.split("\n"));
  }

  @Override
  public Dimension getPreferredSize() {
    FontMetrics metrics = getFontMetrics(getFont());
    int widest = lines.stream().mapToInt(metrics::stringWidth).max().orElse(0);
    return new Dimension(widest, lines.size() * metrics.getHeight());
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    draw(this, graphics, lines);
  }

  /** Lines one below another, in the component's own letter and colour. */
  static void draw(JComponent on, Graphics graphics, List<String> lines) {
    Graphics2D g = (Graphics2D) graphics;
    // A component without a look of its own is not given the desktop's smoothing.
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    FontMetrics metrics = g.getFontMetrics(on.getFont());
    g.setFont(on.getFont());
    g.setColor(on.getForeground());
    int y = metrics.getAscent();
    for (String line : lines) {
      BasicGraphicsUtils.drawString(on, g, line, 0, y);
      y += metrics.getHeight();
    }
  }
}
