package longpoint.desktop;

import longpoint.wording.Language;
import longpoint.wording.Phrasebook;

/**
 * The window's words, in the language of the desktop where there is a translation, else in English.
 */
public final class Texts {
  private Texts() {}

  /**
   * A text with its places {@code {0}}, {@code {1}}… filled in. Apostrophes stand for themselves.
   *
   * @throws java.util.MissingResourceException if there is no such text, which is a bug
   */
  public static String of(String key, Object... parts) {
    return words().text(key, parts);
  }

  public static boolean has(String key) {
    return words().has(key);
  }

  /** What the engine says is shown in this language. */
  public static Language language() {
    return Language.ofDesktop();
  }

  private static Phrasebook words() {
    return Phrasebook.of("desktop", language());
  }
}
