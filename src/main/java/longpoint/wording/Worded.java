package longpoint.wording;

import java.util.Locale;
import java.util.Objects;

/** Something that can be put into the words of any language the program ships. */
@FunctionalInterface
public interface Worded {
  String in(Language language);

  /** The words as the beginning of a sentence, with a capital. */
  default String sentence(Language language) {
    String words = in(language);
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** The same in every language, such as a name the user gave. */
  static Worded plain(String text) {
    return new Plain(text);
  }

  /** Nothing at all. */
  static Worded none() {
    return Plain.NONE;
  }

  /** Text that no language changes. */
  record Plain(String text) implements Worded {
    private static final Plain NONE = new Plain("");

    public Plain {
      Objects.requireNonNull(text);
    }

    @Override
    public String in(Language language) {
      return text;
    }

    @Override
    public String sentence(Language language) {
      return text;
    }
  }
}
