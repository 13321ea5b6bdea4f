package longpoint.units;

/**
 * A length typed in the place of another: as it is to be, or as a change. {@code +1'} adds a foot
 * to what stands there and {@code -2 1/2} takes away; {@code 9'1-1/8} is the new length itself, and
 * so is {@code =-1'}, which an equals sign keeps from being a change.
 *
 * @param length in plan units
 */
public record LengthChange(Kind kind, double length) {
  /** What the typed length means. */
  public enum Kind {
    TO,
    BY
  }

  /**
   * @throws EntryException when it cannot be read
   */
  public static LengthChange read(String typed, LengthUnit plan) throws EntryException {
    String text = typed.strip();
    if (text.startsWith("+")) {
      return new LengthChange(Kind.BY, LengthEntry.read(text.substring(1), plan));
    }
    if (text.startsWith("-") || text.startsWith("−")) {
      return new LengthChange(Kind.BY, LengthEntry.read(text, plan));
    }
    return new LengthChange(
        Kind.TO, LengthEntry.read(text.startsWith("=") ? text.substring(1) : text, plan));
  }

  /** The length that comes of it. */
  public double from(double now) {
    return kind == Kind.TO ? length : now + length;
  }
}
