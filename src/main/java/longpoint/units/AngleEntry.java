package longpoint.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longpoint.wording.Phrase;

/** Reads an angle as a person types it: a number of degrees, the sign ° or {@code deg} optional. */
public final class AngleEntry {
  private static final Pattern DEGREES =
      Pattern.compile("\\s*([-+]?\\d{1,6}(?:[.,]\\d{1,12})?)\\s*(?:°|deg)?\\s*");

  private AngleEntry() {}

  /** Degrees, as typed. */
  public static double read(String typed) throws EntryException {
    Matcher degrees = DEGREES.matcher(typed);
    if (!degrees.matches()) {
      throw new EntryException(typed, 0, Phrase.of("units.angle", typed.strip()));
    }
    return Double.parseDouble(degrees.group(1).replace(',', '.'));
  }
}
