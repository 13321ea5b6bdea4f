package longpoint.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;

/** Weights, loads and hooks that can hardly be meant are told with their cure. */
class HandlingCheckTest {
  private static final Plan PLAN =
      Plan.empty(LengthUnit.INCH)
          .withPart(
              Part.fresh(
                  "shed",
                  "Shed",
                  new Region(Ring.of(0, 0, 240, 0, 240, 144, 0, 144)),
                  List.of(EdgeKind.EAVE, EdgeKind.GABLE, EdgeKind.EAVE, EdgeKind.GABLE),
                  LengthUnit.INCH));

  private static List<String> told(Handling handling) {
    return PlanCheck.check(PLAN.withHandling(handling)).stream().map(Problem::message).toList();
  }

  @Test
  void figuresThatCanBeMeantAreNotTold() {
    Handling usual =
        Handling.NONE
            .withWeights(
                new Handling.Weights(
                    Optional.of(35.0), Optional.of(1.5), Map.of("T1", 140.0), Extras.NONE))
            .withLoads(Handling.Loads.NONE.withDead(Optional.of(15.0)).withSnow(Optional.of(40.0)))
            .withRestraint(Handling.Restraint.USUAL.withRows(Optional.of(96.0)));
    assertThat(told(usual)).isEmpty();
  }

  @Test
  void figuresThatCannotBeMeantAre() {
    Handling.Weights weights =
        new Handling.Weights(Optional.of(350.0), Optional.of(-1.0), Map.of("T1", 0.0), Extras.NONE);
    assertThat(told(Handling.NONE.withWeights(weights))).hasSize(3);
    assertThat(told(Handling.NONE.withLoads(Handling.Loads.NONE.withSnow(Optional.of(-5.0)))))
        .hasSize(1);
    assertThat(
            told(Handling.NONE.withRestraint(Handling.Restraint.USUAL.withBoard(Optional.of(1.0)))))
        .hasSize(1);
  }

  @Test
  void aMetricPlanTakesMetricFigures() {
    // 560 kg/m³ is 35 lb/ft³; 35 kg/m³ would be foam.
    Plan metric = PLAN.withUnit(LengthUnit.MILLIMETRE);
    Handling right =
        Handling.NONE.withWeights(Handling.Weights.USUAL.withLumber(Optional.of(560.0)));
    Handling wrong =
        Handling.NONE.withWeights(Handling.Weights.USUAL.withLumber(Optional.of(35.0)));
    assertThat(HandlingCheck.check(metric.withHandling(right))).isEmpty();
    assertThat(HandlingCheck.check(metric.withHandling(wrong))).hasSize(1);
  }

  @Test
  void aHookBelowTheRoofOrOnePlaceToHangFromIsTold() {
    Lift low =
        new Lift(
            "First five",
            List.of(new Point(0, 0)),
            Optional.empty(),
            List.of(),
            new Lift.Rigging(Optional.empty(), List.of(new Point(1, 1)), Optional.of(-12.0)),
            Extras.NONE);
    Part shed = PLAN.parts().get(0);
    Plan plan =
        PLAN.withPart(
            shed.withFrame(shed.frame().withPlacements(Placements.NONE.withLifts(List.of(low)))));
    assertThat(PlanCheck.check(plan)).hasSize(2).allMatch(p -> !p.cure().isEmpty());
  }
}
