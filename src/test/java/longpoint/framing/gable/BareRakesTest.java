package longpoint.framing.gable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every overhanging rake has a ladder, or it is said that it has none. */
class BareRakesTest {
  private static List<String> said(FramingSet set) {
    return set.problems().stream()
        .filter(p -> p.message().contains("has no ladder"))
        .map(p -> p.where())
        .toList();
  }

  /** A bump whose front slopes like the house steps up over it: its sides' rakes are told of. */
  @Test
  void bumpThatStepsUpOverItsOwnRoof() {
    Plan bump =
        Houses.plan(
            Houses.part(
                "main",
                97.125,
                "egegegeg",
                8,
                0,
                0,
                180,
                0,
                180,
                -36,
                300,
                -36,
                300,
                0,
                480,
                0,
                480,
                336,
                0,
                336));
    assertThat(said(Houses.solve(bump))).containsExactly("main/1", "main/3");
  }

  /** A gable wall in three pieces, of which the middle stands out, has its two ladders. */
  @Test
  void gableWallInPieces() {
    Plan bump =
        Houses.plan(
            Houses.part(
                "main",
                97.125,
                "egegegeg",
                8,
                0,
                0,
                480,
                0,
                480,
                96,
                516,
                96,
                516,
                240,
                480,
                240,
                480,
                336,
                0,
                336));
    assertThat(said(Houses.solve(bump))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"egeg", "eeee", "eggg", "eeeg"})
  void plainHouses(String sides) {
    assertThat(said(Houses.solve(Houses.plan(Houses.box(sides, 8, 480, 336))))).isEmpty();
  }
}
