package longpoint.deck;

import java.util.Optional;
import java.util.stream.Stream;
import longpoint.plan.Deck;

/** Another place for a plane's first sheet, from which every rule for joints is kept. */
final class OtherStart {
  private OtherStart() {}

  static Optional<Deck.Start> of(Sheathing.Choice choice) {
    return choice.strips().isEmpty()
        ? Optional.empty()
        : Stream.of(Deck.Start.LEFT, Deck.Start.RIGHT, Deck.Start.CENTRE)
            .filter(start -> keepsAll(choice, start))
            .findFirst();
  }

  private static boolean keepsAll(Sheathing.Choice choice, Deck.Start start) {
    return Rhythms.of(choice.strips(), choice.uprights(), start, choice.ground().panel()).stream()
        .allMatch(rhythm -> choice.laying(rhythm).kept() == JointChoice.Kept.ALL);
  }
}
