package longpoint.tracing;

import java.io.IOException;

/** A drawing that cannot be read, said with the line in the file and the cure. */
public final class TracingException extends IOException {
  private static final long serialVersionUID = 1L;

  private final int line;

  private TracingException(String message, int line) {
    super(message);
    this.line = line;
  }

  static TracingException at(int line, String wrong) {
    return new TracingException("line " + line + ": " + wrong, line);
  }

  static TracingException whole(String wrong) {
    return new TracingException(wrong, 0);
  }

  static TracingException whole(String wrong, IOException cause) {
    TracingException e = whole(wrong);
    e.initCause(cause);
    return e;
  }

  /** From 1; 0 when about the whole file. */
  public int line() {
    return line;
  }
}
