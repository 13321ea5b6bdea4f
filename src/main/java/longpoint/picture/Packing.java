package longpoint.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import longpoint.plan.EncodedImage;

/** Packs a picture so that a plan file can hold it. */
final class Packing {
  /** Of a JPEG: thin lines stay clean, and a scan takes about a byte for four pixels. */
  private static final float QUALITY = 0.82f;

  private Packing() {}

  /**
   * Lines of a drawing pack best as PNG, a photograph as JPEG; what is still too large is halved.
   */
  static EncodedImage pack(BufferedImage image, EncodedImage.Type usual) throws IOException {
    BufferedImage small = image;
    while (Math.max(small.getWidth(), small.getHeight()) > EncodedImage.MOST_PIXELS) {
      small = halved(small);
    }
    Optional<EncodedImage> packed =
        usual == EncodedImage.Type.PNG ? fitting(small, EncodedImage.Type.PNG) : Optional.empty();
    while (packed.isEmpty()) {
      packed = fitting(small, EncodedImage.Type.JPEG);
      small = packed.isEmpty() ? halved(small) : small;
    }
    return packed.get();
  }

  private static Optional<EncodedImage> fitting(BufferedImage image, EncodedImage.Type type)
      throws IOException {
    byte[] bytes = type == EncodedImage.Type.PNG ? png(image) : jpeg(image);
    return bytes.length > EncodedImage.MOST_BYTES
        ? Optional.empty()
        : Optional.of(new EncodedImage(type, image.getWidth(), image.getHeight(), bytes));
  }

  private static byte[] png(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  private static byte[] jpeg(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream to = ImageIO.createImageOutputStream(out)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.setOutput(to);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }

  /** Half as wide and high, each pixel the mean of four, so that thin lines stay. */
  static BufferedImage halved(BufferedImage image) {
    int w = Math.max(1, image.getWidth() / 2);
    int h = Math.max(1, image.getHeight() / 2);
    BufferedImage half = new BufferedImage(w, h, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = half.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(image, 0, 0, w, h, null);
    g.dispose();
    return half;
  }

  /** On white paper, without anything to see through. */
  static BufferedImage opaque(BufferedImage image) {
    if (image.getType() == BufferedImage.TYPE_3BYTE_BGR) {
      return image;
    }
    BufferedImage plain =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = plain.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    g.drawImage(image, 0, 0, null);
    g.dispose();
    return plain;
  }
}
