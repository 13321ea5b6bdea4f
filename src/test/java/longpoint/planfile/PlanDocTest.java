package longpoint.planfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longpoint.plan.EdgeKind;
import longpoint.plan.PlanCheck;
import longpoint.surface.LineKind;
import org.junit.jupiter.api.Test;

/** The written description of the file says what the schema and the reader do. */
class PlanDocTest {
  private static String doc(String name) throws IOException {
    return Files.readString(Path.of("docs", name));
  }

  @Test
  void theExampleOpensWithoutANote() throws IOException {
    Matcher example =
        Pattern.compile("```json\\n(.*?)```", Pattern.DOTALL).matcher(doc("plan-format.md"));
    assertThat(example.find()).isTrue();
    Opened opened = PlanFile.read(example.group(1).getBytes(StandardCharsets.UTF_8));
    assertThat(opened.notes()).isEmpty();
    assertThat(PlanCheck.check(opened.plan())).isEmpty();
    assertThat(opened.plan().parts()).hasSize(2);
  }

  @Test
  void everyKeyOfTheSchemaIsTold() throws IOException {
    String doc = doc("plan-format.md");
    Set<String> keys = new TreeSet<>();
    keys(new ObjectMapper().readTree(doc("plan.schema.json")), keys);
    assertThat(keys).hasSizeGreaterThan(30);
    assertThat(keys)
        .allMatch(
            key -> doc.contains("| `" + key + "` |") || doc.contains("| **`" + key + "`** |"));
  }

  private static void keys(JsonNode schema, Set<String> keys) {
    if (schema.path("properties").isObject()) {
      schema.path("properties").fieldNames().forEachRemaining(keys::add);
    }
    schema.forEach(child -> keys(child, keys));
  }

  @Test
  void theGlossaryIsInOrderAndHoldsTheKindsOfSidesAndLines() throws IOException {
    List<String> words = new ArrayList<>();
    Matcher row =
        Pattern.compile("^\\| ([^|]+) \\| [^|]+ \\|$", Pattern.MULTILINE)
            .matcher(doc("glossary.md"));
    while (row.find()) {
      words.add(row.group(1).toLowerCase(Locale.ROOT).replace('-', ' '));
    }
    List<String> entries = words.subList(1, words.size());
    assertThat(entries).hasSizeGreaterThan(80).isSorted().doesNotHaveDuplicates();
    for (EdgeKind kind : EdgeKind.values()) {
      String word = kind == EdgeKind.OPEN ? "open side" : kind.key();
      assertThat(entries).contains(word);
    }
    for (LineKind kind : LineKind.values()) {
      assertThat(entries).contains(kind.key());
    }
  }
}
