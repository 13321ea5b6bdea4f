package longpoint.wording;

import java.util.EnumMap;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What one package says in one language: its {@code Messages.properties} and the translations
 * beside it. Apostrophes stand for themselves.
 */
public final class Phrasebook {
  private static final ResourceBundle.Control NO_FALLBACK =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

  private static final Map<Language, Map<String, Phrasebook>> BOOKS = new EnumMap<>(Language.class);

  static {
    for (Language language : Language.values()) {
      BOOKS.put(language, new ConcurrentHashMap<>());
    }
  }

  private final ResourceBundle bundle;
  private final Language language;

  private Phrasebook(ResourceBundle bundle, Language language) {
    this.bundle = bundle;
    this.language = language;
  }

  /**
   * @param name of the package, as in {@code plan}
   * @throws java.util.MissingResourceException if that package says nothing, which is a bug
   */
  public static Phrasebook of(String name, Language language) {
    // Asked for with every word the window says; the bundles' own keeping costs a walk each time.
    return BOOKS.get(language).computeIfAbsent(name, n -> open(n, language));
  }

  private static Phrasebook open(String name, Language language) {
    return new Phrasebook(
        ResourceBundle.getBundle("longpoint." + name + ".Messages", language.locale(), NO_FALLBACK),
        language);
  }

  public boolean has(String key) {
    return bundle.containsKey(key);
  }

  /**
   * A message with its places {@code {0}}, {@code {1}}… filled in.
   *
   * @throws java.util.MissingResourceException if there is no such message, which is a bug
   */
  public String text(String key, Object... parts) {
    String pattern = bundle.getString(key);
    if (pattern.indexOf('{') < 0 && language == Language.ENGLISH) {
      return pattern;
    }
    StringBuilder out = new StringBuilder();
    Matcher place = PLACE.matcher(pattern);
    int from = 0;
    while (place.find()) {
      out.append(pattern, from, place.start());
      add(out, parts[Integer.parseInt(place.group(1))]);
      from = place.end();
    }
    return out.append(pattern, from, pattern.length()).toString();
  }

  private void add(StringBuilder out, Object part) {
    String words = part instanceof Worded worded ? worded.in(language) : String.valueOf(part);
    switch (language) {
      case ENGLISH -> out.append(words);
      case FRENCH -> Elision.join(out, words);
    }
  }
}
