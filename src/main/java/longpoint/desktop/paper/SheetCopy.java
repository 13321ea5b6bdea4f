package longpoint.desktop.paper;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import longpoint.drawing.Page;
import longpoint.export.SvgWriter;

/**
 * A sheet on the clipboard: as a picture for letters and messages, as SVG for drawing programs,
 * which also take it as text. Each program picks what it can use.
 */
public final class SheetCopy implements Transferable {
  /** As registered for SVG (W3C SVG 1.1, appendix P). */
  public static final DataFlavor SVG = flavor("image/svg+xml; class=java.io.InputStream");

  /** Fine enough to be printed in a letter. */
  private static final double PIXELS_PER_MM = 200 / 25.4;

  /** Most pixels either way, so that a wide plan does not fill the memory. */
  private static final double MOST_PIXELS = 6000;

  /** What is offered. */
  public enum As {
    /** Picture, with the SVG for those who ask for it. */
    PICTURE,
    /** SVG, also as text. */
    SVG
  }

  private final Page page;
  private final As as;

  public SheetCopy(Page page, As as) {
    this.page = page;
    this.as = as;
  }

  private static DataFlavor flavor(String type) {
    try {
      return new DataFlavor(type);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public DataFlavor[] getTransferDataFlavors() {
    List<DataFlavor> flavors =
        as == As.PICTURE
            ? List.of(DataFlavor.imageFlavor, SVG)
            : List.of(SVG, DataFlavor.stringFlavor);
    return flavors.toArray(DataFlavor[]::new);
  }

  @Override
  public boolean isDataFlavorSupported(DataFlavor flavor) {
    return List.of(getTransferDataFlavors()).contains(flavor);
  }

  @Override
  public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
    if (!isDataFlavorSupported(flavor)) {
      throw new UnsupportedFlavorException(flavor);
    }
    if (flavor.equals(DataFlavor.imageFlavor)) {
      return picture(page);
    }
    return flavor.equals(DataFlavor.stringFlavor)
        ? svg()
        : new ByteArrayInputStream(svg().getBytes(StandardCharsets.UTF_8));
  }

  private String svg() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      SvgWriter.write(page, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString(StandardCharsets.UTF_8);
  }

  /** The sheet on white, as fine as it can be printed. */
  public static Image picture(Page page) {
    double most = Math.max(page.widthMm(), page.heightMm());
    double scale = Math.min(PIXELS_PER_MM, MOST_PIXELS / most);
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(page.widthMm() * scale),
            (int) Math.ceil(page.heightMm() * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    PagePainter.paint(page, g, scale);
    g.dispose();
    return image;
  }
}
