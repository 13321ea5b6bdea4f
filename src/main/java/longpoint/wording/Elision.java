package longpoint.wording;

/**
 * Joins French words as they are spoken: {@code de} before a vowel becomes {@code d’}, {@code de
 * le} becomes {@code du}, {@code à le} becomes {@code au} (Grevisse, Le bon usage, on élision and
 * the contracted article; from memory).
 */
final class Elision {
  /** No h: whether it is aspirate is known of the word only, and {@code de} is never wrong. */
  private static final String VOWELS = "aeiouàâäéèêëîïôöùûüœæ";

  private Elision() {}

  static void join(StringBuilder before, String words) {
    if (words.startsWith("le ") && ends(before, "de")) {
      before.setLength(before.length() - 2);
      before.append("u ").append(words, 3, words.length());
    } else if (words.startsWith("les ") && ends(before, "de")) {
      before.setLength(before.length() - 1);
      before.append("s ").append(words, 4, words.length());
    } else if (words.startsWith("le ") && ends(before, "à")) {
      before.setLength(before.length() - 2);
      before.append("au ").append(words, 3, words.length());
    } else if (vowelFirst(words) && (ends(before, "de") || ends(before, "que"))) {
      before.setLength(before.length() - 2);
      before.append('’').append(words);
    } else {
      before.append(words);
    }
  }

  /** Whether a word of these letters stands last, with a space after it. */
  private static boolean ends(StringBuilder text, String word) {
    int start = text.length() - word.length() - 1;
    return start >= 0
        && text.substring(start).equalsIgnoreCase(word + " ")
        && (start == 0 || !Character.isLetter(text.charAt(start - 1)));
  }

  /** A mark such as A1 is spelt out, so nothing is dropped before it. */
  private static boolean vowelFirst(String words) {
    return words.length() > 1
        && VOWELS.indexOf(Character.toLowerCase(words.charAt(0))) >= 0
        && Character.isLowerCase(words.charAt(1));
  }
}
