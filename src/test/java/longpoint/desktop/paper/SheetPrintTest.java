package longpoint.desktop.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.awt.print.PrinterAbortException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Pen;
import longpoint.geometry.Point;
import org.junit.jupiter.api.Test;

/**
 * Sheets on paper are in full size. A point is a 72nd of an inch by the definition Java's printing
 * goes by, and paper sizes are those of ISO 216 and ASME Y14.1 as {@code javax.print} lists them.
 */
class SheetPrintTest {
  private static final Layer LAYER = new Layer("T-TEST", "Test", Pen.solid(0.5), Ink.MAIN);

  /** Dots to a point: 288 to the inch. */
  private static final int FINE = 4;

  /** A level line of 254 mm, ten inches, 50 mm from the left and 100 mm from the foot. */
  private static Page page(double widthMm, double heightMm) {
    Mark line = Mark.Path.line(new Point(50, 100), new Point(304, 100), LAYER, "");
    return new Page("T-1", "Test", widthMm, heightMm, List.of(line));
  }

  @Test
  void tenInchesOfASheetAreTenInchesOfItsPaper() throws Exception {
    Page sheet = page(420, 297);
    PageFormat format = SheetPrint.format(sheet);
    assertThat(format.getOrientation()).isEqualTo(PageFormat.LANDSCAPE);
    int[] ink = inked(sheet, format);
    assertThat((ink[2] - ink[0]) / (double) FINE).isCloseTo(720, within(2.0));
    assertThat(ink[0] / (double) FINE).isCloseTo(50 / 25.4 * 72, within(1.5));
    // y runs down on paper: 100 mm from the foot is 197 mm from the head.
    assertThat(ink[1] / (double) FINE).isCloseTo(197 / 25.4 * 72, within(1.5));
  }

  @Test
  void onSmallerPaperTheWholeSheetIsMadeSmallerAlike() throws Exception {
    Page sheet = page(420, 297);
    PageFormat a4 = SheetPrint.format(page(297, 210));
    assertThat(SheetPrint.fits(sheet, a4)).isFalse();
    int[] ink = inked(sheet, a4);
    assertThat((ink[2] - ink[0]) / (double) FINE).isCloseTo(720 * 297 / 420.0, within(2.0));
  }

  /** A printer is told to stop by the exception it knows. */
  @Test
  void printingIsCalledOffBetweenSheets() throws Exception {
    List<Page> pages = List.of(page(420, 297), page(420, 297));
    SheetPrint sheets =
        new SheetPrint(
            pages,
            Optional.empty(),
            index -> {
              if (index == 1) {
                throw new CancellationException();
              }
            });
    Graphics2D g = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
    assertThat(sheets.print(g, sheets.getPageFormat(0), 0)).isEqualTo(Printable.PAGE_EXISTS);
    assertThatThrownBy(() -> sheets.print(g, sheets.getPageFormat(1), 1))
        .isInstanceOf(PrinterAbortException.class);
  }

  @Test
  void thereAreAsManyPagesAsSheets() throws Exception {
    SheetPrint two = new SheetPrint(List.of(page(420, 297), page(420, 297)));
    assertThat(two.getNumberOfPages()).isEqualTo(2);
    BufferedImage image = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
    assertThat(two.print(image.createGraphics(), two.getPageFormat(0), 2))
        .isEqualTo(Printable.NO_SUCH_PAGE);
  }

  /** Left, upper, right and lower edge of everything dark, in dots. */
  private static int[] inked(Page sheet, PageFormat format) throws Exception {
    int w = (int) Math.ceil(format.getWidth() * FINE);
    int h = (int) Math.ceil(format.getHeight() * FINE);
    BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, w, h);
    g.scale(FINE, FINE);
    assertThat(new SheetPrint(List.of(sheet)).print(g, format, 0)).isEqualTo(Printable.PAGE_EXISTS);
    int[] box = {w, h, -1, -1};
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        if ((image.getRGB(x, y) & 0xFF) < 100) {
          box[0] = Math.min(box[0], x);
          box[1] = Math.min(box[1], y);
          box[2] = Math.max(box[2], x);
          box[3] = Math.max(box[3], y);
        }
      }
    }
    return box;
  }
}
