package longpoint.framing.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longpoint.framing.Houses;
import longpoint.framing.run.Run;
import longpoint.framing.run.RunFinder;
import longpoint.framing.square.PolygonFigures;
import longpoint.framing.square.SquareFigures;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaneSticksTest {
  /**
   * Two roads to one figure: on a plain hip roof the rafters read off the solved planes are those
   * laid out from the wall lengths, but for the gable's end rafters, which it has not.
   */
  @ParameterizedTest
  @CsvSource({"480, 312, 6", "480, 336, 8", "331, 217, 11"})
  void agreesWithTheLayoutOfAStraightRun(double length, double width, double rise) {
    Part part = Houses.box("eeee", rise, length, width);
    Plan plan = Houses.plan(part);
    Run run = RunFinder.find(plan).runs().get(0);
    List<Stick> byPlanes =
        settled(PlaneSticks.lay(plan, part, Roof.solve(plan), List.of(), List.of(), 1.0 / 16));
    List<Stick> byRun = settled(RunSticks.lay(run, List.of(), List.of(), LengthUnit.INCH));
    for (RafterKind kind : List.of(RafterKind.HIP, RafterKind.RIDGE)) {
      assertThat(lengths(byPlanes, kind)).isEqualTo(lengths(byRun, kind));
    }
    // The far ends of walls are laid from the other end by the two roads; near ends agree.
    assertThat(lengths(byPlanes, RafterKind.COMMON)).containsAll(lengths(byRun, RafterKind.COMMON));
    assertThat(lengths(byPlanes, RafterKind.HIP_JACK))
        .containsAnyElementsOf(lengths(byRun, RafterKind.HIP_JACK));
  }

  private static List<Stick> settled(List<Stick> sticks) {
    return Peaks.settle(sticks, 1.5, Optional.empty(), 1.0 / 16);
  }

  private static List<String> lengths(List<Stick> sticks, RafterKind kind) {
    return sticks.stream()
        .filter(s -> s.kind() == kind)
        .map(
            s ->
                String.format(
                    Locale.ROOT,
                    "%.4f %.4f %.4f",
                    s.line().length(),
                    s.cut().length(),
                    s.drop(1.5)))
        .sorted()
        .distinct()
        .toList();
  }

  /** An octagon's hips and jacks against the octagon figures of the square: 12.99 and 4.97. */
  @Test
  void octagon() {
    double side = 120;
    double b = side * Math.sqrt(0.5);
    Part bay =
        Houses.part(
            "bay",
            97.125,
            "eeeeeeee",
            10,
            0,
            0,
            side,
            0,
            side + b,
            b,
            side + b,
            side + b,
            side,
            side + 2 * b,
            0,
            side + 2 * b,
            -b,
            side + b,
            -b,
            b);
    Plan plan = Houses.plan(bay);
    List<Stick> sticks =
        PlaneSticks.lay(plan, bay, Roof.solve(plan), List.of(), List.of(), 1.0 / 16);
    PolygonFigures octagon = PolygonFigures.regular(SquareFigures.inTwelve(10), 8);
    double run = side / 2 / octagon.tangent() * 12;
    List<Stick> hips = sticks.stream().filter(s -> s.kind() == RafterKind.HIP).toList();
    assertThat(hips).hasSize(8);
    assertThat(hips)
        .allSatisfy(
            h -> assertThat(h.line().length()).isEqualTo(octagon.hip() * run / 12, within(1e-6)));
    // Two jacks to each half of a side at 24 in; each is one difference longer than the last.
    List<Stick> jacks =
        sticks.stream()
            .filter(s -> s.kind() == RafterKind.HIP_JACK && s.line().length() < 100)
            .toList();
    assertThat(jacks)
        .anySatisfy(
            j -> assertThat(j.line().length()).isEqualTo(octagon.jackDifference(24), within(1e-6)));
  }

  /**
   * An L of 20 and 24 ft legs at 8 in 12, by hand: one valley of the narrower leg's run, 10 ft ×
   * √(2 + 4/9) = 187.6 in; jacks 24 in apart differ by 28.844 in, and none is longer than a common.
   */
  @Test
  void valleyOfAnL() {
    Part part =
        Houses.framed(
            Houses.part(
                "main", 97.125, "eeeege", 8, 0, 0, 480, 0, 480, 288, 240, 288, 240, 528, 0, 528),
            Frame.Method.RAFTER,
            24);
    List<Rafter> rafters = Houses.solve(Houses.plan(part)).rafters();
    List<Rafter> valleys = rafters.stream().filter(r -> r.kind() == RafterKind.VALLEY).toList();
    assertThat(valleys).hasSize(1);
    assertThat(valleys.get(0).lineLength()).isEqualTo(120 * Math.sqrt(2 + 4 / 9.0), within(1e-6));
    assertThat(rafters)
        .filteredOn(r -> r.kind() == RafterKind.VALLEY_JACK)
        .isNotEmpty()
        .allSatisfy(
            r -> {
              double steps = r.lineLength() / 28.8444;
              assertThat(steps).isEqualTo(Math.rint(steps), within(1e-4));
              assertThat(r.lineLength()).isLessThan(173.07);
            });
    // Flush inside the gable at each bearing wall, and no rafter out in the rake.
    assertThat(
            rafters.stream()
                .flatMap(r -> r.places().stream())
                .mapToDouble(q -> q.from().y())
                .max()
                .orElseThrow())
        .isEqualTo(528 - 0.75, within(1e-9));
  }
}
