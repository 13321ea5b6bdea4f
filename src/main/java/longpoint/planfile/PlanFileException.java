package longpoint.planfile;

import java.io.IOException;

/** A plan file that cannot be opened or saved, said with the place and the cure. */
public final class PlanFileException extends IOException {
  private static final long serialVersionUID = 1L;

  private final String pointer;
  private final int line;
  private final int column;

  private PlanFileException(String message, String pointer, int line, int column) {
    super(message);
    this.pointer = pointer;
    this.line = line;
    this.column = column;
  }

  /** About a value in the file. */
  static PlanFileException at(JsonValue value, String wrong) {
    String place = value.path().words();
    return new PlanFileException(
        (place.isEmpty() ? "" : place + ": ")
            + wrong
            + " (line "
            + value.line()
            + ", column "
            + value.column()
            + ")",
        value.path().pointer(),
        value.line(),
        value.column());
  }

  /** About a place in the text. */
  static PlanFileException at(int line, int column, String wrong) {
    return new PlanFileException(
        "line " + line + ", column " + column + ": " + wrong, "", line, column);
  }

  /** About the file as a whole. */
  static PlanFileException whole(String wrong) {
    return new PlanFileException(wrong, "", 0, 0);
  }

  static PlanFileException whole(String wrong, IOException cause) {
    PlanFileException e = whole(wrong);
    e.initCause(cause);
    return e;
  }

  /** JSON pointer (RFC 6901) to the value it is about; empty when about the whole file. */
  public String pointer() {
    return pointer;
  }

  /** From 1; 0 when about the whole file. */
  public int line() {
    return line;
  }

  /** From 1, in characters; 0 when about the whole file. */
  public int column() {
    return column;
  }
}
