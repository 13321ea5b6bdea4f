package longpoint.field.restraint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import longpoint.framing.Framing;
import longpoint.framing.Houses;
import longpoint.plan.Handling;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The reminder of temporary restraint, against the values of the trade's guidance: those marked so
 * below from memory or second hand.
 */
class RestraintTest {
  private static final Guidance FEET = new Guidance(LengthUnit.INCH);

  private static RestraintRun run(Plan plan) {
    return Restraint.of(plan, Framing.solve(plan, Roof.solve(plan))).runs().get(0);
  }

  /** From memory of the trade's safety guide. */
  @ParameterizedTest
  @CsvSource({"20, 10", "30, 10", "31, 8", "45, 8", "60, 6", "61, 4", "80, 4"})
  void rowsGoBySpan(double span, double apart) {
    assertThat(FEET.rows(span * 12).orElseThrow()).isCloseTo(apart * 12, within(1e-9));
    assertThat(new Guidance(LengthUnit.MILLIMETRE).rows(span * 304.8).orElseThrow())
        .isCloseTo(apart * 304.8, within(1e-6));
  }

  @Test
  void beyondTheTableNobodySays() {
    assertThat(FEET.rows(81 * 12)).isEmpty();
    assertThat(FEET.isLong(59 * 12)).isFalse();
    assertThat(FEET.isLong(60 * 12)).isTrue();
  }

  /** 6 ft deep: 1.44 in, told as 1 1/2; 25 ft: 1 1/2 in of bow (study cards, second hand). */
  @Test
  void tolerances() {
    assertThat(FEET.tolerances(72, 300).plumb()).isCloseTo(1.44, within(1e-9));
    assertThat(FEET.tolerances(72, 300).bow()).isCloseTo(1.5, within(1e-9));
    assertThat(FEET.tolerances(1000, 10_000).plumb()).isCloseTo(2, within(1e-9));
    assertThat(FEET.tolerances(1000, 10_000).bow()).isCloseTo(2, within(1e-9));
    assertThat(FEET.tolerances(72, 300).place()).isCloseTo(0.25, within(1e-9));
  }

  /**
   * 28 ft at 8 in 12: each top chord 16.826 ft, so two bays of 8.413 ft, one row between bearing
   * and peak on each side and one at the peak; 28 ft of bottom chord in two bays of 14 ft.
   */
  @Test
  void rowsOfAGableRoof() {
    RestraintRun run = run(Houses.plan(Houses.box("egeg", 8, 480, 336)));
    assertThat(run.rows(RestraintRow.Place.TOP)).isEqualTo(2);
    assertThat(run.rows(RestraintRow.Place.PEAK)).isEqualTo(1);
    assertThat(run.rows(RestraintRow.Place.BOTTOM)).isEqualTo(1);
    assertThat(run.groundBraces()).isEqualTo(3);
    RestraintRow first = run.rows().get(0);
    assertThat(first.over()).isCloseTo(84, within(1e-9));
    assertThat(first.up()).isCloseTo(84 * Math.sqrt(208) / 12, within(1e-9));
    assertThat(first.trusses()).isEqualTo(run.trusses());
    assertThat(first.length()).isCloseTo(480 - 1.5, within(1e-9));
    // 39 ft 10 1/2 in with boards of 16 ft, each lapping the one before by 2 ft: 16, 30, 44.
    assertThat(first.boards()).isEqualTo(3);
    assertThat(run.boards().count()).isEqualTo(12);
  }

  /** Both ends and no farther apart than 20 ft (second hand). */
  @Test
  void diagonalsStandAtBothEndsAndBetween() {
    RestraintRun run = run(Houses.plan(Houses.box("egeg", 8, 480, 336)));
    assertThat(run.diagonals()).hasSize(3);
    assertThat(run.diagonals().get(0)).isZero();
    assertThat(run.diagonals().get(2)).isCloseTo(run.length(), within(1e-9));
    for (int i = 1; i < 3; i++) {
      assertThat(run.diagonals().get(i) - run.diagonals().get(i - 1)).isLessThanOrEqualTo(240);
    }
  }

  /** No bay between rows is longer than what is said, on any roof. */
  @Test
  void rowsAreNeverFartherApart() {
    for (String sides : new String[] {"egeg", "eeee", "egag"}) {
      RestraintRun run = run(Houses.plan(Houses.box(sides, 6, 528, 366)));
      double last = 0;
      for (RestraintRow row : run.rows()) {
        if (row.place() != RestraintRow.Place.BOTTOM) {
          assertThat(row.up() - last).isLessThanOrEqualTo(run.apart() + 1e-9);
          last = row.up();
        }
      }
      assertThat(run.rows()).isNotEmpty();
    }
  }

  @Test
  void theSuppliersSpacingRules() {
    Plan plan =
        Houses.plan(Houses.box("egeg", 8, 480, 336))
            .withHandling(
                Handling.NONE.withRestraint(Handling.Restraint.USUAL.withRows(Optional.of(48.0))));
    RestraintRun run = run(plan);
    assertThat(run.from()).isEqualTo(RestraintRun.Source.SUPPLIER);
    assertThat(run.apart()).isEqualTo(48);
    assertThat(run.rows(RestraintRow.Place.TOP)).isEqualTo(8);
  }
}
