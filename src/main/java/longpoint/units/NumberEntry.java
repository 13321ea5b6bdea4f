package longpoint.units;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import longpoint.wording.Phrase;

/** Reads plain numbers and lists of lengths as they are typed into a field. */
public final class NumberEntry {
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,12}([.,][0-9]{1,12})?");

  private NumberEntry() {}

  /**
   * A number of zero or more, with a point or a comma; a percent sign after it is passed over.
   *
   * @throws EntryException if it is no such number
   */
  public static double notNegative(String typed) throws EntryException {
    String bare = typed.strip().replaceFirst("\\s*%$", "");
    if (!NUMBER.matcher(bare).matches()) {
      throw new EntryException(typed, typed.length(), Phrase.of("units.number.wrong"));
    }
    return Double.parseDouble(bare.replace(',', '.'));
  }

  /**
   * A number above zero.
   *
   * @throws EntryException if it is no such number
   */
  public static double positive(String typed) throws EntryException {
    double number = notNegative(typed);
    if (number == 0) {
      throw new EntryException(typed, typed.length(), Phrase.of("units.number.zero"));
    }
    return number;
  }

  /**
   * Lengths with semicolons or commas between them.
   *
   * @return at least one, each above zero, in the order typed
   * @throws EntryException if one of them cannot be read
   */
  public static List<Double> lengths(String typed, LengthUnit plan) throws EntryException {
    List<Double> lengths = new ArrayList<>();
    for (String one : typed.split("[;,]")) {
      if (!one.isBlank()) {
        lengths.add(LengthEntry.read(one.strip(), plan, LengthEntry.Allowed.POSITIVE));
      }
    }
    if (lengths.isEmpty()) {
      throw new EntryException(typed, 0, Phrase.of("units.lengths.none"));
    }
    return List.copyOf(lengths);
  }
}
