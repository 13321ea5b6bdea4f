package longpoint.wording;

import java.util.ResourceBundle;

/**
 * What one package says in one language: its {@code Messages.properties} and the translations
 * beside it. Apostrophes stand for themselves.
 */
public final class Phrasebook {
  private static final ResourceBundle.Control NO_FALLBACK =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

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
    StringBuilder out = new StringBuilder();
    int i = 0;
    while (i < pattern.length()) {
      int end = pattern.charAt(i) == '{' ? pattern.indexOf('}', i) : -1;
      if (end > 0) {
        add(out, parts[Integer.parseInt(pattern.substring(i + 1, end))]);
        i = end + 1;
      } else {
        out.append(pattern.charAt(i++));
      }
    }
    return out.toString();
  }

  private void add(StringBuilder out, Object part) {
    String words = part instanceof Worded worded ? worded.in(language) : String.valueOf(part);
    switch (language) {
      case ENGLISH -> out.append(words);
      case FRENCH -> Elision.join(out, words);
    }
  }
}
