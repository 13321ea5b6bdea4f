package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Read back by the grammar of RFC 4180, section 2. */
class CsvWriterTest {
  private static String text(Table... tables) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CsvWriter.write(List.of(tables), out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static Table table(String title, String... cells) {
    List<String> heads = List.of(cells).stream().map(c -> "head").toList();
    return new Table(title, heads, List.of(List.of(cells)), List.of());
  }

  @Test
  void everyLineNamesItsTableAndHasAsManyFields() throws IOException {
    Table wide =
        new Table(
            "Trusses",
            List.of("mark", "span", "height"),
            List.of(List.of("T1", "14'-0\"", "5'-8\"")),
            List.of("the supplier rules, always"));
    assertThat(records(text(wide, table("Deck", "main/0"))))
        .containsExactly(
            List.of("Trusses", "mark", "span", "height"),
            List.of("Trusses", "T1", "14'-0\"", "5'-8\""),
            List.of("Trusses", "the supplier rules, always", "", ""),
            List.of("Deck", "head", "", ""),
            List.of("Deck", "main/0", "", ""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a,b", "say \"so\"", "two\r\nlines", "26.6\u00b0 \u5c4b", "\"", ""})
  void anyCellComesBack(String cell) throws IOException {
    assertThat(records(text(table("t", cell, "after"))).get(1)).containsExactly("t", cell, "after");
  }

  /** The signs named by OWASP under "CSV Injection" (from memory). */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+2",
        "+cmd|' /C calc'!A0",
        "-2+3",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "  =HYPERLINK(\"x\")",
        "-"
      })
  void formulasAreDefused(String formula) throws IOException {
    assertThat(records(text(table(formula, formula))).get(1))
        .containsExactly("'" + formula, "'" + formula);
  }

  @ParameterizedTest
  @CsvSource({"-3.5", "+2", "12.25", "-0"})
  void numbersStayNumbers(String number) throws IOException {
    assertThat(records(text(table("t", number))).get(1)).containsExactly("t", number);
  }

  /** Records of RFC 4180 after a byte order mark; anything the grammar does not know fails. */
  private static List<List<String>> records(String csv) {
    assertThat(csv).startsWith("\uFEFF").endsWith("\r\n");
    List<List<String>> records = new ArrayList<>();
    List<String> record = new ArrayList<>();
    int at = 1;
    while (at < csv.length()) {
      StringBuilder field = new StringBuilder();
      if (csv.charAt(at) == '"') {
        at++;
        while (csv.charAt(at) != '"' || csv.startsWith("\"\"", at)) {
          at += csv.charAt(at) == '"' ? 1 : 0;
          field.append(csv.charAt(at++));
        }
        at++;
      } else {
        while (csv.charAt(at) != ',' && csv.charAt(at) != '\r') {
          assertThat(csv.charAt(at)).isNotIn('"', '\n');
          field.append(csv.charAt(at++));
        }
      }
      record.add(field.toString());
      if (csv.startsWith("\r\n", at)) {
        records.add(List.copyOf(record));
        record.clear();
        at += 2;
      } else {
        assertThat(csv.charAt(at++)).isEqualTo(',');
      }
    }
    return records;
  }
}
