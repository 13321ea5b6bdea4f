package longpoint.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;

/**
 * Lines of a text file, each ending in a line feed. A pattern is filled in place by place, which a
 * packet of some hundred thousand lines does many times faster than the language's own formatting.
 */
final class Lines {
  private final Writer out;

  Lines(Writer out) {
    this.out = out;
  }

  /**
   * Writes a line.
   *
   * @param pattern every {@code %s} in it stands for the next of the values
   * @throws UncheckedIOException if the file cannot be written
   */
  void line(String pattern, Object... values) {
    text(filled(pattern, values));
  }

  /** Writes a line as it is. */
  void text(String line) {
    try {
      out.write(line);
      out.write('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String filled(String pattern, Object... values) {
    StringBuilder line = new StringBuilder(pattern.length() + 32);
    int from = 0;
    for (Object value : values) {
      int place = pattern.indexOf("%s", from);
      line.append(pattern, from, place).append(value);
      from = place + 2;
    }
    return line.append(pattern, from, pattern.length()).toString();
  }
}
