package longpoint.editor;

import java.util.Optional;
import java.util.Set;
import longpoint.units.LengthUnit;

/** What has been typed in the middle of a gesture and not yet confirmed. */
final class Typing {
  private String text = "";
  private Optional<String> problem = Optional.empty();

  String text() {
    return text;
  }

  boolean isEmpty() {
    return text.isEmpty();
  }

  /** What is wrong with it, in words; empty when nothing is known to be. */
  Optional<String> problem() {
    return problem;
  }

  void add(String more) {
    text += more;
    problem = Optional.empty();
  }

  /** Takes back the last character, of which there is one. */
  void takeBack() {
    text = text.substring(0, text.offsetByCodePoints(text.length(), -1));
    problem = Optional.empty();
  }

  void clear() {
    text = "";
    problem = Optional.empty();
  }

  /** What it means so far; empty when it is blank or cannot be read. */
  Optional<Entry> read(Set<Entry.Kind> wants, LengthUnit unit) {
    return !text.isBlank()
            && !wants.isEmpty()
            && TypedText.read(text, wants, unit) instanceof Reading.Good good
        ? Optional.of(good.entry())
        : Optional.empty();
  }

  /** Hands over what it means and is empty again; or stays, and says what is wrong with it. */
  Optional<Entry> take(Set<Entry.Kind> wants, LengthUnit unit) {
    Reading read = TypedText.read(text, wants, unit);
    if (read instanceof Reading.Bad bad) {
      problem = Optional.of(bad.why());
      return Optional.empty();
    }
    clear();
    return Optional.of(((Reading.Good) read).entry());
  }
}
