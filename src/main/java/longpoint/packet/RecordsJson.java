package longpoint.packet;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.util.Locale;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.wording.Language;
import longpoint.wording.Worded;

/**
 * A stage's records as JSON: each component under its own name, a point as {@code [x, y]}, a choice
 * as its name in small letters, words in English. What a record works out from its components is
 * left out.
 */
final class RecordsJson {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
          .addModule(new Jdk8Module())
          .addModule(
              new SimpleModule()
                  .addSerializer(new Written<>(Point.class, RecordsJson::point))
                  .addSerializer(new Written<>(Point3.class, RecordsJson::point))
                  .addSerializer(new Written<>(Enum.class, RecordsJson::choice))
                  .addSerializer(new Written<>(Worded.class, RecordsJson::said)))
          .build();

  private RecordsJson() {}

  static ObjectNode of(Record record) {
    return MAPPER.valueToTree(record);
  }

  private static void point(Point p, JsonGenerator json) throws IOException {
    json.writeStartArray();
    json.writeNumber(p.x());
    json.writeNumber(p.y());
    json.writeEndArray();
  }

  private static void point(Point3 p, JsonGenerator json) throws IOException {
    json.writeStartArray();
    json.writeNumber(p.x());
    json.writeNumber(p.y());
    json.writeNumber(p.z());
    json.writeEndArray();
  }

  private static void choice(Enum<?> choice, JsonGenerator json) throws IOException {
    json.writeString(choice.name().toLowerCase(Locale.ROOT));
  }

  private static void said(Worded words, JsonGenerator json) throws IOException {
    json.writeString(words.in(Language.ENGLISH));
  }

  @FunctionalInterface
  private interface Writing<T> {
    void write(T value, JsonGenerator json) throws IOException;
  }

  private static final class Written<T> extends StdSerializer<T> {
    private static final long serialVersionUID = 1;

    private final transient Writing<T> writing;

    Written(Class<T> type, Writing<T> writing) {
      super(type);
      this.writing = writing;
    }

    @Override
    public void serialize(T value, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      writing.write(value, json);
    }
  }
}
