package longpoint.planfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import longpoint.geometry.Point;
import longpoint.plan.Extras;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** An object in a file, its keys taken one by one; what is left over is kept as extras. */
final class Fields {
  private final JsonValue object;
  private final Map<String, JsonValue> left = new LinkedHashMap<>();

  Fields(JsonValue object) throws PlanFileException {
    this.object = object;
    if (!(object.value() instanceof Map<?, ?> fields)) {
      throw expected(object, Phrase.of("planfile.kind.object"));
    }
    fields.forEach((key, value) -> left.put((String) key, (JsonValue) value));
  }

  /**
   * @param what was expected, as part of a sentence
   */
  static PlanFileException expected(JsonValue value, Worded what) {
    return PlanFileException.at(value, Phrase.of("planfile.expected", what, value.kind()));
  }

  /** In English only. */
  static PlanFileException expected(JsonValue value, String what) {
    return expected(value, Worded.plain(what));
  }

  /** What this package says under a key. */
  static Phrase said(String key, Object... parts) {
    return Phrase.of("planfile." + key, parts);
  }

  JsonValue object() {
    return object;
  }

  Optional<JsonValue> take(String key) {
    return Optional.ofNullable(left.remove(key));
  }

  JsonValue need(String key) throws PlanFileException {
    Optional<JsonValue> value = take(key);
    if (value.isEmpty()) {
      throw PlanFileException.at(object, Phrase.of("planfile.missing", key));
    }
    return value.get();
  }

  double number(String key) throws PlanFileException {
    return number(need(key));
  }

  double number(String key, double otherwise) throws PlanFileException {
    return optionalNumber(key).orElse(otherwise);
  }

  Optional<Double> optionalNumber(String key) throws PlanFileException {
    Optional<JsonValue> value = take(key);
    return value.isEmpty() ? Optional.empty() : Optional.of(number(value.get()));
  }

  /** Above this, areas and products of lengths overflow and nothing could be solved. */
  private static final double LARGEST = 1e100;

  static double number(JsonValue value) throws PlanFileException {
    if (!(value.value() instanceof JsonValue.Number n)) {
      throw expected(value, Phrase.of("planfile.kind.length"));
    }
    double number = Double.parseDouble(n.text());
    if (!(Math.abs(number) <= LARGEST)) {
      throw PlanFileException.at(value, Phrase.of("planfile.tooLarge"));
    }
    return number == 0 ? 0 : number;
  }

  /** A place on the plan, {@code [x, y]}. */
  static Point point(JsonValue value) throws PlanFileException {
    List<JsonValue> xy = list(value);
    if (xy.size() != 2) {
      throw PlanFileException.at(value, Phrase.of("planfile.corner"));
    }
    return new Point(number(xy.get(0)), number(xy.get(1)));
  }

  Optional<Point> optionalPoint(String key) throws PlanFileException {
    Optional<JsonValue> value = take(key);
    return value.isEmpty() ? Optional.empty() : Optional.of(point(value.get()));
  }

  String text(String key) throws PlanFileException {
    return text(need(key));
  }

  String text(String key, String otherwise) throws PlanFileException {
    Optional<JsonValue> value = take(key);
    return value.isEmpty() ? otherwise : text(value.get());
  }

  static String text(JsonValue value) throws PlanFileException {
    if (value.value() instanceof String text) {
      return text;
    }
    throw expected(value, Phrase.of("planfile.kind.text"));
  }

  boolean flag(String key, boolean otherwise) throws PlanFileException {
    Optional<JsonValue> value = take(key);
    if (value.isEmpty()) {
      return otherwise;
    }
    if (value.get().value() instanceof Boolean flag) {
      return flag;
    }
    throw expected(value.get(), Phrase.of("planfile.kind.flag"));
  }

  /** One of a few words. */
  <E> E choice(String key, E otherwise, E[] choices, Function<E, String> word)
      throws PlanFileException {
    Optional<JsonValue> value = take(key);
    return value.isEmpty() ? otherwise : choice(value.get(), choices, word);
  }

  <E> Optional<E> optionalChoice(String key, E[] choices, Function<E, String> word)
      throws PlanFileException {
    Optional<JsonValue> value = take(key);
    return value.isEmpty() ? Optional.empty() : Optional.of(choice(value.get(), choices, word));
  }

  static <E> E choice(JsonValue value, E[] choices, Function<E, String> word)
      throws PlanFileException {
    List<String> words = new ArrayList<>();
    for (E choice : choices) {
      if (word.apply(choice).equals(value.value())) {
        return choice;
      }
      words.add("\"" + word.apply(choice) + "\"");
    }
    Worded found =
        value.value() instanceof String s
            ? Worded.plain(JsonText.quote(shortened(s)))
            : value.kind();
    throw PlanFileException.at(value, Phrase.of("planfile.oneOf", String.join(", ", words), found));
  }

  static String shortened(String text) {
    return text.length() <= 60 ? text : text.substring(0, 60) + "…";
  }

  List<JsonValue> list(String key) throws PlanFileException {
    Optional<JsonValue> value = take(key);
    return value.isEmpty() ? List.of() : list(value.get());
  }

  @SuppressWarnings("unchecked")
  static List<JsonValue> list(JsonValue value) throws PlanFileException {
    if (value.value() instanceof List<?> values) {
      return (List<JsonValue>) values;
    }
    throw expected(value, Phrase.of("planfile.kind.list"));
  }

  /** The keys nobody took, each named to the notes. */
  Extras rest(Notes notes, String where) {
    Map<String, String> extras = new LinkedHashMap<>();
    left.forEach(
        (key, value) -> {
          extras.put(key, JsonText.write(value));
          notes.unknownKey(where, value);
        });
    return extras.isEmpty() ? Extras.NONE : new Extras(extras);
  }
}
