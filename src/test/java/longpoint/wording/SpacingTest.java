package longpoint.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A length at the end of a line is never cut short. */
class SpacingTest {
  private static void kept(String text, String expected) {
    assertThat(Spacing.kept(text).replace('\u00a0', '_')).isEqualTo(expected);
  }

  @Test
  void figuresStayWhole() {
    kept("set its heel to 0'-8 1/4\".", "set its heel to 0'-8_1/4\".");
    kept("2 15/16\" lower", "2_15/16\" lower");
    kept("side 2 of 3", "side 2 of 3");
    kept("is 7315 mm across", "is 7315_mm across");
    kept("133,2 pi² de toit", "133,2_pi² de toit");
    kept("mur nord (n° 2)", "mur nord (n°_2)");
    kept("wall (no. 2) and no. one", "wall (no._2) and no. one");
  }

  @Test
  void frenchSignsStayWithTheirWords() {
    kept("nomme « garage », mais", "nomme «_garage_», mais");
    kept("erreur : Le mur ; la pente 66,7 %.", "erreur_: Le mur_; la pente 66,7_%.");
    kept("Que faire ?", "Que faire_?");
  }
}
