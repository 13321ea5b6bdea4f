package longpoint.units;

import longpoint.wording.Language;
import longpoint.wording.Phrase;

/** Typed text that is not a length or a slope, or that could be two different ones. */
public final class EntryException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String typed;
  private final int position;
  private final transient Phrase wrong;
  private final transient Phrase cure;

  /**
   * @param typed the whole text as typed
   * @param position where in it reading stopped, from 0 to its length
   * @param wrong what is wrong, a sentence; under its key and {@code .cure} stands what to type
   *     instead
   */
  EntryException(String typed, int position, Phrase wrong) {
    this(typed, position, wrong, wrong.under(wrong.key() + ".cure"));
  }

  EntryException(String typed, int position, Phrase wrong, Phrase cure) {
    super(said(wrong, cure, Language.ENGLISH));
    this.typed = typed;
    this.position = Math.max(0, Math.min(position, typed.length()));
    this.wrong = wrong;
    this.cure = cure;
  }

  private static String said(Phrase wrong, Phrase cure, Language language) {
    return wrong.sentence(language) + " " + cure.sentence(language);
  }

  /** The same as part of a longer text in which the typed one begins at some place. */
  EntryException within(String whole, int from) {
    return new EntryException(whole, from + position, wrong, cure);
  }

  public String typed() {
    return typed;
  }

  /** Where to put the caret: 0 to the length of the typed text. */
  public int position() {
    return position;
  }

  /** What is wrong and what to type instead. */
  public String message(Language language) {
    return said(wrong, cure, language);
  }

  /** What to type instead, in English. It also ends the message. */
  public String cure() {
    return cure.sentence(Language.ENGLISH);
  }
}
