package longpoint.desktop.canvas;

import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.geometry.Bounds;
import longpoint.sheets.Layers;

/**
 * What lettering is worth showing when the plan is small on the screen. Lettering keeps its size
 * while the plan shrinks, so the least important goes first: dimensions longer than their walls and
 * those far off, then all dimensions and slopes; names and the user's own notes stay. Zooming in
 * brings everything back.
 *
 * @param across larger side of walls and roof on the screen, pixels
 */
record Sparing(double across) {
  /** Everything is shown. */
  static final Sparing NONE = new Sparing(Double.POSITIVE_INFINITY);

  /** From here up there is room for everything: a third of a plain screen. */
  private static final double ROOMY = 480;

  /** Below this a wall is hardly wider than a figure. */
  private static final double CROWDED = 240;

  /** Below this slopes fill their planes. */
  private static final double SMALL = 340;

  /** A figure is worth showing over a wall at least this share of its own length. */
  private static final double FITS = 0.95;

  /** Share of the plan's size that a dimension may stand off from its wall. */
  private static final double FAR = 0.3;

  static Sparing of(Bounds extent, View view) {
    double larger = Math.max(extent.width(), extent.height());
    return larger > 0 ? new Sparing(larger * view.scale()) : NONE;
  }

  /**
   * @param wall length of what is measured, pixels
   * @param figure length of the figure, pixels
   * @param off how far the dimension line stands off, pixels
   */
  boolean shows(Mark.Dimension dimension, double wall, double figure, double off) {
    if (across >= ROOMY || dimension.subject().indexOf('/') < 0) {
      return true;
    }
    return across >= CROWDED && figure * FITS <= wall && off <= FAR * across;
  }

  /** Whether slopes and their arrows are shown; of other layers everything is. */
  boolean shows(Layer layer) {
    return across >= SMALL || !layer.equals(Layers.SLOPE);
  }
}
