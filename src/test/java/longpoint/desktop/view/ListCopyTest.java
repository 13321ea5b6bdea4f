package longpoint.desktop.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.DataFlavor;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ListCopyTest {
  private static final ListCopy COPY =
      new ListCopy(
          List.of("plane", "slope", "for"),
          List.of(List.of("A", "8/12", "hall & <east>"), List.of("B", "3' 4\"", "a\tb")));

  @Test
  void textIsOneLineToARowAndOneTabBetweenCells() {
    assertThat(COPY.text())
        .isEqualTo("plane\tslope\tfor\nA\t8/12\thall & <east>\nB\t3' 4\"\ta b\n");
  }

  /** A spreadsheet takes 8/12 for a date unless the cell says that it is text (seen in Calc). */
  @Test
  void everyCellOfTheTableSaysThatItIsText() throws Exception {
    String table =
        COPY.html().replaceFirst("(?s).*<table>", "<table>").replaceFirst("</body>.*", "");
    Document read =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(table.getBytes(StandardCharsets.UTF_8)));
    assertThat(read.getElementsByTagName("tr").getLength()).isEqualTo(3);
    var cells = read.getElementsByTagName("td");
    assertThat(cells.getLength()).isEqualTo(6);
    for (int i = 0; i < cells.getLength(); i++) {
      Element cell = (Element) cells.item(i);
      assertThat(cell.getAttribute("style")).isEqualTo("mso-number-format:'\\@'");
      assertThat(cell.getAttribute("sdnum")).isEqualTo("0;0;@");
    }
    assertThat(cells.item(1).getTextContent()).isEqualTo("8/12");
    assertThat(cells.item(2).getTextContent()).isEqualTo("hall & <east>");
  }

  /** Seen in Calc: what can be counted is added up there, what looks like a formula is words. */
  @Test
  void countsAreNumbersAndFormulasAreWords() {
    ListCopy copy =
        new ListCopy(
            List.of("sheet", "pieces", "for"),
            List.of(List.of("01", "12", "=1+1"), List.of("10", "-3", "-1'-6\"")));
    assertThat(copy.html())
        .contains("<td>12</td>", "<td>-3</td>")
        .contains(
            "sdnum=\"0;0;@\">01</td>", "sdnum=\"0;0;@\">10</td>", "sdnum=\"0;0;@\">=1+1</td>");
    assertThat(copy.text()).isEqualTo("sheet\tpieces\tfor\n01\t12\t'=1+1\n10\t-3\t'-1'-6\"\n");
  }

  @Test
  void eachProgramGetsWhatItAsksFor() throws Exception {
    assertThat(COPY.getTransferData(DataFlavor.stringFlavor)).isEqualTo(COPY.text());
    assertThat(COPY.getTransferData(DataFlavor.allHtmlFlavor)).isEqualTo(COPY.html());
    assertThat(COPY.isDataFlavorSupported(DataFlavor.imageFlavor)).isFalse();
  }
}
