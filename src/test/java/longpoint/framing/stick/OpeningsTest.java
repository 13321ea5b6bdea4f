package longpoint.framing.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Dormers framed through a roof of rafters: doubled headers and trimmers (US Navy NAVEDTRA 14044
 * vol. 2, p. 2-30, figs. 2-45 and 2-56) and what they cut.
 */
class OpeningsTest {
  private static final double T = 1.5;

  private static Part rafters(Part part, double spacing) {
    return Houses.framed(part, Frame.Method.RAFTER, spacing);
  }

  private static Plan through(Part main, Part dormer) {
    return Houses.plan(main, dormer)
        .withJoins(
            List.of(
                new Join(
                    dormer.id(), "main", Join.Method.THROUGH, Join.MadeFor.FRAME, Extras.NONE)));
  }

  private static Plan gable(String sides, double spacing, double front, double half, double plate) {
    Part main = rafters(Houses.box(sides, 10, 480, 336), spacing);
    double mid = 240;
    Part dormer =
        rafters(
            Houses.part(
                "dormer",
                plate,
                "geoe",
                10,
                mid - half,
                front,
                mid + half,
                front,
                mid + half,
                150,
                mid - half,
                150),
            spacing);
    return through(main, dormer);
  }

  private static List<Rafter> of(FramingSet set, RafterKind kind) {
    return set.rafters().stream().filter(r -> r.kind() == kind && r.part().equals("main")).toList();
  }

