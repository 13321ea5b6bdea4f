package longpoint.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import longpoint.picture.PictureException.Reason;
import longpoint.plan.EncodedImage;

/** Unpacks a picture that stands in a plan, for the screen. */
public final class Unpacking {
  /** Below this many pixels a smaller size is not worth having. */
  private static final int SMALLEST = 400;

  private Unpacking() {}

  /**
   * The picture and smaller ones of it, each half as large as the one before.
   *
   * @throws PictureException when it is damaged, or larger than it says
   */
  public static List<BufferedImage> sizes(EncodedImage image) throws IOException {
    List<BufferedImage> sizes = new ArrayList<>();
    BufferedImage size = whole(image);
    sizes.add(size);
    while (Math.max(size.getWidth(), size.getHeight()) > SMALLEST) {
      size = Packing.halved(size);
      sizes.add(size);
    }
    return sizes;
  }

  private static BufferedImage whole(EncodedImage image) throws IOException {
    String format = image.type() == EncodedImage.Type.PNG ? "png" : "jpeg";
    try (ImageInputStream in = ImageIO.createImageInputStream(image.open())) {
      ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
      try {
        reader.setInput(in);
        if (reader.getWidth(0) > EncodedImage.MOST_PIXELS
            || reader.getHeight(0) > EncodedImage.MOST_PIXELS) {
          throw new PictureException(Reason.TOO_LARGE);
        }
        return Packing.opaque(reader.read(0));
      } finally {
        reader.dispose();
      }
    } catch (PictureException e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      throw new PictureException(Reason.DAMAGED, e);
    }
  }
}
