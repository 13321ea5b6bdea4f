package longpoint.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.framing.stick.Bearing;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterKind;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.plan.Edge.HipEnd;
import longpoint.plan.Part;
import org.junit.jupiter.api.Test;

/** A hip house 44 by 28 ft at 6 in 12, its east end framed in each of three ways. */
class HipEndsTest {
  private static final Part HOUSE = Houses.box("eeee", 6, 528, 336);

  private static FramingSet east(HipEnd way) {
    return Houses.solve(Houses.plan(HOUSE.withEdge(1, HOUSE.edges().get(1).withHip(way))));
  }

  private static List<Rafter> rafters(FramingSet set, RafterKind kind) {
    return set.rafters().stream().filter(r -> r.kind() == kind).toList();
  }

  private static long jacks(FramingSet set, double beyond) {
    return set.trusses().stream()
        .filter(t -> t.kind() == TrussKind.JACK || t.kind() == TrussKind.CORNER_JACK)
        .filter(t -> t.from().x() > beyond)
        .count();
  }

  /**
   * By hand: the hip is 168 in long, so the girder's outer face stands at 528 − 168 = 360. Hips run
   * 168 · √2 in plan and rise 84; their length is √(2 · 168² + 84²) = 252. The end wall has commons
   * where they reach the ridge: at 168 only; the others die on the hips.
   */
  @Test
  void rafters() {
    FramingSet set = east(HipEnd.RAFTERS);
    Truss girder =
        set.trusses().stream().filter(t -> t.kind() == TrussKind.GIRDER).findFirst().orElseThrow();
    assertThat(girder.from().x()).isEqualTo(360 - 0.75, within(1e-9));
    assertThat(girder.height()).isEqualTo(4.5 + 84, within(1e-9));
    assertThat(jacks(set, 360)).isZero();
    assertThat(jacks(set, 0)).isPositive();
    Rafter hip = rafters(set, RafterKind.HIP).get(0);
    assertThat(hip.quantity()).isEqualTo(2);
    assertThat(hip.lineLength()).isEqualTo(252, within(1e-9));
    assertThat(hip.planRun()).isEqualTo(168 * Math.sqrt(2), within(1e-9));
    // Heads name what carries them; hips come into the corner of girder and middle common.
    assertThat(hip.head().on()).isEqualTo(Bearing.GIRDER);
    assertThat(hip.head().by()).contains(girder.mark());
    assertThat(hip.head().isDouble()).isTrue();
    assertThat(rafters(set, RafterKind.COMMON).get(0).head().by()).contains(girder.mark());
    assertThat(rafters(set, RafterKind.HIP_JACK))
        .allSatisfy(j -> assertThat(j.head().by()).contains(hip.mark()));
    assertThat(rafters(set, RafterKind.COMMON)).hasSize(1);
    assertThat(rafters(set, RafterKind.COMMON).get(0).quantity()).isEqualTo(1);
    // Jacks at 24, 48 … 144 on both sides of both hips.
    assertThat(rafters(set, RafterKind.HIP_JACK).stream().mapToInt(Rafter::quantity).sum())
        .isEqualTo(6 * 4);
    // Common difference on the framing square for 6 in 12 at 24 in: 26 13/16 = 26.833.
    List<Double> lengths =
        rafters(set, RafterKind.HIP_JACK).stream().map(Rafter::length).sorted().toList();
    for (int i = 0; i + 1 < lengths.size(); i++) {
      assertThat(lengths.get(i + 1) - lengths.get(i)).isEqualTo(26.833, within(0.001));
    }
  }

  @Test
  void none() {
    FramingSet set = east(HipEnd.NONE);
    assertThat(set.rafters()).isEmpty();
    assertThat(jacks(set, 360)).isZero();
    assertThat(set.trusses().stream().mapToDouble(t -> t.from().x()).max().orElseThrow())
        .isEqualTo(360 - 0.75, within(1e-9));
    assertThat(set.girders()).hasSize(1);
  }

  /** Said outright it is the same as left out. */
  @Test
  void stepDown() {
    assertThat(east(HipEnd.STEPDOWN)).isEqualTo(Houses.solve(Houses.plan(HOUSE)));
  }

  /** A square hip of rafters at both ends keeps one truss, under the peak. */
  @Test
  void squareHipOfRaftersAtBothEnds() {
    Part square = Houses.box("eeee", 6, 300, 300);
    Part asked =
        square
            .withEdge(1, square.edges().get(1).withHip(HipEnd.RAFTERS))
            .withEdge(3, square.edges().get(3).withHip(HipEnd.RAFTERS));
    FramingSet set = Houses.solve(Houses.plan(asked));
    assertThat(set.trusses()).hasSize(1);
    assertThat(rafters(set, RafterKind.HIP).stream().mapToInt(Rafter::quantity).sum()).isEqualTo(4);
  }

  /** A slope up to a gable wall, hipped at both ends: a jack stands flush on that wall too. */
  @Test
  void jackOnTheGableWallBesideAHip() {
    Part part = Houses.box("egee", 11, 162, 219);
    Part slope = part.withEdge(3, part.edges().get(3).withSlope(longpoint.units.Slope.inTwelve(5)));
    FramingSet set = Houses.solve(Houses.plan(slope));
    for (double wall : new double[] {0, 219}) {
      assertThat(set.trusses())
          .anyMatch(
              t ->
                  t.kind() == TrussKind.JACK
                      && Math.abs(t.from().x() - 161.25) < 1e-9
                      && Math.abs(t.from().y() - wall) < 1e-9);
    }
  }
}
