package longpoint.planfile;

import java.io.IOException;
import longpoint.wording.Language;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** A plan file that cannot be opened or saved, said with the place and the cure. */
public final class PlanFileException extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient Worded words;
  private final String pointer;
  private final int line;
  private final int column;

  private PlanFileException(Worded words, String pointer, int line, int column) {
    super(words.sentence(Language.ENGLISH));
    this.words = words;
    this.pointer = pointer;
    this.line = line;
    this.column = column;
  }

  /** About a value in the file. */
  static PlanFileException at(JsonValue value, Worded wrong) {
    String place = value.path().words();
    Phrase words =
        place.isEmpty()
            ? Phrase.of("planfile.at.end", wrong, value.line(), value.column())
            : Phrase.of("planfile.at.value", place, wrong, value.line(), value.column());
    return new PlanFileException(
        new AsItIs(words), value.path().pointer(), value.line(), value.column());
  }

  /** About a value in the file, in English only. */
  static PlanFileException at(JsonValue value, String wrong) {
    return at(value, Worded.plain(wrong));
  }

  /** About a place in the text. */
  static PlanFileException at(int line, int column, Worded wrong) {
    Phrase words = Phrase.of("planfile.at.place", line, column, wrong);
    return new PlanFileException(new AsItIs(words), "", line, column);
  }

  /** About a place in the text, in English only. */
  static PlanFileException at(int line, int column, String wrong) {
    return at(line, column, Worded.plain(wrong));
  }

  /** About the file as a whole, in English only. */
  static PlanFileException whole(String wrong) {
    return whole(Worded.plain(wrong));
  }

  /** About the file as a whole. */
  static PlanFileException whole(Worded wrong) {
    return new PlanFileException(wrong, "", 0, 0);
  }

  static PlanFileException whole(Worded wrong, IOException cause) {
    PlanFileException e = whole(wrong);
    e.initCause(cause);
    return e;
  }

  /** What is wrong, where and what to do about it. */
  public String message(Language language) {
    return words.sentence(language);
  }

  /** The same as part of another sentence. */
  Worded words() {
    return words;
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
