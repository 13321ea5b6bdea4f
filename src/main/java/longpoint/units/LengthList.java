package longpoint.units;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads several lengths as they are typed or pasted from a list: parted by semicolons, tabs, new
 * lines, or commas with a space behind them, each in any notation of {@link LengthEntry}. A mark or
 * a number with a full stop or a bracket in front of a length is passed over: {@code V1: 16'-0"}.
 */
public final class LengthList {
  private static final Pattern BETWEEN = Pattern.compile("[;\\t\\r\\n]|,(?=\\s)");
  private static final Pattern MARK =
      Pattern.compile("\\s*(?:\\p{L}+[-.]?\\d*[:.)]?\\s+|\\d+[.):]\\s+)?");

  private LengthList() {}

  /**
   * The lengths in the plan's unit, in the order given.
   *
   * @throws EntryException if one cannot be read; its position is in the whole text
   */
  public static List<Double> read(String typed, LengthUnit plan, LengthEntry.Allowed allowed)
      throws EntryException {
    List<Double> lengths = new ArrayList<>();
    for (Part part : parts(typed)) {
      lengths.add(part.read(text -> LengthEntry.read(text, plan, allowed)));
    }
    return List.copyOf(lengths);
  }

  /** The pieces of a list that hold more than spaces, without the marks in front of them. */
  public static List<Part> parts(String typed) {
    List<Part> parts = new ArrayList<>();
    Matcher gap = BETWEEN.matcher(typed);
    int from = 0;
    while (from <= typed.length()) {
      int to = gap.find(from) ? gap.start() : typed.length();
      add(parts, typed, from, to);
      from = to + 1;
    }
    return parts;
  }

  private static void add(List<Part> parts, String typed, int from, int to) {
    Matcher mark = MARK.matcher(typed).region(from, to);
    int start = mark.lookingAt() ? mark.end() : from;
    String text = typed.substring(start, to).stripTrailing();
    if (!text.isBlank()) {
      parts.add(new Part(typed, start, text));
    }
  }

  /**
   * One piece of a list.
   *
   * @param whole the list
   * @param from where in it the piece begins
   */
  public record Part(String whole, int from, String text) {
    /** Turns text into something. */
    public interface Reading<T> {
      T read(String text) throws EntryException;
    }

    /** Reads the piece; what is wrong is told with its place in the whole list. */
    public <T> T read(Reading<T> reading) throws EntryException {
      try {
        return reading.read(text);
      } catch (EntryException e) {
        throw e.within(whole, from);
      }
    }

    /** A stretch of this piece as a piece of its own. */
    public Part sub(int start, int end) {
      return new Part(whole, from + start, text.substring(start, end));
    }

    /** Says that the piece is not what it should be. */
    public EntryException wrong(longpoint.wording.Phrase why) {
      return new EntryException(whole, from, why);
    }
  }
}
