package longpoint.planfile;

import java.util.List;
import java.util.Map;

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
  String kind() {
    if (value == null) {
      return "null";
    }
    if (value instanceof Map) {
      return "an object { }";
    }
    if (value instanceof List) {
      return "a list [ ]";
    }
    if (value instanceof String) {
      return "text";
    }
    return value instanceof Boolean ? "true or false" : "a number";
  }
}
