package longpoint.desktop.panel;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.StringTokenizer;
import javax.swing.Icon;
import javax.swing.UIManager;

/**
 * A picture of a few strokes in the colour of the words beside it, crisp at any size. The strokes
 * stand in {@code icons.properties} on a square of 24: {@code M x y} begins, {@code L x y} draws
 * on, {@code Z} closes, {@code O x y r} is a circle, {@code B} fills what came before it.
 */
public final class LineIcon implements Icon {
  private static final ResourceBundle DRAWINGS =
      ResourceBundle.getBundle("longpoint.desktop.icons", Locale.ROOT);
  private static final double SQUARE = 24;

  private final Path2D strokes = new Path2D.Double();
  private final Path2D solid = new Path2D.Double();
  private final int size;

  private LineIcon(String drawing, int size) {
    this.size = size;
    trace(drawing);
  }

  /**
   * The picture of a name, or a plain ring where there is none.
   *
   * @param size of its square in pixels
   */
  public static LineIcon of(String name, int size) {
    return new LineIcon(DRAWINGS.containsKey(name) ? DRAWINGS.getString(name) : "O 12 12 8", size);
  }

  private void trace(String drawing) {
    Path2D now = new Path2D.Double();
    StringTokenizer words = new StringTokenizer(drawing);
    while (words.hasMoreTokens()) {
      switch (words.nextToken()) {
        case "M" -> now.moveTo(number(words), number(words));
        case "L" -> now.lineTo(number(words), number(words));
        case "Z" -> now.closePath();
        case "O" -> {
          double x = number(words);
          double y = number(words);
          double r = number(words);
          now.append(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r), false);
        }
        case "B" -> {
          solid.append(now, false);
          now = new Path2D.Double();
        }
        default -> throw new IllegalArgumentException("not a stroke in: " + drawing);
      }
    }
    strokes.append(now, false);
  }

  private static double number(StringTokenizer words) {
    return Double.parseDouble(words.nextToken());
  }

  @Override
  public void paintIcon(Component c, Graphics graphics, int x, int y) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.translate(x, y);
    g.scale(size / SQUARE, size / SQUARE);
    g.setColor(c.isEnabled() ? c.getForeground() : UIManager.getColor("Label.disabledForeground"));
    g.setStroke(new BasicStroke(1.7f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(strokes);
    g.fill(solid);
    g.dispose();
  }

  @Override
  public int getIconWidth() {
    return size;
  }

  @Override
  public int getIconHeight() {
    return size;
  }
}
