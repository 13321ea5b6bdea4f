package longpoint.desktop.panel;

import longpoint.wording.Spacing;

/** Words from the user's plan inside Swing's HTML, where they must stay words. */
public final class Html {
  private Html() {}

  public static String plain(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  /** Words of several lines, broken where they say so. */
  public static String lines(String words) {
    return words.contains("\n") ? "<html>" + plain(words).replace("\n", "<br>") : words;
  }

  /** Words that wrap at a width in pixels. */
  public static String wrapped(String words, int width) {
    // Swing breaks a line after a raised comma, in the middle of d’aplomb; not after a plain one.
    String whole = Spacing.kept(words.replaceAll("(?<=\\pL)’(?=\\pL)", "'"));
    // Swing's HTML takes a pixel of CSS for 1.3 of the screen's.
    return "<html><div style='width:" + Math.round(width / 1.3) + "px'>" + plain(whole) + "</div>";
  }
}
