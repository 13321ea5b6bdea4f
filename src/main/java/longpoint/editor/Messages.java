package longpoint.editor;

import java.util.Locale;
import java.util.ResourceBundle;

/** The editor's words, in the language of the user's desktop where there is a translation. */
public final class Messages {
  private static final String BUNDLE = "longpoint.editor.Messages";

  private Messages() {}

  /**
   * A message with its places {@code {0}}, {@code {1}}… filled in. Apostrophes need no doubling.
   *
   * @throws java.util.MissingResourceException if there is no such message, which is a bug
   */
  public static String text(String key, Object... parts) {
    return fill(
        ResourceBundle.getBundle(BUNDLE, Locale.getDefault(Locale.Category.DISPLAY)).getString(key),
        parts);
  }

  private static String fill(String pattern, Object... parts) {
    StringBuilder out = new StringBuilder();
    int i = 0;
    while (i < pattern.length()) {
      int end = pattern.charAt(i) == '{' ? pattern.indexOf('}', i) : -1;
      if (end > 0) {
        out.append(parts[Integer.parseInt(pattern.substring(i + 1, end))]);
        i = end + 1;
      } else {
        out.append(pattern.charAt(i++));
      }
    }
    return out.toString();
  }
}
