package longpoint.plan;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Base64;
import java.util.Locale;
import java.util.Objects;

/**
 * A picture as it stands in a file, not unpacked. Never changes; two with the same bytes are equal.
 */
public final class EncodedImage {
  /** How a picture is packed. */
  public enum Type {
    PNG,
    JPEG;

    /** As it stands in a plan file. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** The largest that a plan file takes: with the third that base64 adds, half of such a file. */
  public static final int MOST_BYTES = 6_000_000;

  /** Pixels of the longer side at most; a 36 inch sheet at over 100 to the inch. */
  public static final int MOST_PIXELS = 4096;

  private final Type type;
  private final int width;
  private final int height;
  private final byte[] bytes;

  /**
   * @param width in pixels, 1 to {@link #MOST_PIXELS}
   * @param height in pixels, 1 to {@link #MOST_PIXELS}
   * @param bytes of a PNG or JPEG file, at most {@link #MOST_BYTES}
   */
  public EncodedImage(Type type, int width, int height, byte[] bytes) {
    this.type = Objects.requireNonNull(type);
    this.width = side(width);
    this.height = side(height);
    if (bytes.length > MOST_BYTES) {
      throw new IllegalArgumentException("a picture of " + bytes.length + " bytes is too large");
    }
    this.bytes = bytes.clone();
  }

  private static int side(int pixels) {
    if (pixels < 1 || pixels > MOST_PIXELS) {
      throw new IllegalArgumentException("a picture is not " + pixels + " pixels wide or high");
    }
    return pixels;
  }

  public Type type() {
    return type;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  public InputStream open() {
    return new ByteArrayInputStream(bytes);
  }

  /** The bytes as text (RFC 4648). */
  public String base64() {
    return Base64.getEncoder().encodeToString(bytes);
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof EncodedImage other
        && type == other.type
        && width == other.width
        && height == other.height
        && Arrays.equals(bytes, other.bytes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(type, width, height, bytes.length);
  }

  @Override
  public String toString() {
    return type + " of " + width + " x " + height + " pixels";
  }
}
