package longpoint.trusslist;

import java.io.IOException;
import longpoint.wording.Language;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** A list that cannot be read at all, said with the line in the file and the cure. */
public final class TrussListException extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient Worded words;

  private TrussListException(Worded words) {
    super(words.in(Language.ENGLISH));
    this.words = words;
  }

  static TrussListException at(int line, Phrase wrong) {
    return new TrussListException(Phrase.of("trusslist.at", line, wrong));
  }

  static TrussListException whole(Phrase wrong) {
    return new TrussListException(wrong);
  }

  static TrussListException whole(Phrase wrong, IOException cause) {
    TrussListException e = whole(wrong);
    e.initCause(cause);
    return e;
  }

  /** What is wrong, where and what to do about it. */
  public String message(Language language) {
    return words.in(language);
  }
}
