package longpoint.desktop.paper;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Paper;
import java.awt.print.Printable;
import java.awt.print.PrinterAbortException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.IntConsumer;
import longpoint.drawing.Page;

/**
 * Sheets as a printer takes them, in full size: a millimetre of the sheet is a millimetre of paper.
 * On paper too small for that a sheet is made smaller as a whole; its scale bar stays right, its
 * scale does not.
 */
public final class SheetPrint implements Pageable, Printable {
  static final double POINTS_PER_MM = 72 / 25.4;

  /** Paper sizes are rounded by printers to whole points. */
  private static final double ROUNDING = 2;

  private final List<Page> pages;
  private final Optional<PageFormat> paper;
  private final IntConsumer told;

  public SheetPrint(List<Page> pages) {
    this(pages, Optional.empty(), index -> {});
  }

  /**
   * As the other.
   *
   * @param paper what every sheet is printed on, if it is not paper of the sheet's own size
   * @param told which sheet is next, from 0; where it throws {@link CancellationException} no more
   *     is printed
   */
  SheetPrint(List<Page> pages, Optional<PageFormat> paper, IntConsumer told) {
    this.pages = List.copyOf(pages);
    this.paper = paper;
    this.told = told;
  }

  @Override
  public int getNumberOfPages() {
    return pages.size();
  }

  /**
   * Paper of the sheet's own size unless told otherwise; printers feed it upright and turn a wide
   * sheet.
   */
  @Override
  public PageFormat getPageFormat(int index) {
    return paper.orElseGet(() -> format(pages.get(index)));
  }

  static PageFormat format(Page page) {
    double wide = page.widthMm() * POINTS_PER_MM;
    double high = page.heightMm() * POINTS_PER_MM;
    Paper paper = new Paper();
    paper.setSize(Math.min(wide, high), Math.max(wide, high));
    paper.setImageableArea(0, 0, paper.getWidth(), paper.getHeight());
    PageFormat format = new PageFormat();
    format.setPaper(paper);
    format.setOrientation(wide > high ? PageFormat.LANDSCAPE : PageFormat.PORTRAIT);
    return format;
  }

  @Override
  public Printable getPrintable(int index) {
    return this;
  }

  @Override
  public int print(Graphics graphics, PageFormat format, int index) throws PrinterAbortException {
    if (index < 0 || index >= pages.size()) {
      return NO_SUCH_PAGE;
    }
    try {
      told.accept(index);
    } catch (CancellationException off) {
      throw new PrinterAbortException("called off");
    }
    Page page = pages.get(index);
    Graphics2D g = (Graphics2D) graphics.create();
    if (fits(page, format)) {
      PagePainter.paint(page, g, POINTS_PER_MM);
    } else {
      g.translate(format.getImageableX(), format.getImageableY());
      double scale =
          Math.min(
              format.getImageableWidth() / page.widthMm(),
              format.getImageableHeight() / page.heightMm());
      PagePainter.paint(page, g, scale);
    }
    g.dispose();
    return PAGE_EXISTS;
  }

  /** Whether a sheet is printed in full size on some paper. */
  static boolean fits(Page page, PageFormat format) {
    return page.widthMm() * POINTS_PER_MM <= format.getWidth() + ROUNDING
        && page.heightMm() * POINTS_PER_MM <= format.getHeight() + ROUNDING;
  }
}
