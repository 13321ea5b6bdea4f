package longpoint.editor;

import longpoint.wording.Language;
import longpoint.wording.Phrasebook;

/** The editor's words, in the language of the user's desktop where there is a translation. */
public final class Messages {
  private Messages() {}

  /**
   * A message with its places {@code {0}}, {@code {1}}… filled in. Apostrophes need no doubling.
   *
   * @throws java.util.MissingResourceException if there is no such message, which is a bug
   */
  public static String text(String key, Object... parts) {
    return Phrasebook.of("editor", Language.ofDesktop()).text(key, parts);
  }
}
