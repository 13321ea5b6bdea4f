package longpoint.picture;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * How a camera was held: the orientation tag 0x0112 of Exif (JEITA CP-3451, table 3; its values
 * from memory). A photograph without it is upright.
 */
final class Orientation {
  static final int UPRIGHT = 1;

  private static final int MOST = 8;
  private static final int TAG = 0x0112;
  private static final int EXIF_MARKER = 225;
  private static final int HEADER = 6;
  private static final int ENTRY = 12;

  private Orientation() {}

  /** 1 to 8. */
  static int of(ImageReader reader) throws IOException {
    IIOMetadata metadata = reader.getImageMetadata(0);
    if (metadata == null
        || !"javax_imageio_jpeg_image_1.0".equals(metadata.getNativeMetadataFormatName())) {
      return UPRIGHT;
    }
    NodeList markers =
        ((IIOMetadataNode) metadata.getAsTree(metadata.getNativeMetadataFormatName()))
            .getElementsByTagName("unknown");
    for (int i = 0; i < markers.getLength(); i++) {
      Optional<Integer> found = exif(markers.item(i)).flatMap(Orientation::tag);
      if (found.isPresent()) {
        return found.get();
      }
    }
    return UPRIGHT;
  }

  private static Optional<byte[]> exif(Node marker) {
    IIOMetadataNode node = (IIOMetadataNode) marker;
    return String.valueOf(EXIF_MARKER).equals(node.getAttribute("MarkerTag"))
            && node.getUserObject() instanceof byte[] bytes
        ? Optional.of(bytes)
        : Optional.empty();
  }

  /** The tag in the first directory of an Exif block. */
  static Optional<Integer> tag(byte[] exif) {
    try {
      if (exif.length < HEADER + 8 || exif[0] != 'E' || exif[1] != 'x') {
        return Optional.empty();
      }
      ByteBuffer tiff = ByteBuffer.wrap(exif, HEADER, exif.length - HEADER).slice();
      tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
      tiff.position(tiff.getInt(4));
      int entries = tiff.getShort() & 0xFFFF;
      int first = tiff.position();
      for (int i = 0; i < entries; i++) {
        int at = first + i * ENTRY;
        if ((tiff.getShort(at) & 0xFFFF) == TAG) {
          int value = tiff.getShort(at + 8) & 0xFFFF;
          return value >= UPRIGHT && value <= MOST ? Optional.of(value) : Optional.empty();
        }
      }
      return Optional.empty();
    } catch (BufferUnderflowException | IndexOutOfBoundsException | IllegalArgumentException e) {
      return Optional.empty(); // a damaged block says nothing
    }
  }

  /** The picture as it was seen. */
  static BufferedImage upright(BufferedImage image, int orientation) {
    if (orientation == UPRIGHT) {
      return image;
    }
    int w = image.getWidth();
    int h = image.getHeight();
    AffineTransform turn =
        switch (orientation) {
          case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
          case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
          case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
          case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
          case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
          case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
          default -> new AffineTransform(0, -1, 1, 0, 0, w);
        };
    boolean sideways = orientation >= 5;
    BufferedImage upright =
        new BufferedImage(sideways ? h : w, sideways ? w : h, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = upright.createGraphics();
    g.drawImage(image, turn, null);
    g.dispose();
    return upright;
  }
}
