package longpoint.desktop.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Proxy;
import javax.print.PrintService;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.standard.MediaSizeName;
import longpoint.sheets.Paper;
import org.junit.jupiter.api.Test;

/** Sizes of paper as {@code javax.print} lists them, after ISO 216 and ASME Y14.1. */
class PrinterPaperTest {
  /** A printer that holds these, the first of them in its tray. */
  private static PrinterPaper holding(MediaSizeName... held) {
    return new PrinterPaper(
        (PrintService)
            Proxy.newProxyInstance(
                PrinterPaperTest.class.getClassLoader(),
                new Class<?>[] {PrintService.class},
                (proxy, method, args) ->
                    switch (method.getName()) {
                      case "getSupportedAttributeValues" -> held;
                      case "getDefaultAttributeValue" -> held[0];
                      default -> null;
                    }));
  }

  /**
   * Eleven by seventeen inches is called tabloid, ledger or B, by one printer so, by another so.
   */
  @Test
  void paperGoesByWhicheverOfItsNamesThePrinterKnows() {
    for (MediaSizeName name :
        new MediaSizeName[] {MediaSizeName.TABLOID, MediaSizeName.LEDGER, MediaSizeName.B}) {
      assertThat(holding(MediaSizeName.NA_LETTER, name).named(Paper.TABLOID)).contains(name);
      assertThat(PrinterPaper.ours(name)).contains(Paper.TABLOID);
    }
    assertThat(holding(MediaSizeName.ISO_A4).named(Paper.LETTER)).isEmpty();
    assertThat(PrinterPaper.ours(MediaSizeName.ISO_A5)).isEmpty();
  }

  @Test
  void sheetsAreLaidOutForThePaperThePrinterHolds() {
    assertThat(holding(MediaSizeName.NA_LETTER).best(Paper.TABLOID)).isEqualTo(Paper.LETTER);
    assertThat(holding(MediaSizeName.ISO_A4, MediaSizeName.ISO_A3).best(Paper.A3))
        .isEqualTo(Paper.A3);
    assertThat(
            holding(MediaSizeName.ISO_A5, MediaSizeName.ISO_A4, MediaSizeName.ISO_A3)
                .best(Paper.LETTER))
        .isEqualTo(Paper.A3);
    assertThat(holding(MediaSizeName.ISO_A6).best(Paper.A4)).isEqualTo(Paper.A4);
  }

  @Test
  void whatTheDialogDoesNotSayIsWhatThePrinterTakes() {
    var wanted = new HashPrintRequestAttributeSet();
    PrinterPaper printer = holding(MediaSizeName.ISO_A4, MediaSizeName.ISO_A3);
    assertThat(printer.asked(wanted)).contains(MediaSizeName.ISO_A4);
    wanted.add(MediaSizeName.ISO_A3);
    assertThat(printer.asked(wanted)).contains(MediaSizeName.ISO_A3);
  }
}
