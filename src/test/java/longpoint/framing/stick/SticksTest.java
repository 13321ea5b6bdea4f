package longpoint.framing.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Edge;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.LineKind;
import longpoint.surface.Roof;
import longpoint.surface.RoofLine;
import org.junit.jupiter.api.Test;

class SticksTest {
  private static Part bare(Part part) {
    Part out = part;
    for (int i = 0; i < part.sideCount(); i++) {
      Edge edge = part.edges().get(i);
      out = out.withEdge(i, edge.withHeel(0).withOverhang(0));
    }
    return out;
  }

  private static FramingSet rafters(Part part, double spacing) {
    return Houses.solve(Houses.plan(Houses.framed(part, Frame.Method.RAFTER, spacing)));
  }

  private static List<Rafter> of(FramingSet set, RafterKind kind) {
    return set.rafters().stream().filter(r -> r.kind() == kind).toList();
  }

  private static int count(List<Rafter> rafters) {
    return rafters.stream().mapToInt(Rafter::quantity).sum();
  }

  /** Carpentry Refresher: a 24 by 36 ft hip roof has a theoretical ridge of 12 ft. */
  @Test
  void ridgeOfAHipRoof() {
    Rafter ridge = of(rafters(bare(Houses.box("eeee", 6, 432, 288)), 16), RafterKind.RIDGE).get(0);
    assertThat(ridge.lineLength()).isEqualTo(144, within(1e-9));
  }

  /**
   * Cyclopedia of Architecture (1907), Hips: run 13 ft 6 in, 9 in 12; common 16 ft 10.5 in, hip 21
   * ft 7.327 in.
   */
  @Test
  void commonsAndHips() {
    FramingSet set = rafters(bare(Houses.box("eeee", 9, 480, 324)), 24);
    Rafter common = of(set, RafterKind.COMMON).get(0);
    assertThat(common.lineLength()).isEqualTo(16 * 12 + 10.5, within(1e-9));
    assertThat(common.shortenHead()).isEqualTo(0.75);
    Rafter hip = of(set, RafterKind.HIP).get(0);
    assertThat(hip.quantity()).isEqualTo(4);
    assertThat(hip.lineLength()).isEqualTo(21 * 12 + 7.327, within(5e-4));
    assertThat(hip.shortenHead()).isEqualTo(1.0607, within(5e-5));
    assertThat(hip.drop()).isEqualTo(0.3977, within(5e-5));
  }

  /**
   * US Navy NAVEDTRA 14044 vol. 2, p. 2-31: jacks 16 in apart at 8 in 12 grow by 19.23 in; each is
   * short by half the hip's 45° thickness, which no difference shows.
   */
  @Test
  void hipJacksGrowByTheCommonDifference() {
    FramingSet set = rafters(bare(Houses.box("eeee", 8, 480, 320)), 16);
    List<Rafter> jacks = of(set, RafterKind.HIP_JACK);
    assertThat(jacks).hasSize(9);
    for (int i = 0; i < jacks.size(); i++) {
      assertThat(jacks.get(i).lineLength()).isEqualTo(19.2296 * (i + 1), within(0.001));
      assertThat(jacks.get(i).quantity()).isEqualTo(8);
      assertThat(jacks.get(i).shortenHead()).isEqualTo(1.0607, within(5e-5));
      // 12 with 9.98 on the square, marked on the 12 side.
      assertThat(jacks.get(i).sideCutHead()).isEqualTo(39.763, within(0.001));
    }
  }

  /** Tail and cut length: 6 in 12, 12 ft run, 18 in overhang: 144 − 3/4 + 18 in of plan. */
  @Test
  void cutLengthOfACommon() {
    FramingSet set = rafters(Houses.box("egeg", 6, 240, 288), 24);
    Rafter common = of(set, RafterKind.COMMON).get(0);
    assertThat(common.tail()).isEqualTo(16 * 1.118034, within(1e-5));
    assertThat(common.length()).isEqualTo((144 - 0.75 + 16) * 1.118034, within(1e-4));
    assertThat(common.quantity()).isEqualTo(22);
  }

