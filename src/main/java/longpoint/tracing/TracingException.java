package longpoint.tracing;

import java.io.IOException;
import longpoint.wording.Language;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** A drawing that cannot be read, said with the line in the file and the cure. */
public final class TracingException extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient Worded words;
  private final int line;

  private TracingException(Worded words, int line) {
    super(words.in(Language.ENGLISH));
    this.words = words;
    this.line = line;
  }

  static TracingException at(int line, Phrase wrong) {
    return new TracingException(Phrase.of("tracing.at", line, wrong), line);
  }

  static TracingException whole(Phrase wrong) {
    return new TracingException(wrong, 0);
  }

  static TracingException whole(Phrase wrong, IOException cause) {
    TracingException e = whole(wrong);
    e.initCause(cause);
    return e;
  }

  /** What is wrong, where and what to do about it. */
  public String message(Language language) {
    return words.in(language);
  }

  /** From 1; 0 when about the whole file. */
  public int line() {
    return line;
  }
}
