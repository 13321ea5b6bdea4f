package longpoint.desktop.paper;

import java.awt.print.PrinterJob;
import java.util.List;
import java.util.Optional;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.JobName;
import javax.print.attribute.standard.MediaSize;
import javax.print.attribute.standard.MediaSizeName;
import javax.print.attribute.standard.OrientationRequested;
import javax.print.attribute.standard.PageRanges;
import longpoint.desktop.Errands;
import longpoint.desktop.Texts;
import longpoint.desktop.Trouble;
import longpoint.desktop.file.Dialogs;
import longpoint.drawing.Page;

/** Takes sheets to a printer: asks which and where, says so if they will not be to scale. */
public final class PrintFlow {
  /** Sizes of paper that differ by less are the same, millimetres. */
  private static final double SAME_PAPER = 1;

  private final Dialogs dialogs;
  private final Errands errands;

  public PrintFlow(Dialogs dialogs, Errands errands) {
    this.dialogs = dialogs;
    this.errands = errands;
  }

  /**
   * Asks and prints.
   *
   * @param title of the job
   * @param pages all sheets
   * @param first numbers from 1 of the sheets to offer; all when empty
   */
  public void print(String title, List<Page> pages, List<Integer> first) {
    if (pages.isEmpty()) {
      dialogs.tell(Texts.of("tell.noPrint"), Texts.of("tell.noPrint.nothing"));
      return;
    }
    PrinterJob printer = PrinterJob.getPrinterJob();
    if (printer.getPrintService() == null) {
      dialogs.tell(Texts.of("tell.noPrint"), Texts.of("tell.noPrint.printer"));
      return;
    }
    printer.setJobName(title);
    printer.setPageable(new SheetPrint(pages));
    PrintRequestAttributeSet wanted = wanted(title, pages, first);
    if (!dialogs.print(printer, wanted) || !mayShrink(printer, pages.get(0))) {
      return;
    }
    errands.run(
        Texts.of("state.printing"),
        watch -> {
          printer.setPageable(
              new SheetPrint(pages, i -> watch.step(sheet(i, pages), i, pages.size())));
          printer.print(wanted);
          return pages.size();
        },
        done -> {},
        broken -> dialogs.tell(Texts.of("tell.noPrint"), Trouble.words(broken)));
  }

  private static String sheet(int index, List<Page> pages) {
    return Texts.of("state.printing.sheet", pages.get(index).number(), pages.size());
  }

  private static PrintRequestAttributeSet wanted(
      String title, List<Page> pages, List<Integer> first) {
    PrintRequestAttributeSet wanted = new HashPrintRequestAttributeSet();
    wanted.add(new JobName(title, null));
    Page page = pages.get(0);
    media(page).ifPresent(wanted::add);
    wanted.add(
        page.widthMm() > page.heightMm()
            ? OrientationRequested.LANDSCAPE
            : OrientationRequested.PORTRAIT);
    if (!first.isEmpty()) {
      wanted.add(new PageRanges(ranges(first)));
    }
    return wanted;
  }

  private static int[][] ranges(List<Integer> numbers) {
    return numbers.stream().map(n -> new int[] {n, n}).toArray(int[][]::new);
  }

  /** The paper a sheet is made for, as printers call it. */
  static Optional<MediaSizeName> media(Page page) {
    float narrow = (float) Math.min(page.widthMm(), page.heightMm());
    float wide = (float) Math.max(page.widthMm(), page.heightMm());
    MediaSizeName near = MediaSize.findMedia(narrow, wide, MediaSize.MM);
    MediaSize size = near == null ? null : MediaSize.getMediaSizeForName(near);
    return size != null
            && Math.abs(size.getX(MediaSize.MM) - narrow) < SAME_PAPER
            && Math.abs(size.getY(MediaSize.MM) - wide) < SAME_PAPER
        ? Optional.of(near)
        : Optional.empty();
  }

  /** A printer without the sheet's paper makes it smaller: that is said before it happens. */
  private boolean mayShrink(PrinterJob printer, Page page) {
    boolean has =
        media(page)
            .filter(m -> printer.getPrintService().isAttributeValueSupported(m, null, null))
            .isPresent();
    return has || dialogs.printSmaller(printer.getPrintService().getName());
  }
}
