package longpoint.desktop.view;

import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longpoint.units.EntryException;
import longpoint.units.LengthEntry;
import longpoint.units.LengthUnit;

/**
 * Orders the cells of a list as people would: lengths by length, figures by size, marks with a
 * number in them by that number, words by the alphabet. Empty cells come last.
 */
final class CellOrder implements Comparator<String> {
  private static final Pattern NUMBER = Pattern.compile("^[^0-9]{0,3}?(-?[0-9]+(?:[.,][0-9]+)?)");
  private static final Pattern MARK = Pattern.compile("^(\\D*)(\\d{1,9})(.*)$");

  private final LengthUnit unit;

  CellOrder(LengthUnit unit) {
    this.unit = unit;
  }

  @Override
  public int compare(String a, String b) {
    if (a.isEmpty() || b.isEmpty()) {
      return Boolean.compare(a.isEmpty(), b.isEmpty());
    }
    OptionalDouble x = figure(a);
    OptionalDouble y = figure(b);
    if (x.isPresent() && y.isPresent()) {
      return Double.compare(x.getAsDouble(), y.getAsDouble());
    }
    return x.isPresent() ? -1 : y.isPresent() ? 1 : words(a, b);
  }

  private OptionalDouble figure(String cell) {
    if (Character.isLetter(cell.charAt(0))) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(LengthEntry.read(cell, unit, LengthEntry.Allowed.ANY));
    } catch (EntryException notALength) {
      Matcher number = NUMBER.matcher(cell);
      return number.find()
          ? OptionalDouble.of(Double.parseDouble(number.group(1).replace(',', '.')))
          : OptionalDouble.empty();
    }
  }

  /** T2 stands before T10. */
  private static int words(String a, String b) {
    Matcher x = MARK.matcher(a);
    Matcher y = MARK.matcher(b);
    if (x.matches() && y.matches() && x.group(1).equals(y.group(1))) {
      int byNumber = Integer.compare(Integer.parseInt(x.group(2)), Integer.parseInt(y.group(2)));
      return byNumber != 0 ? byNumber : x.group(3).compareTo(y.group(3));
    }
    return a.compareToIgnoreCase(b);
  }
}