  /**
   * By hand, 10 in 12, heels 4.5, house plate 97.125, dormer plate 165, 24 in up, 80 in wide: the
   * dormer's ridge lies 40 x 10/12 above its eaves, so its line comes to the main frame (165 -
   * 97.125)/(10/12) + 40 = 121.45 in from the wall. Tails run 24, the upper pieces 168 - 121.45 -
   * 1.5 = 45.05. Headers go from doubled rafter to doubled rafter, 80 - 1.5.
   */
  @Test
  void gableDormerByHand() {
    FramingSet set = Houses.solve(gable("egeg", 16, 24, 40, 165));
    Rafter header = of(set, RafterKind.HEADER).get(0);
    assertThat(header.quantity()).isEqualTo(4);
    assertThat(header.length()).isEqualTo(78.5, within(1e-9));
    assertThat(header.places().stream().map(p -> p.from().y()).sorted().toList())
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b))
        .containsExactly(24.0, 25.5, 121.45, 122.95);
    Rafter trimmer = of(set, RafterKind.TRIMMER).get(0);
    assertThat(trimmer.quantity()).isEqualTo(4);
    assertThat(trimmer.planRun()).isEqualTo(168);
    assertThat(trimmer.places().stream().map(p -> p.from().x()).sorted().toList())
        .containsExactly(198.5, 200.0, 280.0, 281.5);
    List<Rafter> cut = of(set, RafterKind.COMMON).stream().filter(r -> r.planRun() < 160).toList();
    assertThat(cut).extracting(Rafter::quantity).containsExactlyInAnyOrder(5, 5);
    Rafter tail = cut.stream().filter(r -> r.head().on() == Bearing.HEADER).findFirst().get();
    Rafter upper = cut.stream().filter(r -> r.foot().on() == Bearing.HEADER).findFirst().get();
    assertThat(tail.planRun()).isEqualTo(24, within(1e-9));
    assertThat(upper.planRun()).isEqualTo(45.05, within(1e-6));
    assertThat(upper.length()).isEqualTo(43.55 * Math.hypot(1, 10 / 12.0), within(1e-6));
    assertThat(tail.head().by()).contains(header.mark());
    assertThat(header.foot().by()).contains(trimmer.mark());
  }

  /**
   * A shed dormer of 3 in 12, plate 180, front 24 in up, 144 in deep, by hand: 180 + 4.5 + d/4 =
   * 97.125 + 4.5 + (24 + d) x 10/12, so d = (184.5 - 101.625 - 20)/(10/12 - 1/4) = 107.786.
   */
  @Test
  void shedDormerByHand() {
    Part main = rafters(Houses.box("egeg", 10, 480, 336), 16);
    Part shed =
        rafters(Houses.part("shed", 180, "egog", 3, 168, 24, 312, 24, 312, 168, 168, 168), 16);
    FramingSet set = Houses.solve(through(main, shed));
    Rafter rafter =
        set.rafters().stream()
            .filter(r -> r.part().equals("shed") && r.kind() == RafterKind.COMMON)
            .findFirst()
            .orElseThrow();
    assertThat(rafter.planRun()).isEqualTo(62.875 / (10 / 12.0 - 0.25), within(1e-6));
    assertThat(rafter.head().on()).isEqualTo(Bearing.HEADER);
    assertThat(rafter.head().by()).contains(of(set, RafterKind.HEADER).get(0).mark());
    assertThat(of(set, RafterKind.HEADER).get(0).quantity()).isEqualTo(4);
    assertThat(of(set, RafterKind.TRIMMER).get(0).quantity()).isEqualTo(4);
  }

  /** Its front on the wall: no lower header; its ridge as high as the roof's: no upper one. */
  @Test
  void headersOnlyWhereRaftersAreCut() {
    Part main = rafters(Houses.box("egeg", 10, 480, 336), 16);
    Part flush = rafters(Houses.part("d", 150, "geoe", 10, 200, 0, 280, 0, 280, 140, 200, 140), 16);
    assertThat(of(Houses.solve(through(main, flush)), RafterKind.HEADER).get(0).quantity())
        .isEqualTo(2);
    double high = 97.125 + 140 - 40 * 10 / 12.0;
    FramingSet set = Houses.solve(gable("egeg", 16, 24, 40, high));
    assertThat(of(set, RafterKind.HEADER).get(0).quantity()).isEqualTo(2);
    assertThat(
            set.rafters().stream()
                .filter(r -> r.kind() == RafterKind.VALLEY)
                .map(r -> r.head().on()))
        .containsOnly(Bearing.RIDGE);
  }

  private static Plan random(long seed) {
    Random r = new Random(seed);
    double spacing = r.nextBoolean() ? 16 : 24;
    double front = 12 + r.nextInt(60);
    double half = 24 + r.nextInt(240) / 8.0;
    double plate = 97.125 + (front + 10 + r.nextInt(50)) * 10 / 12.0;
    return gable(r.nextBoolean() ? "egeg" : "eeee", spacing, front, half, plate);
  }

  @TestFactory
  Stream<DynamicTest> openingsAreClosedAllRound() {
    return IntStream.range(0, 60)
        .mapToObj(
            seed ->
                DynamicTest.dynamicTest("dormer " + seed, () -> laws(Houses.solve(random(seed)))));
  }

  private static void laws(FramingSet set) {
    List<Rafter> own = set.rafters().stream().filter(r -> r.part().equals("main")).toList();
    PlanWood.check(own);
    List<Segment> headers = places(set, RafterKind.HEADER);
    List<Segment> trimmers = places(set, RafterKind.TRIMMER);
    assertThat(trimmers).hasSize(4);
    for (Rafter r : own) {
      for (Segment place : r.places()) {
        touches(r.head(), place.to(), headers, trimmers);
        touches(r.foot(), place.from(), headers, trimmers);
      }
    }
    double left = trimmers.stream().mapToDouble(t -> t.from().x()).min().orElseThrow() + T;
    double right = trimmers.stream().mapToDouble(t -> t.from().x()).max().orElseThrow() - T;
    double front = headers.stream().mapToDouble(h -> h.from().y()).min().orElseThrow();
    double top = headers.stream().mapToDouble(h -> h.from().y()).max().orElseThrow();
    for (Rafter r : own) {
      for (Segment p : r.places()) {
        boolean between = p.from().x() > left && p.from().x() < right && p.from().y() < 168;
        boolean climbs = r.kind() == RafterKind.COMMON || r.kind() == RafterKind.HIP_JACK;
        if (between && climbs) {
          assertThat(p.to().y() <= front + 1e-6 || p.from().y() >= top - 1e-6).isTrue();
        }
      }
    }
  }

  private static List<Segment> places(FramingSet set, RafterKind kind) {
    return of(set, kind).stream().flatMap(r -> r.places().stream()).toList();
  }

  private static void touches(
      RafterEnd end, Point at, List<Segment> headers, List<Segment> trimmers) {
    List<Segment> on =
        end.on() == Bearing.HEADER ? headers : end.on() == Bearing.TRIMMER ? trimmers : List.of();
    if (!on.isEmpty()) {
      assertThat(on).anyMatch(s -> s.distance(at) < 1e-6);
      assertThat(end.by()).isPresent();
    }
  }
}
