package longpoint.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import longpoint.picture.PictureException.Reason;
import longpoint.plan.EncodedImage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Paints the first page of a PDF. */
final class PageReader {
  /** Finer than any scan needs to be traced by. */
  private static final double MOST_DOTS_PER_INCH = 300;

  private static final double POINTS_PER_INCH = 72;

  private PageReader() {}

  static BufferedImage firstPage(Path file) throws PictureException {
    try (PDDocument document =
        Loader.loadPDF(file.toFile(), IOUtils.createTempFileOnlyStreamCache())) {
      if (document.getNumberOfPages() == 0) {
        throw new PictureException(Reason.NO_PAGE);
      }
      PDRectangle box = document.getPage(0).getCropBox();
      double longer = Math.max(box.getWidth(), box.getHeight());
      if (!(Math.min(box.getWidth(), box.getHeight()) > 0)) {
        throw new PictureException(Reason.DAMAGED);
      }
      double scale =
          Math.min(MOST_DOTS_PER_INCH / POINTS_PER_INCH, (EncodedImage.MOST_PIXELS - 1) / longer);
      PDFRenderer renderer = new PDFRenderer(document);
      renderer.setSubsamplingAllowed(true);
      return renderer.renderImage(0, (float) scale, ImageType.RGB);
    } catch (InvalidPasswordException e) {
      throw new PictureException(Reason.LOCKED, e);
    } catch (PictureException e) {
      throw e;
    } catch (IOException | RuntimeException | StackOverflowError e) {
      // A damaged file breaks the reader in many ways.
      throw new PictureException(Reason.DAMAGED, e);
    }
  }
}
