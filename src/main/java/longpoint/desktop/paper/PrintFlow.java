package longpoint.desktop.paper;

import java.awt.print.PageFormat;
import java.awt.print.PrinterJob;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javax.print.PrintService;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.JobName;
import javax.print.attribute.standard.MediaSizeName;
import javax.print.attribute.standard.OrientationRequested;
import javax.print.attribute.standard.PageRanges;
import longpoint.desktop.Errand;
import longpoint.desktop.Errands;
import longpoint.desktop.Texts;
import longpoint.desktop.Trouble;
import longpoint.desktop.file.Dialogs;
import longpoint.drawing.Page;
import longpoint.sheets.Paper;

/**
 * Takes sheets to a printer: asks which and where, and lays them out for the paper it holds, so
 * that they are to scale. Says so if they cannot be.
 */
public final class PrintFlow {
  /**
   * What is to be printed.
   *
   * @param title of the job
   * @param layout lays the sheets out for a paper; takes its time
   * @param paper they are looked at on
   * @param chosen titles of the sheets to offer first; all when empty
   */
  public record Sheets(
      String title, Function<Paper, List<Page>> layout, Paper paper, List<String> chosen) {
    public Sheets {
      chosen = List.copyOf(chosen);
    }
  }

  /** Sheets laid out for a paper. */
  private record Laid(Paper paper, List<Page> pages) {}

  private final Dialogs dialogs;
  private final Errands errands;
  private final Supplier<PrinterJob> printers;

  public PrintFlow(Dialogs dialogs, Errands errands) {
    this(dialogs, errands, PrinterJob::getPrinterJob);
  }

  /**
   * @param printers makes a job for the printer that is offered first
   */
  public PrintFlow(Dialogs dialogs, Errands errands, Supplier<PrinterJob> printers) {
    this.dialogs = dialogs;
    this.errands = errands;
    this.printers = printers;
  }

  /** Lays out, asks and prints. */
  public void print(Sheets sheets) {
    PrinterJob printer = printers.get();
    PrintService service = printer.getPrintService();
    if (service == null) {
      dialogs.tell(Texts.of("tell.noPrint"), Texts.of("tell.noPrint.printer"));
      return;
    }
    Paper paper = new PrinterPaper(service).best(sheets.paper());
    errands.run(
        Texts.of("state.sheets"),
        watch -> {
          watch.step(Texts.of("state.sheets"));
          return new Laid(paper, sheets.layout().apply(paper));
        },
        laid -> ask(printer, sheets, laid),
        broken -> dialogs.tell(Texts.of("tell.noPrint"), Trouble.words(broken)));
  }

  private void ask(PrinterJob printer, Sheets sheets, Laid laid) {
    if (laid.pages().isEmpty()) {
      dialogs.tell(Texts.of("tell.noPrint"), Texts.of("tell.noPrint.nothing"));
      return;
    }
    printer.setJobName(sheets.title());
    printer.setPageable(new SheetPrint(laid.pages()));
    PrintRequestAttributeSet wanted = new HashPrintRequestAttributeSet();
    wanted.add(new JobName(sheets.title(), null));
    wanted.add(OrientationRequested.LANDSCAPE);
    new PrinterPaper(printer.getPrintService()).named(laid.paper()).ifPresent(wanted::add);
    choose(wanted, laid.pages(), sheets.chosen());
    if (!dialogs.print(printer, wanted)) {
      return;
    }
    PrintService service = printer.getPrintService();
    Optional<MediaSizeName> asked = new PrinterPaper(service).asked(wanted);
    Optional<Paper> ours = asked.flatMap(PrinterPaper::ours);
    if (ours.isPresent()) {
      print(printer, wanted, watch -> laidFor(ours.get(), sheets, laid, wanted), Optional.empty());
    } else if (dialogs.printSmaller(service.getName())) {
      print(printer, wanted, watch -> laid, asked.flatMap(PrinterPaper::lying));
    }
  }

  /** Laid out anew if other paper was chosen; sheets that were chosen stay chosen, by title. */
  private static Laid laidFor(
      Paper paper, Sheets sheets, Laid laid, PrintRequestAttributeSet wanted) {
    if (paper == laid.paper()) {
      return laid;
    }
    Laid anew = new Laid(paper, sheets.layout().apply(paper));
    if (wanted.get(PageRanges.class) instanceof PageRanges ranges) {
      List<String> titles =
          IntStream.range(0, laid.pages().size())
              .filter(i -> ranges.contains(i + 1))
              .mapToObj(i -> laid.pages().get(i).title())
              .toList();
      wanted.remove(PageRanges.class);
      choose(wanted, anew.pages(), titles);
    }
    return anew;
  }

  private void print(
      PrinterJob printer,
      PrintRequestAttributeSet wanted,
      Errand<Laid> layout,
      Optional<PageFormat> paper) {
    errands.run(
        Texts.of("state.printing"),
        watch -> {
          List<Page> pages = layout.run(watch).pages();
          printer.setPageable(
              new SheetPrint(pages, paper, i -> watch.step(sheet(i, pages), i, pages.size())));
          printer.print(wanted);
          return pages.size();
        },
        done -> {},
        broken -> dialogs.tell(Texts.of("tell.noPrint"), Trouble.words(broken)));
  }

  private static String sheet(int index, List<Page> pages) {
    return Texts.of("state.printing.sheet", pages.get(index).number(), pages.size());
  }

  /** Sheets of these titles, with those they go on in. */
  private static void choose(
      PrintRequestAttributeSet wanted, List<Page> pages, List<String> titles) {
    int[][] ranges =
        IntStream.range(0, pages.size())
            .filter(i -> titles.stream().anyMatch(pages.get(i).title()::startsWith))
            .mapToObj(i -> new int[] {i + 1, i + 1})
            .toArray(int[][]::new);
    if (ranges.length > 0) {
      wanted.add(new PageRanges(ranges));
    }
  }
}
