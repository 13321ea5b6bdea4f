package longpoint.export;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import longpoint.drawing.Page;
import longpoint.stop.CalledOff;
import longpoint.wording.Language;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;

/**
 * Writes all sheets into one PDF, each on paper of its own size: a millimetre of a sheet is a
 * millimetre of paper, and the print dialogue is asked not to shrink it.
 *
 * <p>Lines, lettering and tints are drawn as such, in the widths, dashes and colours of the SVG
 * files. Lettering can be searched and copied; the letters used are in the file. Every sheet has a
 * bookmark and its number for a page label. No script, link, form or outside file; no clock, so the
 * same sheets give the same bytes.
 */
public final class PdfWriter {
  private PdfWriter() {}

  /**
   * Writes the sheets in order. The stream is flushed, not closed.
   *
   * @param pages at least one
   * @param title of the file, any text
   * @param language of what is written on them
   * @throws IOException if the stream cannot be written
   */
  public static void write(List<Page> pages, String title, Language language, OutputStream out)
      throws IOException {
    if (pages.isEmpty()) {
      throw new IllegalArgumentException("a PDF needs a sheet");
    }
    try (PDDocument document = new PDDocument()) {
      about(document, title, language);
      bookmarks(document, pages, sheets(document, pages));
      labels(document, pages);
      document.setDocumentId(fingerprint(document));
      document.save(new Unclosed(out));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    out.flush();
  }

  /** The library closes what it writes to; the stream here is the caller's. */
  private static final class Unclosed extends FilterOutputStream {
    Unclosed(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      out.write(bytes, from, count);
    }

    @Override
    public void close() throws IOException {
      flush();
    }
  }

  private static void about(PDDocument document, String title, Language language) {
    PDDocumentInformation about = document.getDocumentInformation();
    about.setTitle(XmlText.allowed(title));
    about.setCreator("Longpoint");
    document.getDocumentCatalog().setLanguage(language.key());
    PDViewerPreferences viewer = new PDViewerPreferences(new COSDictionary());
    viewer.setDisplayDocTitle(true);
    viewer.setPrintScaling(PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(viewer);
  }

  private static List<PDPage> sheets(PDDocument document, List<Page> pages) throws IOException {
    PdfLettering lettering = PdfLettering.in(document);
    List<PDPage> sheets = new ArrayList<>();
    for (Page page : pages) {
      CalledOff.check();
      float width = (float) (page.widthMm() * PdfMarks.POINTS_PER_MM);
      float height = (float) (page.heightMm() * PdfMarks.POINTS_PER_MM);
      PDPage sheet = new PDPage(new PDRectangle(width, height));
      document.addPage(sheet);
      sheets.add(sheet);
      try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
        PdfMarks marks = new PdfMarks(content, lettering);
        page.marks().forEach(m -> m.accept(marks));
      }
    }
    return sheets;
  }

  private static void bookmarks(PDDocument document, List<Page> pages, List<PDPage> sheets) {
    PDDocumentOutline outline = new PDDocumentOutline();
    document.getDocumentCatalog().setDocumentOutline(outline);
    for (int i = 0; i < pages.size(); i++) {
      PDPageFitDestination whole = new PDPageFitDestination();
      whole.setPage(sheets.get(i));
      PDOutlineItem item = new PDOutlineItem();
      item.setTitle(XmlText.allowed(SvgWriter.title(pages.get(i))));
      item.setDestination(whole);
      outline.addLast(item);
    }
  }

  /** Viewers name the pages by their sheet numbers. */
  private static void labels(PDDocument document, List<Page> pages) throws IOException {
    PDPageLabels labels = new PDPageLabels(document);
    for (int i = 0; i < pages.size(); i++) {
      String number = pages.get(i).number();
      PDPageLabelRange label = new PDPageLabelRange();
      label.setPrefix(XmlText.allowed(number.isEmpty() ? String.valueOf(i + 1) : number));
      labels.setLabelItem(i, label);
    }
    document.getDocumentCatalog().setPageLabels(labels);
  }

  /** The file's id from what is drawn, where the library would take the clock. */
  private static long fingerprint(PDDocument document) throws IOException {
    CRC32 sum = new CRC32();
    for (PDPage page : document.getPages()) {
      sum.update(page.getMediaBox().toString().getBytes(StandardCharsets.UTF_8));
      try (InputStream content = page.getContents()) {
        sum.update(content.readAllBytes());
      }
    }
    return sum.getValue();
  }
}
