package longpoint.desktop.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.units.LengthUnit;

/** Paints the grid under the marks, and the two rulers over everything. */
final class GridPainter {
  /** Width of a ruler in pixels. */
  static final int RULER = 26;

  private final View view;
  private final int width;
  private final int height;
  private final LengthUnit unit;
  private final CanvasColours colours;
  private final GridStep step;
  private final Bounds seen;

  GridPainter(View view, int width, int height, LengthUnit unit, CanvasColours colours) {
    this.view = view;
    this.width = width;
    this.height = height;
    this.unit = unit;
    this.colours = colours;
    this.step = GridStep.at(view.scale(), unit);
    this.seen = view.seen(width, height);
  }

  void grid(Graphics2D g) {
    double scale = g.getTransform().getScaleX();
    if (scale == Math.rint(scale)) { // on whole pixels nothing is left to smooth, at great cost
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    }
    lines(g, step.fine(), colours.gridFine());
    lines(g, step.strong(), colours.gridStrong());
  }

  private void lines(Graphics2D g, double every, Color colour) {
    g.setColor(colour);
    for (long i = first(seen.minX(), every); i * every <= seen.maxX(); i++) {
      g.fillRect((int) Math.round(view.x(new Point(i * every, 0))), 0, 1, height);
    }
    for (long i = first(seen.minY(), every); i * every <= seen.maxY(); i++) {
      g.fillRect(0, (int) Math.round(view.y(new Point(0, i * every))), width, 1);
    }
  }

  /**
   * The rulers.
   *
   * @param pointer where the pointer is, on the screen; marked on both rulers when inside
   */
  void rulers(Graphics2D g, Font font, java.awt.Point pointer) {
    g.setStroke(new BasicStroke(1));
    // Level and upright strokes only: smoothing them costs more than the rest of the rulers.
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    g.setColor(colours.ruler());
    g.fillRect(0, 0, width, RULER);
    g.fillRect(0, 0, RULER, height);
    g.setColor(colours.gridStrong());
    g.drawLine(RULER, RULER, width, RULER);
    g.drawLine(RULER, RULER, RULER, height);
    g.setFont(font);
    ticksAcross(g);
    ticksUp(g);
    g.setColor(colours.ruler());
    g.fillRect(0, 0, RULER, RULER);
    if (pointer != null) {
      g.setColor(colours.selection());
      g.fillRect(pointer.x - 1, RULER - 8, 2, 8);
      g.fillRect(RULER - 8, pointer.y - 1, 8, 2);
    }
  }

  private void ticksAcross(Graphics2D g) {
    g.setColor(colours.rulerText());
    FontMetrics metrics = g.getFontMetrics();
    for (long i = first(seen.minX(), step.fine()); i * step.fine() <= seen.maxX(); i++) {
      int x = (int) Math.round(view.x(new Point(i * step.fine(), 0)));
      if (strong(i)) {
        g.drawLine(x, RULER - 9, x, RULER - 1);
        String label = step.label(i * step.fine(), unit);
        g.drawString(label, x - metrics.stringWidth(label) / 2, RULER - 11);
      } else {
        g.drawLine(x, RULER - 4, x, RULER - 1);
      }
    }
  }

  private void ticksUp(Graphics2D g) {
    FontMetrics metrics = g.getFontMetrics();
    for (long i = first(seen.minY(), step.fine()); i * step.fine() <= seen.maxY(); i++) {
      int y = (int) Math.round(view.y(new Point(0, i * step.fine())));
      if (strong(i)) {
        g.drawLine(RULER - 9, y, RULER - 1, y);
        String label = step.label(i * step.fine(), unit);
        AffineTransform upright = g.getTransform();
        g.translate(RULER - 11, y);
        g.rotate(-Math.PI / 2);
        g.drawString(label, -metrics.stringWidth(label) / 2, 0);
        g.setTransform(upright);
      } else {
        g.drawLine(RULER - 4, y, RULER - 1, y);
      }
    }
  }

  private boolean strong(long fineSteps) {
    return Math.floorMod(fineSteps, Math.round(step.strong() / step.fine())) == 0;
  }

  private static long first(double from, double every) {
    return (long) Math.ceil(from / every);
  }
}
