package longpoint.units;

import java.util.Objects;
import longpoint.wording.Phrase;

/**
 * Typed text with a finger on one character. Printers' marks are read as the plain ones they stand
 * for, one for one, so that positions hold.
 */
final class Typed {
  /** Long enough for any honest sum; short enough that reading it costs nothing. */
  private static final int LONGEST = 500;

  private final String typed;
  private final char[] plain;
  private int at;

  Typed(String typed) throws EntryException {
    this.typed = Objects.requireNonNull(typed);
    if (typed.length() > LONGEST) {
      throw new EntryException(typed.substring(0, LONGEST), LONGEST, Phrase.of("units.tooLong"));
    }
    this.plain = typed.toCharArray();
    for (int i = 0; i < plain.length; i++) {
      plain[i] = plain(plain[i]);
    }
  }

  private static char plain(char c) {
    return switch (c) {
      case '′', '’', '‘', '´', 'ʹ' -> '\'';
      case '″', '”', '“', 'ʺ' -> '"';
      case '−', '–', '—', '‐', '‑' -> '-';
      case '×', '·' -> '*';
      case '÷', '⁄' -> '/';
      case '\u00a0', '\u2007', '\u2009', '\u202f', '\t' -> ' ';
      default -> Character.toLowerCase(c);
    };
  }

  int at() {
    return at;
  }

  void backTo(int position) {
    at = position;
  }

  void advance(int by) {
    at += by;
  }

  /** The character under the finger, or the one {@code ahead} of it; 0 past either end. */
  char peek(int ahead) {
    int i = at + ahead;
    return i >= 0 && i < plain.length ? plain[i] : 0;
  }

  char peek() {
    return peek(0);
  }

  boolean atEnd() {
    return at >= plain.length;
  }

  /** Whether spaces were passed. */
  boolean skipSpaces() {
    int from = at;
    while (peek() == ' ') {
      at++;
    }
    return at > from;
  }

  boolean take(char c) {
    if (peek() != c) {
      return false;
    }
    at++;
    return true;
  }

  /** Digits from the finger on; may be empty. */
  String takeDigits() {
    int from = at;
    while (isDigit(peek())) {
      at++;
    }
    return new String(plain, from, at - from);
  }

  /** Letters from the finger on; may be empty. */
  String takeLetters() {
    int from = at;
    while (Character.isLetter(peek())) {
      at++;
    }
    return new String(plain, from, at - from);
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** What was typed from one place to another, outer spaces left off. */
  String text(int from, int to) {
    return typed.substring(from, to).strip();
  }

  /**
   * @param key of what is wrong among what this package says; its cure stands beside it
   */
  EntryException wrong(int position, String key, Object... parts) {
    return new EntryException(typed, position, Phrase.of("units." + key, parts));
  }

  EntryException wrong(int position, Phrase wrong, Phrase cure) {
    return new EntryException(typed, position, wrong, cure);
  }
}
