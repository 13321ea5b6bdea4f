package longpoint.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import longpoint.picture.PictureException.Reason;
import longpoint.plan.EncodedImage;
import longpoint.stop.CalledOff;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.rendering.ImageType;

/**
 * Paints the first page of a PDF, on a thread of its own: a page can be made to take for ever, by
 * forms that draw forms or by a function for every dot, and whoever asked waits only so long.
 */
final class PageReader {
  /** Finer than any scan needs to be traced by. */
  private static final double MOST_DOTS_PER_INCH = 300;

  private static final double POINTS_PER_INCH = 72;

  /** The largest survey sheets take some seconds on a slow machine. */
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private PageReader() {}

  static BufferedImage firstPage(Path file) throws IOException {
    return firstPage(file, PATIENCE);
  }

  /**
   * As the other.
   *
   * @throws PictureException {@link Reason#ENDLESS} if it is not painted by then
   * @throws CalledOff if this thread is interrupted
   */
  static BufferedImage firstPage(Path file, Duration patience) throws IOException {
    FutureTask<BufferedImage> painting = new FutureTask<>(() -> paint(file));
    Thread painter = new Thread(painting, "page");
    painter.setDaemon(true);
    painter.start();
    try {
      return painting.get(patience.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      throw new PictureException(Reason.ENDLESS, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      CalledOff.check();
      throw new CancellationException();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof OutOfMemoryError full) {
        throw full;
      }
      if (e.getCause() instanceof PictureException known) {
        throw known;
      }
      // A damaged file breaks the reader in many ways.
      throw new PictureException(Reason.DAMAGED, e.getCause());
    } finally {
      painting.cancel(true);
    }
  }

  private static BufferedImage paint(Path file) throws IOException {
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
      PageRenderer renderer = new PageRenderer(document);
      renderer.setSubsamplingAllowed(true);
      return renderer.renderImage(0, (float) scale, ImageType.RGB);
    } catch (InvalidPasswordException e) {
      throw new PictureException(Reason.LOCKED, e);
    }
  }
}
