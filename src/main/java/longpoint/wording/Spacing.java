package longpoint.wording;

import java.util.regex.Pattern;

/** Spaces that a line of text must not be broken at. */
public final class Spacing {
  /**
   * Whole inches and their fraction: a line that ends after the first is read as another length.
   */
  private static final Pattern FRACTION = Pattern.compile("(?<=\\d) (?=\\d+/\\d)");

  /** French sets these off with a space (Imprimerie nationale, Lexique; from memory). */
  private static final Pattern BEFORE_SIGN = Pattern.compile(" (?=[:;?!»%](?:\\s|$|[.,]))");

  private static final Pattern OPENING = Pattern.compile("(?<=«) ");

  /** A figure and its unit. */
  private static final Pattern UNIT =
      Pattern.compile("(?<=\\d) (?=(?:mm|m²|pi²|sq ft)(?!\\p{Alnum}))");

  /** The number of a thing: {@code n° 2}, {@code no. 2}. */
  private static final Pattern NUMBERED = Pattern.compile("(?<=\\b[nN]°|\\bno\\.) (?=\\d)");

  private Spacing() {}

  /** The text with ordinary spaces only, for lists that programs read too. */
  public static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  /** The text with no-break spaces where one line is not to end. */
  public static String kept(String text) {
    String kept = text;
    for (Pattern space : new Pattern[] {FRACTION, BEFORE_SIGN, OPENING, UNIT, NUMBERED}) {
      kept = space.matcher(kept).replaceAll("\u00a0");
    }
    return kept;
  }
}
