package longpoint.editor;

import java.util.Set;
import java.util.regex.Pattern;
import longpoint.units.EntryException;
import longpoint.units.LengthEntry;
import longpoint.units.LengthUnit;
import longpoint.wording.Language;

/**
 * Reads what is typed in the middle of a gesture: a length, two lengths with an {@code x} between
 * them, a length and an angle with a {@code <} between them, or an angle alone. Where words are
 * wanted, everything is words. Bad text gives words, never an exception.
 */
public final class TypedText {
  private static final Pattern BY = Pattern.compile("\\s*[xX×]\\s*");
  private static final Pattern TOWARD = Pattern.compile("\\s*[<@∠]\\s*");
  private static final Pattern ANGLE =
      Pattern.compile("\\s*([-+]?\\d{1,6}(?:[.,]\\d{1,12})?)\\s*(?:°|deg)?\\s*");

  private TypedText() {}

  /**
   * @param wants what the place can use, at least one kind
   * @param unit of a bare number
   */
  public static Reading read(String text, Set<Entry.Kind> wants, LengthUnit unit) {
    if (wants.contains(Entry.Kind.WORDS)) {
      return new Reading.Good(new Entry.Words(text.strip()));
    }
    String[] sides = BY.split(text, -1);
    String[] polar = TOWARD.split(text, -1);
    try {
      if (sides.length == 2 && wants.contains(Entry.Kind.SIZE)) {
        return new Reading.Good(new Entry.Size(length(sides[0], unit), length(sides[1], unit)));
      }
      if (polar.length == 2 && wants.contains(Entry.Kind.POLAR)) {
        return isAngle(polar[1])
            ? new Reading.Good(new Entry.Polar(length(polar[0], unit), degrees(polar[1])))
            : new Reading.Bad(Messages.text("typed.angle", polar[1]));
      }
      if (wants.contains(Entry.Kind.LENGTH)) {
        return new Reading.Good(new Entry.Length(length(text, unit)));
      }
    } catch (EntryException e) {
      return new Reading.Bad(e.message(Language.ofDesktop()));
    }
    if (wants.contains(Entry.Kind.ANGLE)) {
      return isAngle(text)
          ? new Reading.Good(new Entry.Angle(degrees(text)))
          : new Reading.Bad(Messages.text("typed.angle", text));
    }
    return new Reading.Bad(Messages.text("typed.size", text));
  }

  private static double length(String text, LengthUnit unit) throws EntryException {
    return LengthEntry.read(text, unit, LengthEntry.Allowed.POSITIVE);
  }

  private static boolean isAngle(String text) {
    return ANGLE.matcher(text).matches();
  }

  private static double degrees(String text) {
    return Double.parseDouble(ANGLE.matcher(text).replaceFirst("$1").replace(',', '.'));
  }
}
