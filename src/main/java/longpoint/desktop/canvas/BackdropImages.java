package longpoint.desktop.canvas;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.swing.SwingUtilities;
import longpoint.picture.Unpacking;
import longpoint.plan.EncodedImage;

/** Unpacks the picture behind the plan off the event thread, and keeps the one shown last. */
public final class BackdropImages {
  private final Runnable ready;
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          r -> {
            Thread t = new Thread(r, "backdrop");
            t.setDaemon(true);
            return t;
          });
  private EncodedImage wanted;
  private Optional<List<BufferedImage>> sizes = Optional.empty();

  /**
   * @param ready called on the event thread when a picture has been unpacked
   */
  public BackdropImages(Runnable ready) {
    this.ready = ready;
  }

  /**
   * The sizes of a picture, largest first; none at all when it cannot be unpacked. Empty while it
   * is being unpacked.
   */
  public Optional<List<BufferedImage>> of(EncodedImage image) {
    if (!image.equals(wanted)) {
      wanted = image;
      sizes = Optional.empty();
      thread.execute(() -> unpack(image));
    }
    return sizes;
  }

  private void unpack(EncodedImage image) {
    List<BufferedImage> unpacked;
    try {
      unpacked = Unpacking.sizes(image);
    } catch (IOException | OutOfMemoryError e) {
      unpacked = List.of();
    }
    List<BufferedImage> found = unpacked;
    SwingUtilities.invokeLater(
        () -> {
          if (image.equals(wanted)) {
            sizes = Optional.of(found);
            ready.run();
          }
        });
  }
}
