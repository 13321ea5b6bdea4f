package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import longpoint.wording.Language;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Read back by the library's reader; {@code check-packet.sh} reads whole packets by others. */
class XlsxWriterTest {
  private static final Workbook BOOK =
      new Workbook(
          Language.ENGLISH,
          "Shed & \u0007 <barn>",
          List.of("Lengths in feet and inches."),
          List.of("Roof work is work at height."),
          List.of(
              new Table(
                  "Rafters, to cut: all",
                  List.of("mark", "number", "length", "cut"),
                  List.of(
                      List.of("=1+1", "12", "4'-5 7/16\"", "33.7°"),
                      List.of("@b", "3", "0'-0 1/2\"", "")),
                  List.of("-note")),
              new Table("Rafters", List.of("a"), List.of(), List.of())));

  private static byte[] bytes() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    XlsxWriter.write(BOOK, out);
    return out.toByteArray();
  }

  @Test
  void everyTableHasItsSheetBehindTheCautions() throws IOException {
    try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(bytes()))) {
      assertThat(book.getSheets().map(Sheet::getName))
          .containsExactly("Read first", "Rafters", "Rafters 2");
      List<Row> first = book.getFirstSheet().read();
      assertThat(first.get(0).getCellText(0)).isEqualTo("Shed & \uFFFD <barn>");
      assertThat(first).anyMatch(r -> r.getCellText(0).equals("Roof work is work at height."));
    }
  }

  @Test
  void figuresAreNumbersBesideTheirTextAndNothingIsAFormula() throws IOException {
    try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(bytes()))) {
      List<Row> rows = book.findSheet("Rafters").orElseThrow().read();
      assertThat(rows.get(0).stream().map(c -> c.getText()))
          .containsExactly("mark", "number", "length", "length, in", "cut", "cut, deg");
      assertThat(rows.get(1).getCell(0).getType()).isEqualTo(CellType.STRING);
      assertThat(rows.get(1).getCellText(0)).isEqualTo("=1+1");
      assertThat(rows.get(1).getCellAsNumber(1).orElseThrow()).isEqualByComparingTo("12");
      assertThat(rows.get(1).getCellText(2)).isEqualTo("4'-5 7/16\"");
      assertThat(rows.get(1).getCellAsNumber(3).orElseThrow()).isEqualByComparingTo("53.4375");
      assertThat(rows.get(1).getCellAsNumber(5).orElseThrow()).isEqualByComparingTo("33.7");
      assertThat(rows.get(3).getCellText(0)).isEqualTo("-note");
      for (Row row : rows) {
        assertThat(row.stream()).allMatch(c -> c == null || c.getType() != CellType.FORMULA);
      }
    }
  }

  @Test
  void theHeadStaysInSightAndNoClockIsInTheFile() throws IOException {
    String all = "";
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes()))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        assertThat(entry.getTimeLocal().getYear()).isEqualTo(1980);
        all += new String(zip.readAllBytes(), StandardCharsets.UTF_8);
      }
    }
    assertThat(all).contains("state=\"frozen\"").doesNotContain("<f>", "dcterms:created");
    assertThat(bytes()).isEqualTo(bytes());
  }

  /** 4 ft 5 7/16 in by hand: 48 + 5 + 0.4375. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "4'-5 7/16\", 53.4375, in",
        "-1'-0 1/2\", -12.5, in",
        "7/16\", 0.4375, in",
        "22 1/2\", 22.5, in",
        "33.7°, 33.7, deg",
        "1380.0 sq ft, 1380, area",
        "28.40 m², 28.4, metres",
        "12.5 %, 12.5, percent",
        "|33,7°|, 33.7, deg",
        "|133,2 pi²|, 133.2, area",
        "|12,37 m²|, 12.37, metres",
        "|2,50|, 2.5, ||"
      })
  void printedFiguresAreReadAsTheyStand(String text, double value, String unit) {
    assertThat(ReadFigure.of(text)).contains(new ReadFigure(value, unit));
  }

  @Test
  void wordsAreNoFigures() {
    for (String text : new String[] {"", "\"", "A1", "8/12", "1'-6\" 3'-6\"", "2 x 4", "1/0\"x"}) {
      assertThat(ReadFigure.of(text)).as(text).isEqualTo(Optional.empty());
    }
  }
}
