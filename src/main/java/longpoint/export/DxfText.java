package longpoint.export;

import java.util.Locale;

/**
 * Lettering as a DXF string holds it: plain ASCII, whatever code page the reader takes for granted.
 *
 * <p>Other characters become {@code \U+XXXX}, which knows four digits only: characters beyond them
 * become U+FFFD. A backslash is written so too, a doubled per cent sign so that it is no control
 * code, a caret with the space the format asks for. Line ends and controls become spaces.
 */
final class DxfText {
  /** A DXF 2000 string holds 2,049 characters (ezdxf documentation); the rest is left off. */
  private static final int LONGEST = 2049;

  private DxfText() {}

  static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      String piece = piece(c);
      if (c == '%' && i < text.length() && text.charAt(i) == '%') {
        piece = code('%');
      }
      if (out.length() + piece.length() > LONGEST) {
        break;
      }
      out.append(piece);
    }
    return out.toString();
  }

  private static String piece(int c) {
    if (c == '^') {
      return "^ ";
    }
    if (c < ' ' || c >= 0x7F && c < 0xA0) {
      return " ";
    }
    boolean plain = c < 0x7F && c != '\\';
    return plain ? String.valueOf((char) c) : code(c);
  }

  private static String code(int c) {
    boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    return String.format(Locale.ROOT, "\\U+%04X", half || c > 0xFFFF ? 0xFFFD : c);
  }
}
