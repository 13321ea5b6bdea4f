package longpoint.wording;

import java.util.Locale;
import java.util.Optional;

/** The languages the program ships. */
public enum Language {
  ENGLISH(Locale.ENGLISH),
  FRENCH(Locale.FRENCH);

  private final Locale locale;

  Language(Locale locale) {
    this.locale = locale;
  }

  /** As it stands in a plan file and on the command line: {@code en} or {@code fr} (ISO 639-1). */
  public String key() {
    return locale.getLanguage();
  }

  /** The language with a key, if it is shipped. */
  public static Optional<Language> of(String key) {
    for (Language language : values()) {
      if (language.key().equals(key)) {
        return Optional.of(language);
      }
    }
    return Optional.empty();
  }

  /** The language of the user's desktop where it is shipped, else English. */
  public static Language ofDesktop() {
    return of(Locale.getDefault(Locale.Category.DISPLAY).getLanguage()).orElse(ENGLISH);
  }

  Locale locale() {
    return locale;
  }
}
