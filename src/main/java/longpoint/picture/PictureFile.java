package longpoint.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import longpoint.picture.PictureException.Reason;
import longpoint.plan.EncodedImage;

/**
 * Reads a picture file into one that a plan file can hold.
 *
 * <p>Steps: told by its first bytes, unpacked at no more than {@link #MOST_UNPACKED} pixels, turned
 * the way it was photographed, halved until it fits, packed.
 */
public final class PictureFile {
  /** A 36 by 48 inch sheet scanned at 300 dots to the inch in colour is 155 million pixels. */
  static final long MOST_IN_FILE = 250_000_000L;

  /** Held unpacked at once: three bytes each, some 200 MB. */
  static final long MOST_UNPACKED = 64_000_000L;

  static final long LONGEST_FILE = 500_000_000L;

  private static final int SIGNATURE = 8;

  private PictureFile() {}

  /**
   * @throws PictureException when the file is no picture that can be used
   * @throws IOException when it cannot be read at all
   */
  public static EncodedImage read(Path file) throws IOException {
    if (Files.size(file) > LONGEST_FILE) {
      throw new PictureException(Reason.TOO_LARGE);
    }
    byte[] start;
    try (InputStream in = Files.newInputStream(file)) {
      start = in.readNBytes(SIGNATURE);
    }
    try {
      return switch (Kind.of(start)) {
        case PNG -> packed(RasterReader.read(file, "png"), EncodedImage.Type.PNG, file);
        case JPEG -> packed(RasterReader.read(file, "jpeg"), EncodedImage.Type.JPEG, file);
        case PDF -> Packing.pack(PageReader.firstPage(file), EncodedImage.Type.PNG);
        case OTHER -> throw new PictureException(Reason.OTHER_KIND);
      };
    } catch (OutOfMemoryError e) {
      throw new PictureException(Reason.TOO_LARGE, e);
    }
  }

  /** The file itself where it fits as it is, so that nothing is lost by packing it twice. */
  private static EncodedImage packed(RasterReader.Raster raster, EncodedImage.Type type, Path file)
      throws IOException {
    BufferedImage image = raster.image();
    boolean fits =
        raster.asInFile()
            && Files.size(file) <= EncodedImage.MOST_BYTES
            && Math.max(image.getWidth(), image.getHeight()) <= EncodedImage.MOST_PIXELS;
    return fits
        ? new EncodedImage(type, image.getWidth(), image.getHeight(), Files.readAllBytes(file))
        : Packing.pack(image, type);
  }

  /** What a file is by its first bytes. */
  private enum Kind {
    PNG(0x89, 'P', 'N', 'G'),
    JPEG(0xFF, 0xD8, 0xFF),
    PDF('%', 'P', 'D', 'F'),
    OTHER;

    private final int[] start;

    Kind(int... start) {
      this.start = start;
    }

    static Kind of(byte[] bytes) {
      for (Kind kind : values()) {
        if (kind.starts(bytes)) {
          return kind;
        }
      }
      return OTHER;
    }

    private boolean starts(byte[] bytes) {
      if (bytes.length < start.length) {
        return false;
      }
      for (int i = 0; i < start.length; i++) {
        if ((bytes[i] & 0xFF) != start[i]) {
          return false;
        }
      }
      return true;
    }
  }
}
