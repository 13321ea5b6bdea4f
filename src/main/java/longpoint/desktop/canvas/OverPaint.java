package longpoint.desktop.canvas;

import java.awt.Graphics2D;

/** Paints over the marks: selection, snaps, rubber lines. Cheap enough to run at every move. */
@FunctionalInterface
public interface OverPaint {
  /**
   * @param g in pixels of the sheet, smoothing on
   */
  void paint(Graphics2D g, View view, CanvasColours colours);
}
