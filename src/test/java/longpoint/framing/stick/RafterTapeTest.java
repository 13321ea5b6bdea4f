package longpoint.framing.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.framing.stick.RafterTape.Hand;
import longpoint.geometry.Segment;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where rafters stand on their plates, as a framer tapes it. */
class RafterTapeTest {
  private static FramingSet solve(String sides, double spacing, double length) {
    return Houses.solve(
        Houses.plan(
            Houses.framed(Houses.box(sides, 8, length, 240), Frame.Method.RAFTER, spacing)));
  }

  /**
   * 16 in on centre, 1 1/2 in stock, first flush: marks at 0, 15 1/4, 31 1/4, … (common practice).
   */
  @Test
  void bothPlatesAlikeFromTheSameEnd() {
    List<RafterTape> tapes = solve("egeg", 16, 200).rafterTapes();
    assertThat(tapes).hasSize(2);
    assertThat(tapes.get(0).from()).isEqualTo(Hand.LEFT);
    assertThat(tapes.get(1).from()).isEqualTo(Hand.RIGHT);
    for (RafterTape t : tapes) {
      assertThat(t.marks()).startsWith(0.0, 15.25, 31.25).endsWith(191.25, 198.5);
      assertThat(t.length()).isEqualTo(200);
      assertThat(t.reach()).isEqualTo(16, within(1e-9));
    }
    // The odd last bay: 198.5 - 191.25 - 1.5.
    assertThat(tapes.get(0).gaps()).endsWith(5.75);
  }

  /** Marks, gaps and thicknesses make up the wall; no rafter stands in another. */
  @ParameterizedTest
  @CsvSource({"egeg, 16, 481", "egeg, 24, 333", "eeee, 16, 480", "eeee, 24, 391", "eggg, 16, 200"})
  void marksAndGapsMakeUpTheWall(String sides, double spacing, double length) {
    FramingSet set = solve(sides, spacing, length);
    for (RafterTape t : set.rafterTapes()) {
      double sum = t.marks().get(0);
      for (int i = 0; i < t.marks().size(); i++) {
        sum += t.thickness() + (i < t.gaps().size() ? t.gaps().get(i) : 0);
      }
      double rest = t.length() - t.marks().get(t.marks().size() - 1) - t.thickness();
      assertThat(sum + rest).isEqualTo(t.length(), within(1e-9));
      assertThat(t.gaps()).allMatch(g -> g > -1e-9 && g < spacing + 1e-9);
    }
    long standing =
        set.rafters().stream()
            .filter(r -> r.foot().on() == Bearing.WALL && r.kind() != RafterKind.HIP)
            .mapToLong(Rafter::quantity)
            .sum();
    assertThat(set.rafterTapes().stream().mapToLong(t -> t.marks().size()).sum())
        .isEqualTo(standing);
  }

  /** A tail drawn on the plan is as long level as the overhang. */
  @Test
  void drawnWithTheirTails() {
    for (Rafter r : solve("egeg", 16, 200).rafters()) {
      Segment place = r.places().get(0);
      double more = r.kind() == RafterKind.RIDGE ? 0 : 16;
      assertThat(r.drawn(place).length()).isEqualTo(place.length() + more, within(1e-9));
    }
  }

  /**
   * 80 in wide, 24 in up a house of 10 in 12, its left doubled rafter under 200: clear from 200 3/4
   * over 78 1/2; 23 1/4 level to the lower header is 30.265 along the rafter, 120.7 to the upper
   * one 157.116 (times 15.6205/12).
   */
  @Test
  void openingIsSetOut() {
    Part main = Houses.framed(Houses.box("egeg", 10, 480, 336), Frame.Method.RAFTER, 16);
    Part dormer =
        Houses.framed(
            Houses.part("d", 165, "geoe", 10, 200, 24, 280, 24, 280, 140, 200, 140),
            Frame.Method.RAFTER,
            16);
    RoofOpening opening =
        Houses.solve(
                Houses.plan(main, dormer)
                    .withJoins(
                        List.of(
                            new Join(
                                "d",
                                "main",
                                Join.Method.THROUGH,
                                Join.MadeFor.FRAME,
                                Extras.NONE))))
            .openings()
            .get(0);
    assertThat(opening.side()).isEqualTo("main/0");
    assertThat(opening.from()).isEqualTo(200.75, within(1e-9));
    assertThat(opening.clear()).isEqualTo(78.5, within(1e-9));
    assertThat(opening.lower().orElseThrow()).isEqualTo(30.265, within(0.001));
    assertThat(opening.upper().orElseThrow()).isEqualTo(157.116, within(0.001));
  }
}
