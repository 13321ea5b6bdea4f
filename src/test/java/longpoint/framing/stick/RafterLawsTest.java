package longpoint.framing.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.Stream;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Segment;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.RunChoices;
import longpoint.plan.StickChoices;
import longpoint.units.Slope;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What holds of the rafters of any house, on made-up ones; a seed that fails names itself. */
class RafterLawsTest {
  private static final int HOUSES = 200;

  /** Square inches of wood in wood that rounding may leave. */
  private static final double DUST = 1e-3;

  /** Share of a thickness square. */
  private static final double NICK = 0.65;

  private record House(String name, Plan plan, FramingSet set) {
    /** One part without an inward corner: its roof is the lowest of its planes everywhere. */
    boolean isConvex() {
      return plan.parts().size() == 1
          && set.rafters().stream().noneMatch(r -> r.kind() == RafterKind.VALLEY);
    }
  }

  private static Stream<House> houses() {
    return Stream.iterate(1L, s -> s + 1).limit(HOUSES).map(RafterLawsTest::house);
  }

  private static House house(long seed) {
    Random r = new Random(seed * 0x9E3779B97F4A7C15L);
    Plan plan =
        switch (r.nextInt(4)) {
          case 0 -> Houses.plan(hipped(r));
          case 1 -> Houses.plan(ell(r));
          case 2 -> Houses.plan(polygon(r));
          default -> winged(r);
        };
    return new House("seed " + seed, plan, Houses.solve(plan));
  }

  private static Part framed(Part part, Random r) {
    Frame.Method method = Frame.Method.RAFTER;
    double spacing = List.of(12, 16, 19.2, 24).get(r.nextInt(4)).doubleValue();
    Part framed = Houses.framed(part, method, spacing);
    StickChoices sticks =
        r.nextBoolean()
            ? StickChoices.NONE
            : StickChoices.NONE.withRidgeEnds(StickChoices.RidgeEnds.COMMONS);
    return framed.withFrame(
        framed
            .frame()
            .withThickness(r.nextBoolean() ? 1.5 : 2.5)
            .withChoices(framed.frame().choices().withSticks(sticks)));
  }

  private static Part hipped(Random r) {
    double width = 120 + r.nextInt(300);
    Part part = framed(Houses.box("eeee", 6, width + r.nextInt(400), width), r);
    boolean same = r.nextBoolean();
    double rise = 3 + r.nextInt(12);
    for (int i = 0; i < 4; i++) {
      Edge edge = part.edges().get(i);
      double own = same ? rise : i % 2 == 0 ? rise : Math.max(rise, 3 + r.nextInt(12));
      part = part.withEdge(i, edge.withSlope(Slope.inTwelve(own)).withOverhang(r.nextInt(3) * 8));
    }
    return part;
  }

  private static Part ell(Random r) {
    double a = 150 + r.nextInt(200);
    double b = 150 + r.nextInt(200);
    double length = a + 60 + r.nextInt(200);
    double height = b + 60 + r.nextInt(200);
    double rise = 4 + r.nextInt(9);
    Part part =
        Houses.part(
            "main", 96, "eeeeee", rise, 0, 0, length, 0, length, b, a, b, a, height, 0, height);
    Part framed = framed(part, r);
    return framed.withFrame(
        framed
            .frame()
            .withChoices(
                framed
                    .frame()
                    .choices()
                    .withRuns(RunChoices.NONE.withLegs(RunChoices.Legs.WHOLE))));
  }

  private static Part polygon(Random r) {
    int sides = 3 + r.nextInt(10);
    double radius = 60 + r.nextInt(120);
    double[] xy = new double[2 * sides];
    for (int k = 0; k < sides; k++) {
      double turn = 0.3 + k * 2 * Math.PI / sides;
      xy[2 * k] = radius * Math.cos(turn);
      xy[2 * k + 1] = radius * Math.sin(turn);
    }
    return framed(Houses.part("main", 96, "e".repeat(sides), 3 + r.nextInt(12), xy), r);
  }

  private static Plan winged(Random r) {
    double rise = 4 + r.nextInt(9);
    double width = 240 + r.nextInt(240);
    double span = 100 + r.nextInt((int) width - 110);
    double at = 200 + r.nextInt(200);
    Part main = framed(Houses.box("egeg", rise, 900, width), r);
    Part wing =
        Houses.part("wing", 97.125, "geoe", rise, at, -144, at + span, -144, at + span, 0, at, 0);
    Part like = wing.withFrame(main.frame());
    return Houses.plan(main, like)
        .withJoins(
            List.of(
                new Join("wing", "main", Join.Method.THROUGH, Join.MadeFor.FRAME, Extras.NONE)));
  }

  @TestFactory
  Stream<DynamicTest> jacksOfARowStepEvenly() {
    return each(
        house -> {
          Map<String, List<Double>> rows = new HashMap<>();
          for (Rafter r : house.set().rafters()) {
            r.difference().ifPresent(d -> assertThat(d).isPositive());
            if (r.kind() == RafterKind.HIP_JACK && r.difference().isPresent()) {
              String slope = r.part() + Math.rint(r.plumbCut() * 1e4) + cut(r.head());
              rows.computeIfAbsent(slope, k -> new ArrayList<>()).add(r.difference().get());
            }
          }
          rows.values()
              .forEach(
                  all -> {
                    all.sort(null);
                    double usual = all.get(all.size() / 2);
                    // One that moved out of the wood of a valley is nearer to the next by that.
                    long moved = all.stream().filter(d -> Math.abs(d - usual) > 0.02).count();
                    assertThat(moved).isLessThanOrEqualTo(house.isConvex() ? 0 : 2);
                  });
        });
  }

