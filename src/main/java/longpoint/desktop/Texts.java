package longpoint.desktop;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * The window's words, in the language of the desktop where there is a translation, else in English.
 */
public final class Texts {
  static final String BUNDLE = "longpoint.desktop.Messages";

  private Texts() {}

  /**
   * A text with its places {@code {0}}, {@code {1}}… filled in. Apostrophes stand for themselves.
   *
   * @throws MissingResourceException if there is no such text, which is a bug
   */
  public static String of(String key, Object... parts) {
    String text = bundle().getString(key);
    for (int i = 0; i < parts.length; i++) {
      text = text.replace("{" + i + "}", String.valueOf(parts[i]));
    }
    return text;
  }

  public static boolean has(String key) {
    return bundle().containsKey(key);
  }

  private static ResourceBundle bundle() {
    return ResourceBundle.getBundle(
        BUNDLE,
        Locale.getDefault(Locale.Category.DISPLAY),
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }
}
