package longpoint.wording;

import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Something to be said: which words, and what goes into their places. Two phrases that say the same
 * are equal.
 *
 * @param key package, a point, and the key in that package's {@code Messages}, as in {@code
 *     plan.noEave}
 * @param parts for the places {@code {0}}, {@code {1}}…
 */
public record Phrase(String key, List<Worded> parts) implements Worded {
  public Phrase {
    Objects.requireNonNull(key);
    parts = List.copyOf(parts);
  }

  /**
   * @param parts words of any language; a name, which is said as it is; or a whole number. A length
   *     or a slope is not a number: it is said by the records in {@code units}.
   */
  public static Phrase of(String key, Object... parts) {
    return new Phrase(key, Stream.of(parts).map(Phrase::worded).toList());
  }

  private static Worded worded(Object part) {
    if (part instanceof Worded worded) {
      return worded;
    }
    if (part instanceof String || part instanceof Integer || part instanceof Long) {
      return Worded.plain(String.valueOf(part));
    }
    throw new IllegalArgumentException("not fit to be read: " + part);
  }

  /** The phrase under another key with the same parts. */
  public Phrase under(String otherKey) {
    return new Phrase(otherKey, parts);
  }

  /** The phrase with something else in its places, at any depth. */
  public Phrase with(UnaryOperator<Worded> change) {
    return new Phrase(
        key,
        parts.stream()
            .map(p -> change.apply(p instanceof Phrase inner ? inner.with(change) : p))
            .toList());
  }

  /**
   * @throws java.util.MissingResourceException if there is no such message, which is a bug
   */
  @Override
  public String in(Language language) {
    int point = key.indexOf('.');
    return Phrasebook.of(key.substring(0, point), language)
        .text(key.substring(point + 1), parts.toArray());
  }
}
