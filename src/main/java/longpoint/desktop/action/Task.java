package longpoint.desktop.action;

import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.swing.KeyStroke;

/**
 * One thing the window can do.
 *
 * @param id stable, e.g. {@code file.open}; also the name of its buttons for tests
 * @param name one to four words, asked each time since undo says what it will take back
 * @param tip a sentence
 * @param key that does it from anywhere in the window, if any
 * @param second another key that does it, for hands used to it
 * @param letter that does it while the sheet has the keyboard, if any
 * @param enabled whether it would do anything now
 * @param on for a switch: whether it is on
 */
public record Task(
    String id,
    Supplier<String> name,
    Supplier<String> tip,
    Optional<KeyStroke> key,
    Optional<KeyStroke> second,
    Optional<Character> letter,
    BooleanSupplier enabled,
    Optional<BooleanSupplier> on,
    Runnable run) {
  public Task {
    Objects.requireNonNull(id);
    Objects.requireNonNull(name);
    Objects.requireNonNull(tip);
    Objects.requireNonNull(key);
    Objects.requireNonNull(second);
    Objects.requireNonNull(letter);
    Objects.requireNonNull(enabled);
    Objects.requireNonNull(on);
    Objects.requireNonNull(run);
  }

  /** A task whose words stand in the texts under {@code task.<id>}. */
  public static Task of(String id, Runnable run) {
    return named(
        id,
        () -> longpoint.desktop.Texts.of("task." + id),
        () -> longpoint.desktop.Texts.of("task." + id + ".tip"),
        run);
  }

  public static Task named(String id, Supplier<String> name, Supplier<String> tip, Runnable run) {
    return new Task(
        id,
        name,
        tip,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        () -> true,
        Optional.empty(),
        run);
  }

  /**
   * The same task on a key.
   *
   * @param key as {@link Keys#stroke} reads it
   */
  public Task key(String key) {
    return new Task(id, name, tip, Optional.of(Keys.stroke(key)), second, letter, enabled, on, run);
  }

  /** The same task on another key besides. */
  public Task also(String key) {
    return new Task(
        id, name, tip, this.key, Optional.of(Keys.stroke(key)), letter, enabled, on, run);
  }

  public Task letter(char letter) {
    return new Task(id, name, tip, key, second, Optional.of(letter), enabled, on, run);
  }

  /** The same task, only possible now and then. */
  public Task when(BooleanSupplier enabled) {
    return new Task(id, name, tip, key, second, letter, enabled, on, run);
  }

  /** The same task as a switch. */
  public Task shows(BooleanSupplier on) {
    return new Task(id, name, tip, key, second, letter, enabled, Optional.of(on), run);
  }

  /** Does it, if it can be done now. */
  public void perform() {
    if (enabled.getAsBoolean()) {
      run.run();
    }
  }

  /** The key or letter as people read it, or empty. */
  public String keyText() {
    return key.map(Keys::text)
        .or(() -> letter.map(c -> String.valueOf(Character.toUpperCase(c))))
        .orElse("");
  }
}
