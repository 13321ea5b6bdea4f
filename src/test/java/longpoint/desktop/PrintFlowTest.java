package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.print.DocFlavor;
import javax.print.StreamPrintServiceFactory;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.MediaSizeName;
import javax.print.attribute.standard.PageRanges;
import longpoint.desktop.panel.StatusLine;
import longpoint.desktop.paper.PrintFlow;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.drawing.Page;
import longpoint.drawing.Pen;
import longpoint.geometry.Point;
import longpoint.sheets.Paper;
import org.junit.jupiter.api.Test;

/**
 * Sheets through a real print service of the platform, its PostScript read back: pages, paper and
 * lengths in points, 72 to the inch (Adobe, PostScript Language Reference; from memory).
 */
class PrintFlowTest {
  private static final Layer LAYER = new Layer("T-TEST", "Test", Pen.solid(0.5), Ink.MAIN);

  /** A level line, 360 points on paper. */
  private static final double LINE_MM = 127;

  private static final Pattern PAGE_SIZE = Pattern.compile("/PageSize \\[([0-9.]+) ([0-9.]+)]");
  private static final Pattern PLACE = Pattern.compile("(-?[0-9.]+) (-?[0-9.]+) [ML]\\b");
  private static final Pattern MATRIX =
      Pattern.compile("\\[(-?[0-9.]+) (-?[0-9.]+) [^\\]]*] concat");

  private final ByteArrayOutputStream printed = new ByteArrayOutputStream();
  private final ScriptedDialogs dialogs = new ScriptedDialogs();
  private final List<Paper> laid = new ArrayList<>();

  /** As many sheets as the paper is small, the way tables run on. */
  private List<Page> layout(Paper paper) {
    laid.add(paper);
    int many = paper == Paper.LETTER || paper == Paper.A4 ? 6 : 3;
    return IntStream.range(0, many)
        .mapToObj(
            i ->
                new Page(
                    "0" + (i + 1),
                    many == 3 ? "Sheet " + i : "Sheet " + i / 2 + (i % 2 == 0 ? "" : ", continued"),
                    paper.widthMm(),
                    paper.heightMm(),
                    List.of(
                        Mark.Path.line(new Point(50, 60), new Point(50 + LINE_MM, 60), LAYER, ""))))
        .toList();
  }

  /** The platform's PostScript writer. */
  private PrinterJob printer() {
    var service =
        StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
            DocFlavor.SERVICE_FORMATTED.PRINTABLE, "application/postscript")[0]
            .getPrintService(printed);
    PrinterJob job = PrinterJob.getPrinterJob();
    try {
      job.setPrintService(service);
    } catch (PrinterException e) {
      throw new AssertionError(e);
    }
    return job;
  }

  private String print(
      Paper paper, List<String> chosen, BiPredicate<PrinterJob, PrintRequestAttributeSet> answers) {
    WindowDriver.needDisplay();
    dialogs.printing = answers;
    Errands errands = WindowDriver.onEvents(() -> new Errands(new StatusLine()));
    WindowDriver.onEvents(
        () -> {
          new PrintFlow(dialogs, errands, this::printer)
              .print(new PrintFlow.Sheets("Test job", this::layout, paper, chosen));
          return null;
        });
    WindowDriver.until("it is printed", () -> !errands.busy());
    assertThat(dialogs.told).isEmpty();
    return printed.toString(StandardCharsets.ISO_8859_1);
  }

  private static int pages(String postScript) {
    return (int) Pattern.compile("\\bshowpage\\b").matcher(body(postScript)).results().count();
  }

  private static String body(String postScript) {
    return postScript.substring(postScript.indexOf("%%EndSetup") + 1);
  }

  /** Width and height of the paper as it is fed, points. */
  private static double[] paper(String postScript) {
    MatchResult size = PAGE_SIZE.matcher(postScript).results().reduce((a, b) -> b).orElseThrow();
    return new double[] {Double.parseDouble(size.group(1)), Double.parseDouble(size.group(2))};
  }

  /**
   * How long the inked line of the last page is but for its round ends, points: its path in units
   * of the sheet, by what the page's matrix makes of one in dots of 300 to the inch.
   */
  private static double inked(String postScript) {
    String path = postScript.substring(postScript.lastIndexOf("\nN\n"));
    var along =
        PLACE
            .matcher(path)
            .results()
            .mapToDouble(m -> Double.parseDouble(m.group(1)))
            .summaryStatistics();
    assertThat(along.getCount()).isPositive();
    MatchResult matrix = MATRIX.matcher(postScript).results().reduce((a, b) -> b).orElseThrow();
    double dots = Math.hypot(number(matrix, 1), number(matrix, 2));
    return (along.getMax() - along.getMin()) * dots * 72 / 300;
  }

  private static double number(MatchResult in, int group) {
    return Double.parseDouble(in.group(group));
  }

  @Test
  void letterAndA4ArePrintedToScale() {
    for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
      printed.reset();
      String ps = print(paper, List.of(), (job, wanted) -> true);
      assertThat(pages(ps)).isEqualTo(6);
      assertThat(paper(ps)[0]).isCloseTo(paper.heightMm() * 72 / 25.4, within(0.6));
      assertThat(paper(ps)[1]).isCloseTo(paper.widthMm() * 72 / 25.4, within(0.6));
      assertThat(inked(ps)).isCloseTo(LINE_MM * 72 / 25.4, within(0.5));
    }
    assertThat(laid).containsExactly(Paper.LETTER, Paper.A4);
  }

  @Test
  void onlyTheChosenSheetsArePrinted() {
    assertThat(pages(print(Paper.A3, List.of("Sheet 1"), (job, wanted) -> true))).isEqualTo(1);
  }

  @Test
  void otherPaperChosenInTheDialogIsLaidOutAnewWithTheSameSheets() {
    String ps =
        print(
            Paper.A3,
            List.of(),
            (job, wanted) -> {
              wanted.add(MediaSizeName.ISO_A4);
              wanted.add(new PageRanges(2, 2));
              return true;
            });
    assertThat(laid).containsExactly(Paper.A3, Paper.A4);
    assertThat(pages(ps)).as("the second sheet and its continuation").isEqualTo(2);
    assertThat(inked(ps)).isCloseTo(LINE_MM * 72 / 25.4, within(0.5));
  }

  @Test
  void onPaperNobodyLaysOutForItIsAskedAndMadeSmaller() {
    dialogs.smaller = true;
    String ps =
        print(
            Paper.A4,
            List.of(),
            (job, wanted) -> {
              wanted.add(MediaSizeName.ISO_A5);
              return true;
            });
    assertThat(dialogs.asked).isEqualTo(1);
    double share = Math.min((210 - 12.7) / 297, (148 - 12.7) / 210);
    assertThat(inked(ps)).isCloseTo(share * LINE_MM * 72 / 25.4, within(1.0));
  }

  @Test
  void nothingIsPrintedOnceItIsDeclined() {
    assertThat(print(Paper.A4, List.of(), (job, wanted) -> false)).doesNotContain("showpage");
    assertThat(
            print(
                Paper.A4,
                List.of(),
                (job, wanted) -> {
                  wanted.add(MediaSizeName.ISO_A5);
                  return true;
                }))
        .doesNotContain("showpage");
  }
}
