package longpoint.editor;

import java.util.Objects;

/**
 * Something that would put a problem right, ready to be done.
 *
 * @param label what it does, in the user's words
 */
public record Cure(String label, Command command) {
  public Cure {
    Objects.requireNonNull(label);
    Objects.requireNonNull(command);
  }
}
