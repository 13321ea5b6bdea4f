package longpoint.desktop.canvas;

import java.awt.Font;
import java.util.HashMap;
import java.util.Map;

/** Lettering of the sheet: how large a paper millimetre stands on the screen, and its fonts. */
public final class ScreenType {
  /**
   * A screen is read from farther off than paper, so a paper millimetre takes a tenth more than the
   * 96 dots to the inch a plain screen is reckoned at.
   */
  private static final double PIXELS_PER_MM = 96 / 25.4 * 1.1;

  /** Height of a capital of the Inter typeface as a share of its size. */
  private static final double CAPITAL = 0.727;

  private final Font base;
  private final double pixelsPerMm;
  private final Map<Integer, Font> bySize = new HashMap<>();

  /**
   * @param base typeface; its size does not matter
   * @param zoom 1 for ordinary eyes, more for larger lettering
   */
  ScreenType(Font base, double zoom) {
    this.base = base;
    this.pixelsPerMm = PIXELS_PER_MM * zoom;
  }

  double pixels(double mm) {
    return mm * pixelsPerMm;
  }

  /** Plan units to a paper millimetre at a view. */
  public double unitsPerMm(View view) {
    return pixelsPerMm / view.scale();
  }

  /** The font whose capitals are so high on paper. */
  Font font(double capitalMm) {
    int tenths = (int) Math.round(pixels(capitalMm) / CAPITAL * 10);
    return bySize.computeIfAbsent(tenths, t -> base.deriveFont(Math.max(1f, t / 10f)));
  }
}
