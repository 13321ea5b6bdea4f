package longpoint.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Phrases say the same thing in every language, joined as that language is spoken. */
class PhraseTest {
  private static void french(String before, String words, String joined) {
    StringBuilder out = new StringBuilder(before);
    Elision.join(out, words);
    assertThat(out.toString()).isEqualTo(joined);
  }

  /** Contracted article and élision as every French grammar has them (from memory). */
  @Test
  void frenchWordsAreJoinedAsSpoken() {
    french("Talon de ", "le mur nord", "Talon du mur nord");
    french("Talon de ", "les murs", "Talon des murs");
    french("jusqu’à ", "le faîtage", "jusqu’au faîtage");
    french("le mur est de ", "Aile du jardin", "le mur est d’Aile du jardin");
    french("le mur est de ", "Écurie", "le mur est d’Écurie");
    french("moins que ", "un pouce", "moins qu’un pouce");
    french("le mur est de ", "Maison", "le mur est de Maison");
    french("le pan de ", "A1", "le pan de A1");
    french("Corde ", "le mur", "Corde le mur");
    french("bande ", "Aile", "bande Aile");
  }

  @Test
  void wallsAreNamedInBothLanguages() {
    Phrase wall = Phrase.of("plan.wall.north", "House");
    assertThat(wall.in(Language.ENGLISH)).isEqualTo("the north wall of House");
    assertThat(wall.in(Language.FRENCH)).isEqualTo("le mur nord de House");
    assertThat(wall.sentence(Language.FRENCH)).isEqualTo("Le mur nord de House");
    assertThat(Phrase.of("plan.wall.numbered", wall, 2).in(Language.FRENCH))
        .isEqualTo("le mur nord de House (n° 2)");
  }

  @Test
  void whatIsPutInIsNotReadAgain() {
    Phrase wall = Phrase.of("plan.wall.north", "{1} {x");
    assertThat(wall.in(Language.ENGLISH)).isEqualTo("the north wall of {1} {x");
  }

  @Test
  void noRawFigureIsSaid() {
    assertThatThrownBy(() -> Phrase.of("plan.wall.north", 3.5))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void partsAreChangedAtAnyDepth() {
    Phrase wall = Phrase.of("plan.wall.numbered", Phrase.of("plan.wall.east", "a"), 2);
    Phrase changed = wall.with(p -> p.equals(Worded.plain("a")) ? Worded.plain("b") : p);
    assertThat(changed.in(Language.ENGLISH)).isEqualTo("the east wall of b (no. 2)");
  }
}
