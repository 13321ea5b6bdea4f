package longpoint.desktop.file;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.UIManager;
import longpoint.desktop.Texts;
import longpoint.desktop.canvas.View;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.tracing.Gap;
import longpoint.tracing.Traced;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/** The lines of a drawing in small, with a ring around every place where they do not meet. */
final class GapSketch extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int MARGIN = 44;
  private static final double RING = 11;
  private static final int AIR = 5;

  private final transient Traced traced;
  private final LengthUnit unit;

  GapSketch(Traced traced, LengthUnit unit) {
    this.traced = traced;
    this.unit = unit;
    setOpaque(false);
    setName("gaps.sketch");
    setPreferredSize(new Dimension(440, 300));
    getAccessibleContext().setAccessibleName(Texts.of("gaps.sketch"));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    Bounds box = Bounds.of(traced.lines().stream().flatMap(List::stream).toList());
    Rectangle window = new Rectangle(getWidth(), getHeight());
    window.grow(-MARGIN, -MARGIN);
    View view = View.fit(box, window);
    g.setColor(UIManager.getColor("Longpoint.quiet"));
    g.setStroke(new BasicStroke(1.4f));
    for (List<Point> line : traced.lines()) {
      for (int i = 0; i + 1 < line.size(); i++) {
        g.draw(between(view, line.get(i), line.get(i + 1)));
      }
    }
    traced.gaps().forEach(gap -> paint(g, view, gap));
    g.dispose();
  }

  private static Line2D between(View view, Point from, Point to) {
    return new Line2D.Double(view.x(from), view.y(from), view.x(to), view.y(to));
  }

  private void paint(Graphics2D g, View view, Gap gap) {
    Color mark = UIManager.getColor("Longpoint.error");
    Point middle = gap.from().toward(gap.to(), 0.5);
    double x = view.x(middle);
    double y = view.y(middle);
    double ring = Math.max(RING, gap.width() * view.scale() / 2 + AIR);
    g.setColor(mark);
    g.setStroke(
        new BasicStroke(
            2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 4}, 0));
    g.draw(between(view, gap.from(), gap.to()));
    g.setStroke(new BasicStroke(1.6f));
    g.draw(new Ellipse2D.Double(x - ring, y - ring, 2 * ring, 2 * ring));
    String words = LengthText.of(gap.width(), unit);
    FontMetrics letters = g.getFontMetrics();
    boolean left = x > getWidth() / 2.0;
    double at = left ? x - ring - AIR - letters.stringWidth(words) : x + ring + AIR;
    g.drawString(words, (float) at, (float) (y + letters.getAscent() / 2.0 - 1));
  }
}
