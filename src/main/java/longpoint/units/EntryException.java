package longpoint.units;

import java.util.Objects;

/** Typed text that is not a length or a slope, or that could be two different ones. */
public final class EntryException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String typed;
  private final int position;
  private final String cure;

  /**
   * @param typed the whole text as typed
   * @param position where in it reading stopped, from 0 to its length
   * @param wrong what is wrong, a sentence
   * @param cure what to type instead, a sentence
   */
  EntryException(String typed, int position, String wrong, String cure) {
    super(Objects.requireNonNull(wrong) + " " + Objects.requireNonNull(cure));
    this.typed = typed;
    this.position = Math.max(0, Math.min(position, typed.length()));
    this.cure = cure;
  }

  public String typed() {
    return typed;
  }

  /** Where to put the caret: 0 to the length of the typed text. */
  public int position() {
    return position;
  }

  /** What to type instead. It also ends the message. */
  public String cure() {
    return cure;
  }
}
