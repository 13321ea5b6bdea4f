package longpoint.desktop.canvas;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.GlyphVector;
import java.util.HashMap;
import java.util.LinkedHashMap;
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

  private static final int KEPT_WORDS = 2000;

  private static final BasicStroke HALO =
      new BasicStroke(4.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

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

  /**
   * A line of lettering as shapes, its baseline starting at the origin.
   *
   * @param letters the letters themselves
   * @param halo the letters and a margin around them
   * @param width length of the line
   */
  record Word(Shape letters, Shape halo, double width) {}

  private record Key(String text, double capitalMm) {}

  /** Words are drawn over and over while their places move; their shapes are kept. */
  private final Map<Key, Word> words =
      new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Word> eldest) {
          return size() > KEPT_WORDS;
        }
      };

  Word word(Graphics2D g, String text, double capitalMm) {
    return words.computeIfAbsent(new Key(text, capitalMm), k -> shaped(g, k));
  }

  private Word shaped(Graphics2D g, Key key) {
    GlyphVector glyphs = font(key.capitalMm).createGlyphVector(g.getFontRenderContext(), key.text);
    Shape letters = glyphs.getOutline();
    return new Word(
        letters, HALO.createStrokedShape(letters), glyphs.getLogicalBounds().getWidth());
  }

  /** The font whose capitals are so high on paper. */
  Font font(double capitalMm) {
    int tenths = (int) Math.round(pixels(capitalMm) / CAPITAL * 10);
    return bySize.computeIfAbsent(tenths, t -> base.deriveFont(Math.max(1f, t / 10f)));
  }
}
