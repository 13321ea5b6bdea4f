package longpoint.plan;

import java.util.Objects;

/**
 * Something about the user's plan, said in words for the user.
 *
 * @param level how bad it is
 * @param where id of the part or side it is about ({@link Side#id()}), or "plan"
 * @param message what is wrong, naming the place as people name it
 * @param cure what would put it right; may be empty
 */
public record Problem(Level level, String where, String message, String cure) {
  /** How much a problem matters. */
  public enum Level {
    /** Part of the roof could not be worked out. */
    ERROR,
    /** Worked out, but look at it before building. */
    WARNING,
    /** Worth knowing. */
    NOTE
  }

  public Problem {
    Objects.requireNonNull(level);
    Objects.requireNonNull(where);
    Objects.requireNonNull(message);
    Objects.requireNonNull(cure);
  }

  public static Problem error(String where, String message, String cure) {
    return new Problem(Level.ERROR, where, message, cure);
  }

  public static Problem warning(String where, String message, String cure) {
    return new Problem(Level.WARNING, where, message, cure);
  }

  public static Problem note(String where, String message) {
    return new Problem(Level.NOTE, where, message, "");
  }
}