  /** Main roof 40 ft, wing 30 ft, 9 in 12 on both: NAVEDTRA 14044 p. 2-28 gives 24.01 ft. */
  @Test
  void supportingAndSupportedValleys() {
    Part main = Houses.framed(bare(Houses.box("egeg", 9, 720, 480)), Frame.Method.RAFTER, 16);
    Part wing =
        Houses.framed(
            bare(Houses.part("wing", 97.125, "geoe", 9, 168, -144, 528, -144, 528, 0, 168, 0)),
            Frame.Method.RAFTER,
            16);
    Plan plan =
        Houses.plan(main, wing)
            .withJoins(
                List.of(
                    new Join(
                        "wing", "main", Join.Method.THROUGH, Join.MadeFor.FRAME, Extras.NONE)));
    FramingSet set = Houses.solve(plan);
    List<Rafter> valleys = of(set, RafterKind.VALLEY);
    assertThat(valleys).hasSize(2);
    assertThat(valleys)
        .extracting(v -> Math.rint(v.lineLength() / 12 * 100) / 100)
        .containsExactlyInAnyOrder(24.01, 32.02);
    // Valley jacks of the wing from its ridge down: 180 less 16, 32, … of plan.
    List<Rafter> jacks = of(set, RafterKind.VALLEY_JACK);
    assertThat(jacks).isNotEmpty();
    assertThat(of(set, RafterKind.CRIPPLE)).isNotEmpty();
    // Every jack starts on a valley line of the solved roof or on the supporting valley beyond it.
    assertThat(jacks.stream().flatMap(j -> j.places().stream()))
        .allSatisfy(place -> assertThat(offValley(plan, place)).isLessThan(1e-6));
  }

  private static double offValley(Plan plan, Segment place) {
    double least = Double.POSITIVE_INFINITY;
    for (RoofLine line : Roof.solve(plan).lines()) {
      if (line.kind() == LineKind.VALLEY) {
        Segment valley = new Segment(line.from().plan(), line.to().plan());
        least = Math.min(least, Math.abs(valley.offset(place.from())));
      }
    }
    return least;
  }

  /** A wing turned 30 degrees: no valley trusses, but rafters whose feet lie on the deck. */
  @Test
  void skewWingGetsRaftersWithTheReason() {
    double turn = Math.toRadians(30);
    Point u = new Point(-Math.sin(turn), Math.cos(turn));
    Point c = new Point(240, -20);
    double[] xy = new double[8];
    double[][] corners = {{-150, 60}, {-150, -60}, {0, -60}, {0, 60}};
    for (int i = 0; i < 4; i++) {
      Point p = c.plus(u.times(corners[i][0])).plus(u.left().times(corners[i][1]));
      xy[2 * i] = p.x();
      xy[2 * i + 1] = p.y();
    }
    Plan plan =
        Houses.plan(Houses.box("egeg", 8, 480, 336), Houses.part("wing", 97.125, "geoe", 8, xy))
            .withJoins(List.of(Join.overlay("wing", "main")));
    FramingSet set = Houses.solve(plan);
    assertThat(set.problems())
        .anyMatch(p -> p.message().contains("does not run square into an eave"));
    assertThat(set.valleySets()).isEmpty();
    List<Rafter> jacks = of(set, RafterKind.VALLEY_JACK);
    assertThat(count(jacks)).isGreaterThan(4);
    // Foot: on main's frame plane (97.125 + 4.5 + 2/3 y) raised by the plumb of a 1/2 in deck.
    double deck = 0.5 * Math.sqrt(1 + 4 / 9.0);
    double ridge = 97.125 + 4.5 + 60 * 2 / 3.0;
    for (Rafter jack : jacks) {
      for (Segment place : jack.places()) {
        double foot = 97.125 + 4.5 + place.from().y() * 2 / 3 + deck;
        assertThat(ridge - jack.rise()).isEqualTo(foot, within(1e-6));
      }
    }
  }

  /**
   * A 4 in 12 porch 8 ft deep against a house of 8 in 12: at the wall 32 in of rise are ahead; the
   * slopes close at 4 in 12, and the deck is 0.601 in high: (32 − 0.601) / (1/3) = 94.197 in more.
   */
  @Test
  void shedPorchRunsOnOverTheHouse() {
    Part porch =
        Houses.framed(
            Houses.part("porch", 97.125, "egog", 4, 120, -96, 300, -96, 300, 0, 120, 0),
            Frame.Method.RAFTER,
            16);
    Plan plan =
        Houses.plan(Houses.box("egeg", 8, 480, 336), porch)
            .withJoins(List.of(Join.overlay("porch", "main")));
    Rafter common =
        Houses.solve(plan).rafters().stream()
            .filter(r -> r.part().equals("porch"))
            .findFirst()
            .orElseThrow();
    assertThat(common.planRun()).isEqualTo(96 + 94.197, within(0.001));
  }
}
