package longpoint.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longpoint.wording.Phrase;

/** Reads plain numbers and lists of lengths as they are typed into a field. */
public final class NumberEntry {
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,12}([.,][0-9]{1,12})?");

  private static final Pattern NAMED = Pattern.compile("([^\\s=:]+)\\s*[\\s=:]\\s*(\\S+)");

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
   * Names with a number above zero each, semicolons between them: {@code T1 145; GE1 160}.
   *
   * @return by name; empty for nothing typed
   * @throws EntryException if one of them cannot be read
   */
  public static Map<String, Double> named(String typed) throws EntryException {
    Map<String, Double> numbers = new TreeMap<>();
    for (String one : typed.split(";")) {
      Matcher entry = NAMED.matcher(one.strip());
      if (entry.matches()) {
        numbers.put(entry.group(1), positive(entry.group(2)));
      } else if (!one.isBlank()) {
        throw new EntryException(typed, typed.length(), Phrase.of("units.list.weight"));
      }
    }
    return numbers;
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
