package longpoint.deck;

import java.util.Optional;

/**
 * Choices about the deck that hold for a whole plan.
 *
 * @param walkway empty to sheathe the lower roof whole beneath an overlay; else how far the lower
 *     deck runs in beneath the overlay, up from the line where its roof comes out from under it, in
 *     plan units, ≥ 0. What lies farther in is left open.
 */
public record DeckOptions(Optional<Double> walkway) {
  public DeckOptions {
    if (walkway.isPresent() && !(walkway.get() >= 0)) {
      throw new IllegalArgumentException("a walkway is at least 0 wide, not " + walkway.get());
    }
  }

  /** Sheathe everything: the lower roof stays whole and dry while the overlay is built. */
  public static DeckOptions whole() {
    return new DeckOptions(Optional.empty());
  }

  public static DeckOptions openBeyond(double walkway) {
    return new DeckOptions(Optional.of(walkway));
  }
}
