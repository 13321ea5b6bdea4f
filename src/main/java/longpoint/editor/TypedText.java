package longpoint.editor;

import java.util.Optional;
import java.util.Set;
import longpoint.units.LengthUnit;

/**
 * Reads what is typed in the middle of a gesture: a length, two lengths with an {@code x} between
 * them, or an angle. Bad text gives words, never an exception.
 */
sealed interface TypedText {
  /** Text that could be read. */
  record Good(Entry entry) implements TypedText {}

  /** Text that could not. */
  record Bad(String why) implements TypedText {}

  /**
   * @param wants what the state can use, at least one kind
   */
  static TypedText read(String text, Set<Entry.Kind> wants, LengthUnit unit) {
    String[] halves = text.strip().split("\\s*[xX×]\\s*", -1);
    if (halves.length == 2 && wants.contains(Entry.Kind.SIZE)) {
      Optional<Double> width = length(halves[0], unit);
      Optional<Double> depth = length(halves[1], unit);
      return width.isPresent() && depth.isPresent()
          ? new Good(new Entry.Size(width.get(), depth.get()))
          : new Bad(Messages.text("typed.bad.size", text));
    }
    if (halves.length == 1 && wants.contains(Entry.Kind.LENGTH)) {
      return length(text, unit)
          .<TypedText>map(l -> new Good(new Entry.Length(l)))
          .orElse(new Bad(Messages.text("typed.bad.length", text)));
    }
    if (halves.length == 1 && wants.contains(Entry.Kind.ANGLE)) {
      return number(text)
          .<TypedText>map(a -> new Good(new Entry.Angle(a)))
          .orElse(new Bad(Messages.text("typed.bad.angle", text)));
    }
    return new Bad(Messages.text("typed.bad.size", text));
  }

  private static Optional<Double> length(String text, LengthUnit unit) {
    return number(text).filter(l -> l > 0);
  }

  private static Optional<Double> number(String text) {
    try {
      return Optional.of(Double.parseDouble(text.strip())).filter(Double::isFinite);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
