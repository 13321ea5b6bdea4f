package longpoint.export;

import java.io.IOException;
import java.io.InputStream;
import java.text.Normalizer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The letters of a PDF: Liberation Sans, of which the file gets the letters it uses.
 *
 * <p>Capitals have the height asked. A line that would run longer than the room {@link Lettering}
 * gave it when the page was laid out is drawn narrower, so that nothing set apart there touches
 * here. (Liberation Sans keeps Arial's widths with lower capitals: a twenty-fifth narrower.)
 */
final class PdfLettering {
  /** Comes with the PDF library, and is open: SIL Open Font License 1.1. */
  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** Stands for a character the font does not have. */
  private static final int BOX = 0x25A1;

  /** Widths of letters and heights of capitals are told in thousandths of the font's size. */
  private static final double THOUSAND = 1000;

  private final PDFont font;
  private final CmapLookup letters;
  private final double capital;

  private PdfLettering(PDFont font, CmapLookup letters, double capital) {
    this.font = font;
    this.letters = letters;
    this.capital = capital;
  }

  /** Opens the font for a document; it closes with the document. */
  static PdfLettering in(PDDocument document) throws IOException {
    try (InputStream file = PDDocument.class.getResourceAsStream(FILE)) {
      if (file == null) {
        throw new IllegalStateException("the font is missing from the program: " + FILE);
      }
      TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(file));
      // Joined letters (fi) are found by no search.
      letters.setEnableGsub(false);
      double capital = letters.getOS2Windows().getCapHeight() / (double) letters.getUnitsPerEm();
      PDFont font = PDType0Font.load(document, letters, true);
      return new PdfLettering(font, letters.getUnicodeCmapLookup(), capital);
    }
  }

  /**
   * A line of lettering as it is drawn.
   *
   * @param letters that the font has
   * @param size of the font, millimetres
   * @param percent of the letters' own width
   * @param width as drawn, millimetres
   */
  record Line(String letters, double size, double percent, double width) {}

  Line line(Mark.Text mark) throws IOException {
    String text = drawable(mark.text());
    double size = mark.heightMm() / capital;
    double own = font.getStringWidth(text) / THOUSAND * size;
    double room = Lettering.width(mark.text(), mark.heightMm());
    double share = own > room ? room / own : 1;
    return new Line(text, size, 100 * share, own * share);
  }

  PDFont font() {
    return font;
  }

  /** Accents join their letters where the font has the two as one; what it lacks is a box. */
  private String drawable(String text) {
    StringBuilder out = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .map(c -> c == '\t' || c == '\n' || c == '\r' ? ' ' : c)
        .map(c -> letters.getGlyphId(c) != 0 && shows(c) ? c : BOX)
        .forEach(out::appendCodePoint);
    return out.toString();
  }

  /** Not so controls, nor signs that would turn the reading of what follows. */
  private static boolean shows(int c) {
    return !Character.isISOControl(c) && Character.getType(c) != Character.FORMAT;
  }
}
