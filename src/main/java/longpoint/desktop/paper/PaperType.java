package longpoint.desktop.paper;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import longpoint.drawing.Lettering;

/**
 * The lettering of sheets: Liberation Sans, as in the PDF, with capitals of the height asked and
 * never longer than the room {@link Lettering} gave a line when its page was laid out.
 */
final class PaperType {
  /** Comes with the PDF library, and is open: SIL Open Font License 1.1. */
  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** Outlines are made once at this size, and scaled. */
  private static final float SIZE = 100;

  /** Unhinted and in fractions: one outline serves every zoom and every printer. */
  private static final FontRenderContext PLAIN = new FontRenderContext(null, true, true);

  private static final int KEPT_LINES = 4000;

  private static PaperType only;

  private final Font font;
  private final double capital;

  private final Map<String, Line> lines =
      new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Line> eldest) {
          return size() > KEPT_LINES;
        }
      };

  private record Line(Shape letters, double width) {}

  private PaperType(Font font) {
    this.font = font;
    this.capital = font.createGlyphVector(PLAIN, "H").getVisualBounds().getHeight();
  }

  /** The one typeface; it is read when first asked for. */
  static synchronized PaperType get() {
    if (only == null) {
      try (InputStream file = PaperType.class.getResourceAsStream(FILE)) {
        if (file == null) {
          throw new IllegalStateException("the font is missing from the program: " + FILE);
        }
        only = new PaperType(Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(SIZE));
      } catch (IOException | FontFormatException e) {
        throw new IllegalStateException("the font of the program cannot be read: " + FILE, e);
      }
    }
    return only;
  }

  /**
   * A line of lettering as a shape in millimetres, y down, its baseline starting at the origin.
   *
   * @param heightMm of a capital
   */
  synchronized Shape letters(String text, double heightMm) {
    Line line = lines.computeIfAbsent(text, this::line);
    double scale = heightMm / capital;
    return AffineTransform.getScaleInstance(scale * squeeze(text, line, heightMm), scale)
        .createTransformedShape(line.letters);
  }

  /** Length of the same line in millimetres. */
  synchronized double width(String text, double heightMm) {
    Line line = lines.computeIfAbsent(text, this::line);
    return line.width * heightMm / capital * squeeze(text, line, heightMm);
  }

  private double squeeze(String text, Line line, double heightMm) {
    double own = line.width * heightMm / capital;
    double room = Lettering.width(text, heightMm);
    return own > room ? room / own : 1;
  }

  private Line line(String text) {
    GlyphVector glyphs = font.createGlyphVector(PLAIN, text);
    return new Line(glyphs.getOutline(), glyphs.getLogicalBounds().getWidth());
  }
}
