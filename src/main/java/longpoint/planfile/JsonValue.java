package longpoint.planfile;

import java.util.List;
import java.util.Map;
import longpoint.wording.Phrase;

/**
 * A value in a file and where it stands.
 *
 * @param value a {@code Map<String, JsonValue>} in file order, a {@code List<JsonValue>}, a {@code
 *     String}, a {@link Number}, a {@code Boolean}, or null
 * @param line from 1
 * @param column from 1, in characters
 */
record JsonValue(Object value, JsonPath path, int line, int column) {
  /** A number as it stands in the file, digit for digit. */
  record Number(String text) {}

  /** What kind of value it is, for messages. */
  Phrase kind() {
    if (value == null) {
      return Phrase.of("planfile.kind.null");
    }
    if (value instanceof Map) {
      return Phrase.of("planfile.kind.object");
    }
    if (value instanceof List) {
      return Phrase.of("planfile.kind.list");
    }
    if (value instanceof String) {
      return Phrase.of("planfile.kind.text");
    }
    return Phrase.of(value instanceof Boolean ? "planfile.kind.flag" : "planfile.kind.number");
  }
}
