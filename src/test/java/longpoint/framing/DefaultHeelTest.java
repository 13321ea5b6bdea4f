package longpoint.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import longpoint.framing.stick.Bearing;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterKind;
import longpoint.framing.stick.Seat;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.planfile.PlanFile;
import longpoint.planfile.PlanFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The heel of a plan that states none: a full seat on the plate, within a notch of a quarter of the
 * depth (IRC R502.8.1 and R802.7.1 as quoted in the trade press) and no less than 1 1/2 in of
 * bearing (IRC R802.6).
 */
class DefaultHeelTest {
  private static final String HOUSE =
      """
      {"format":"longpoint-plan","version":1,"unit":"%s","parts":[{"id":"m","plateHeight":%s,
      "outline":[[0,0],[%5$s,0],[%5$s,%6$s],[0,%6$s]],
      "edges":[{"kind":"eave","slope":"%3$s"},{"kind":"%7$s","slope":"%4$s"},
      {"kind":"eave","slope":"%3$s"},{"kind":"%7$s","slope":"%4$s"}],
      "frame":{"method":"%8$s","spacing":%9$s}}],"defaults":{%10$s}}
      """;

  private static Plan inches(String slope, String ends, String method, String defaults) {
    return open(
        String.format(
            Locale.ROOT,
            HOUSE,
            "in",
            "97.125",
            slope,
            slope,
            "432",
            "312",
            ends,
            method,
            16,
            defaults));
  }

  private static Plan open(String text) {
    try {
      return PlanFile.read(text.getBytes(StandardCharsets.UTF_8)).plan();
    } catch (PlanFileException e) {
      throw new AssertionError(e);
    }
  }

  private static Rafter common(Design design) {
    return design.framing().rafters().stream()
        .filter(r -> r.kind() == RafterKind.COMMON && r.foot().on() == Bearing.WALL)
        .findFirst()
        .orElseThrow();
  }

  /**
   * By hand, a 2x8 (7 1/4 in) on a 3 1/2 in plate. 6 in 12: plumb depth 7.25 x 13.4164/12 = 8.1057,
   * seat 3 1/2, plumb cut 1 3/4, heel 6.3557. 8 in 12: a full seat would take 3.5 x sin 33.69 =
   * 1.94 in, over a quarter of 7 1/4 (1.8125); 3/4 of the plumb depth 8.7134 stays, 6.5351, and the
   * seat is 2.1783/(8/12) = 3.2675. 12 in 12: 3/4 of 10.2530 = 7.6898, seat 2.5633.
   */
  @ParameterizedTest
  @CsvSource({
    "6/12, 6.3557, 3.5, 1.75",
    "8/12, 6.5351, 3.2675, 2.1783",
    "12/12, 7.6898, 2.5633, 2.5633"
  })
  void seatIsFullUpToAQuarterOfTheDepth(String slope, double heel, double seat, double plumb) {
    Plan plan = inches(slope, "gable", "rafter", "");
    Seat cut = common(Pipeline.solve(plan)).seat().orElseThrow();
    assertEquals(heel, plan.side(plan.parts().get(0), 0).heel(), 5e-5);
    assertEquals(heel, cut.height(), 5e-5);
    assertEquals(seat, cut.seat(), 1e-4);
    assertEquals(plumb, cut.plumb(), 1e-4);
  }

  @ParameterizedTest
  @ValueSource(strings = {"gable", "eave"})
  void ordinaryRafterPlansOfEverySlopeWarnOfNothing(String ends) {
    for (int rise = 2; rise <= 18; rise++) {
      Design design = Pipeline.solve(inches(rise + "/12", ends, "rafter", ""));
      List<String> said =
          design.framing().problems().stream()
              .filter(p -> p.level() != Problem.Level.NOTE)
              .map(Problem::message)
              .toList();
      assertEquals(List.of(), said, rise + " in 12, " + ends);
      for (Rafter r : design.framing().rafters()) {
        boolean hip = r.kind() == RafterKind.HIP;
        r.seat()
            .filter(s -> !hip)
            .ifPresent(
                s -> {
                  assertTrue(s.seat() <= 3.5 + 1e-9, s.toString());
                  assertTrue(s.share() <= 0.25 + 1e-9, s.toString());
                  assertTrue(s.bearing() >= 1.5, s.toString());
                });
      }
    }
  }

  /** One heel goes round a part of two slopes, and its hips stand on its corners. */
  @ParameterizedTest
  @CsvSource({"4/12, 12/12", "8/12, 6/12", "3/12, 10/12", "12/12, 16/12"})
  void oneHeelGoesAllRound(String sides, String ends) {
    Plan plan =
        open(
            String.format(
                Locale.ROOT,
                HOUSE,
                "in",
                "97.125",
                sides,
                ends,
                "480",
                "240",
                "eave",
                "rafter",
                16,
                ""));
    List<Double> heels =
        plan.sides(plan.parts().get(0)).stream().map(s -> s.heel()).distinct().toList();
    assertEquals(1, heels.size());
    Design design = Pipeline.solve(plan);
    assertTrue(
        design.framing().rafters().stream()
            .filter(r -> r.kind() == RafterKind.HIP)
            .flatMap(r -> r.places().stream())
            .allMatch(
                p ->
                    Math.min(Math.abs(p.from().x()), Math.abs(p.from().x() - 480)) < 1e-6
                        && Math.min(Math.abs(p.from().y()), Math.abs(p.from().y() - 240)) < 1e-6));
    for (Rafter r : design.framing().rafters()) {
      if (r.kind() != RafterKind.HIP && r.seat().isPresent()) {
        assertTrue(r.seat().get().seat() <= 3.5 + 1e-9);
        assertTrue(r.seat().get().bearing() >= 1.49);
      }
    }
  }

  @Test
  void statedHeelsAndTrussesKeepTheirs() {
    Plan stated = inches("8/12", "gable", "rafter", "\"heel\":4.5");
    assertEquals(4.5, stated.side(stated.parts().get(0), 0).heel());
    Plan trusses = inches("8/12", "gable", "truss", "");
    assertEquals(4.5, trusses.side(trusses.parts().get(0), 0).heel());
  }

  /** 45 degrees, 184 mm on an 89 mm plate: 3/4 of 184 x 1.41421 = 195.16; 46 x 1.41421 = 65.05. */
  @Test
  void metric() {
    Plan plan =
        open(
            String.format(
                Locale.ROOT,
                HOUSE,
                "mm",
                "2467",
                "45deg",
                "45deg",
                "10000",
                "8000",
                "gable",
                "rafter",
                400,
                ""));
    Seat cut = common(Pipeline.solve(plan)).seat().orElseThrow();
    assertEquals(195.16, cut.height(), 0.005);
    assertEquals(65.05, cut.seat(), 0.005);
  }
}