  private static String cut(RafterEnd end) {
    return " " + Math.rint(end.left().planAngle() * 1e4);
  }

  /** Line, what comes off and tail close; run and rise are those of the places. */
  @TestFactory
  Stream<DynamicTest> lengthsClose() {
    return each(
        house -> {
          for (Rafter r : house.set().rafters()) {
            double per = r.lineLength() / r.planRun();
            assertThat(r.length() - r.tail() - r.over() + (r.shortenFoot() + r.shortenHead()) * per)
                .as(r.mark())
                .isEqualTo(r.lineLength(), within(1e-6));
            for (Segment place : r.places()) {
              assertThat(place.length()).as(r.mark()).isEqualTo(r.planRun(), within(0.01));
            }
          }
        });
  }

  /**
   * Feet, heads and all between lie on the roof, the lowest of the frame planes; so do the top
   * corners of a dropped hip, one of them touching, neither above.
   */
  @TestFactory
  Stream<DynamicTest> topEdgesLieOnTheRoof() {
    return each(
        house -> {
          for (Rafter r : house.isConvex() ? house.set().rafters() : List.<Rafter>of()) {
            for (Segment place : r.places()) {
              double foot = roof(house.plan(), place.from());
              double head = roof(house.plan(), place.to());
              assertThat(head - foot).as(r.mark()).isEqualTo(r.rise(), within(0.01));
              assertThat(roof(house.plan(), place.middle()))
                  .as(r.mark())
                  .isEqualTo((foot + head) / 2, within(0.01));
              if (r.kind() == RafterKind.HIP) {
                corners(house.plan(), r, place);
              }
            }
          }
        });
  }

  private static double roof(Plan plan, Point at) {
    return plan.parts().stream()
        .flatMap(p -> plan.sides(p).stream())
        .filter(s -> s.kind() == EdgeKind.EAVE)
        .mapToDouble(s -> s.framePlane().heightAt(at))
        .min()
        .orElseThrow();
  }

  private static void corners(Plan plan, Rafter hip, Segment place) {
    Point left = place.direction().left().times(hip.thickness() / 2);
    double top = roof(plan, place.middle()) - hip.drop();
    double l = roof(plan, place.middle().plus(left)) - top;
    double q = roof(plan, place.middle().minus(left)) - top;
    assertThat(Math.min(l, q)).as(hip.mark()).isEqualTo(0, within(1e-6));
  }

  /**
   * No two rafters have wood in one place. Where a valley ends on a ridge beside a jack that
   * happens to stand there, a corner of one may be nicked by hand: less than two thirds of a
   * thickness square.
   */
  @TestFactory
  Stream<DynamicTest> woodIsNotInWood() {
    return each(
        house -> {
          List<Rafter> all = house.set().rafters();
          List<Region> wood = new ArrayList<>();
          List<String> names = new ArrayList<>();
          for (Rafter r : all) {
            for (int i = 0; i < r.places().size(); i++) {
              Region own = PlanWood.ground(r, i);
              for (int k = 0; k < wood.size(); k++) {
                if (near(own, wood.get(k))) {
                  assertThat(PlanWood.shared(own, wood.get(k)))
                      .as(r.mark() + " in " + names.get(k) + " at " + r.places().get(i))
                      .isLessThan(house.isConvex() ? DUST : NICK * r.thickness() * r.thickness());
                }
              }
              wood.add(own);
              names.add(r.mark());
            }
          }
        });
  }

  private static boolean near(Region a, Region b) {
    var p = a.shell().bounds();
    var q = b.shell().bounds();
    return p.minX() < q.maxX() && q.minX() < p.maxX() && p.minY() < q.maxY() && q.minY() < p.maxY();
  }

  /** An end that names what carries it touches it: half its thickness from its middle line. */
  @TestFactory
  Stream<DynamicTest> endsTouchWhatCarriesThem() {
    return each(
        house -> {
          for (Rafter r : house.set().rafters()) {
            for (Segment place : r.places()) {
              touches(house.set(), r, r.head(), place.to(), place.direction().times(-1));
              touches(house.set(), r, r.foot(), place.from(), place.direction());
            }
          }
        });
  }

  private static void touches(FramingSet set, Rafter r, RafterEnd end, Point at, Point back) {
    Optional<RafterKind> on =
        switch (end.on()) {
          case RIDGE -> Optional.of(RafterKind.RIDGE);
          case HIP -> Optional.of(RafterKind.HIP);
          case VALLEY -> Optional.of(RafterKind.VALLEY);
          default -> Optional.empty();
        };
    if (on.isPresent() && r.kind() != RafterKind.RIDGE) {
      Point cut = at.plus(back.times(end.off()));
      double nearest =
          set.rafters().stream()
              .filter(o -> o.kind() == on.get())
              .flatMap(o -> o.places().stream())
              .filter(p -> p.distance(at) < 4 * r.thickness())
              .mapToDouble(p -> Math.abs(p.offset(cut)))
              .map(d -> Math.abs(d - r.thickness() / 2))
              .min()
              .orElse(Double.POSITIVE_INFINITY);
      assertThat(nearest).as(r.mark() + " on " + on.get() + " at " + at).isLessThan(0.01);
    }
  }

  private static Stream<DynamicTest> each(Consumer<House> law) {
    return houses().map(h -> DynamicTest.dynamicTest(h.name(), () -> law.accept(h)));
  }
}
