package longpoint.planfile;

import java.util.Objects;
import longpoint.wording.Language;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/** Words that begin with a key of a file, which is told as it stands there, without a capital. */
record AsItIs(Phrase words) implements Worded {
  AsItIs {
    Objects.requireNonNull(words);
  }

  @Override
  public String in(Language language) {
    return words.in(language);
  }

  @Override
  public String sentence(Language language) {
    return words.in(language);
  }
}
