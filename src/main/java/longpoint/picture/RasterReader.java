package longpoint.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import longpoint.picture.PictureException.Reason;
import longpoint.stop.CalledOff;

/** Reads PNG and JPEG files, large ones thinned out so that they never stand in memory whole. */
final class RasterReader {
  /**
   * A picture unpacked.
   *
   * @param asInFile whether every pixel is where it stands in the file
   */
  record Raster(BufferedImage image, boolean asInFile) {}

  private RasterReader() {}

  static Raster read(Path file, String format) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
      try {
        reader.setInput(in);
        return read(reader);
      } finally {
        reader.dispose();
      }
    } catch (PictureException | CalledOff e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      // Readers of the platform throw all kinds of things at damaged files.
      throw new PictureException(Reason.DAMAGED, e);
    }
  }

  private static Raster read(ImageReader reader) throws IOException {
    long width = reader.getWidth(0);
    long height = reader.getHeight(0);
    if (width * height > PictureFile.MOST_IN_FILE) {
      throw new PictureException(Reason.TOO_LARGE);
    }
    int every = 1;
    while ((width / every) * (height / every) > PictureFile.MOST_UNPACKED) {
      every++;
    }
    ImageReadParam param = reader.getDefaultReadParam();
    param.setSourceSubsampling(every, every, 0, 0);
    reader.addIIOReadProgressListener(new ReadingWatch());
    BufferedImage read = reader.read(0, param);
    CalledOff.check(); // what was read until then is half a picture
    BufferedImage image = Packing.opaque(read);
    int turn = Orientation.of(reader);
    return new Raster(Orientation.upright(image, turn), every == 1 && turn == Orientation.UPRIGHT);
  }
}
