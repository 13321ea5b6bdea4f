package longpoint.export;

/**
 * Text as XML 1.0 may carry it. Tabs and line ends become spaces, since a line of lettering is one
 * line; characters XML cannot hold (controls, halves of pairs, U+FFFE and U+FFFF) become U+FFFD.
 */
final class XmlText {
  private static final int REPLACEMENT = 0xFFFD;

  private XmlText() {}

  /** Fit for the content of an element and for an attribute in double quotes. */
  static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(c -> append(out, c));
    return out.toString();
  }

  /** Plain text, only the characters replaced that no file should carry. */
  static String allowed(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> c == '\t' || c == '\n' || c == '\r' ? ' ' : c)
        .forEach(c -> out.appendCodePoint(allowed(c) ? c : REPLACEMENT));
    return out.toString();
  }

  private static void append(StringBuilder out, int c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      case '\t', '\n', '\r' -> out.append(' ');
      default -> out.appendCodePoint(allowed(c) ? c : REPLACEMENT);
    }
  }

  private static boolean allowed(int c) {
    boolean control = c < 0x20 || c >= 0x7F && c <= 0x9F;
    boolean half = c >= 0xD800 && c <= 0xDFFF;
    return !control && !half && (c & 0xFFFE) != 0xFFFE;
  }

  /**
   * An XML name from any text: letters, digits and hyphens stay, a slash becomes a full stop, all
   * else its code between underscores. Different texts give different names.
   */
  static String name(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (c < 0x80 && Character.isLetterOrDigit(c) || c == '-') {
                out.appendCodePoint(c);
              } else if (c == '/') {
                out.append('.');
              } else {
                out.append('_').append(Integer.toHexString(c)).append('_');
              }
            });
    boolean startsRight = out.length() > 0 && Character.isLetter(out.charAt(0));
    return startsRight ? out.toString() : "_" + out;
  }
}
