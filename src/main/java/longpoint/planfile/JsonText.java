package longpoint.planfile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import longpoint.wording.Phrase;

/**
 * Reads JSON text into values that know their place. Strict JSON in UTF-8; a file may come from a
 * stranger, so its size, depth and the length of its texts are limited.
 */
final class JsonText {
  /** A plan of a thousand corners is some 200 kB. */
  static final int MOST_BYTES = 16 << 20;

  private static final int DEEPEST = 60;
  private static final int LONGEST_TEXT = 200_000;
  private static final int LONGEST_NUMBER = 400;
  private static final int LONGEST_KEY = 1000;

  private static final JsonFactory FACTORY =
      new JsonFactoryBuilder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxStringLength(LONGEST_TEXT)
                  .maxNumberLength(LONGEST_NUMBER)
                  .maxNameLength(LONGEST_KEY)
                  .build())
          .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
          .build();

  private JsonText() {}

  static JsonValue read(InputStream in) throws IOException {
    return read(in.readNBytes(MOST_BYTES + 1));
  }

  static JsonValue read(byte[] bytes) throws IOException {
    if (bytes.length > MOST_BYTES) {
      throw PlanFileException.whole(Phrase.of("planfile.noPlan", MOST_BYTES >> 20));
    }
    return parse(decode(bytes));
  }

  private static String decode(byte[] bytes) throws PlanFileException {
    ByteBuffer from = ByteBuffer.wrap(bytes);
    CharBuffer to = CharBuffer.allocate(bytes.length);
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CoderResult result = decoder.decode(from, to, true);
    to.flip();
    if (result.isError()) {
      String before = to.toString();
      int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
      int column = before.length() - before.lastIndexOf('\n');
      throw PlanFileException.at(line, column, Phrase.of("planfile.notUtf8"));
    }
    String text = to.toString();
    return text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  private static JsonValue parse(String text) throws IOException {
    try (JsonParser parser = FACTORY.createParser(text)) {
      if (parser.nextToken() == null) {
        throw PlanFileException.whole(Phrase.of("planfile.empty"));
      }
      JsonValue value = value(parser, JsonPath.TOP);
      if (parser.nextToken() != null) {
        JsonLocation at = parser.currentTokenLocation();
        throw PlanFileException.at(at.getLineNr(), at.getColumnNr(), Phrase.of("planfile.more"));
      }
      return value;
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation() == null ? JsonLocation.NA : e.getLocation();
      throw PlanFileException.at(at.getLineNr(), at.getColumnNr(), explain(e));
    }
  }

  /** The parser's own words name its classes and settings, so they are left out. */
  private static Phrase explain(JsonProcessingException e) {
    return Phrase.of(
        e instanceof StreamConstraintsException ? "planfile.huge" : "planfile.malformed");
  }

  private static JsonValue value(JsonParser parser, JsonPath path) throws IOException {
    JsonLocation at = parser.currentTokenLocation();
    JsonToken token = parser.currentToken();
    Object value =
        switch (token) {
          case START_OBJECT -> object(parser, path);
          case START_ARRAY -> array(parser, path);
          case VALUE_STRING -> parser.getText();
          case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonValue.Number(parser.getText());
          case VALUE_TRUE -> true;
          case VALUE_FALSE -> false;
          case VALUE_NULL -> null;
          default -> throw new AssertionError(token);
        };
    return new JsonValue(value, path, at.getLineNr(), at.getColumnNr());
  }

  private static Map<String, JsonValue> object(JsonParser parser, JsonPath path)
      throws IOException {
    Map<String, JsonValue> fields = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      JsonLocation at = parser.currentTokenLocation();
      parser.nextToken();
      JsonValue value = value(parser, path.key(key));
      if (fields.put(key, value) != null) {
        throw PlanFileException.at(
            new JsonValue(null, path.key(key), at.getLineNr(), at.getColumnNr()),
            Phrase.of("planfile.twice"));
      }
    }
    return fields;
  }

  private static List<JsonValue> array(JsonParser parser, JsonPath path) throws IOException {
    List<JsonValue> values = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      values.add(value(parser, path.index(values.size())));
    }
    return values;
  }

  /** The value as compact JSON, its numbers digit for digit. */
  static String write(JsonValue value) {
    StringBuilder out = new StringBuilder();
    write(value, out);
    return out.toString();
  }

  private static void write(JsonValue value, StringBuilder out) {
    Object v = value.value();
    if (v instanceof Map<?, ?> fields) {
      String comma = "{";
      for (Map.Entry<?, ?> field : fields.entrySet()) {
        out.append(comma).append(quote((String) field.getKey())).append(':');
        write((JsonValue) field.getValue(), out);
        comma = ",";
      }
      out.append(fields.isEmpty() ? "{}" : "}");
    } else if (v instanceof List<?> values) {
      String comma = "[";
      for (Object item : values) {
        out.append(comma);
        write((JsonValue) item, out);
        comma = ",";
      }
      out.append(values.isEmpty() ? "[]" : "]");
    } else if (v instanceof String text) {
      out.append(quote(text));
    } else if (v instanceof JsonValue.Number number) {
      out.append(number.text());
    } else {
      out.append(v);
    }
  }

  /** The text that a JSON string stands for; empty if it is none. */
  static Optional<String> string(String json) {
    try {
      return parse(json).value() instanceof String text ? Optional.of(text) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Text in quotes. Half a surrogate pair is escaped, since UTF-8 cannot hold it. */
  static String quote(String text) {
    StringBuilder out = new StringBuilder(text.length() + 2).append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean pair =
          Character.isHighSurrogate(c)
              && i + 1 < text.length()
              && Character.isLowSurrogate(text.charAt(i + 1));
      if (pair) {
        out.append(c).append(text.charAt(++i));
      } else if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c == '\n') {
        out.append("\\n");
      } else if (c < 0x20 || c == 0x7f || Character.isSurrogate(c)) {
        out.append("\\u").append(String.format(Locale.ROOT, "%04x", (int) c));
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }
}
