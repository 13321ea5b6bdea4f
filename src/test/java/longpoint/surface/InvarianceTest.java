package longpoint.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Edge;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A roof does not depend on where the plan lies, which way it is turned or in what order drawn. */
class InvarianceTest {
  @TestFactory
  Stream<DynamicTest> turned() {
    return eachHouse(p -> RandomPlans.turned(p, 17), 1);
  }

  @TestFactory
  Stream<DynamicTest> mirrored() {
    return eachHouse(RandomPlans::mirrored, 1);
  }

  @TestFactory
  Stream<DynamicTest> farFromTheOrigin() {
    return eachHouse(
        p -> RandomPlans.changed(p, q -> new Point(q.x() + 1_000_000, q.y() - 2_000_000)), 1);
  }

  @TestFactory
  Stream<DynamicTest> inMillimetres() {
    return eachHouse(p -> scaled(p, 25.4), 25.4);
  }

  @TestFactory
  Stream<DynamicTest> drawnInAnotherOrder() {
    return eachHouse(
        p -> {
          List<Part> parts = new ArrayList<>(p.parts());
          Collections.reverse(parts);
          return p.withParts(parts);
        },
        1);
  }

  @Test
  void theSamePlanGivesTheSameBytes() {
    for (Plan plan : Houses.all().values()) {
      assertThat(Roof.solve(plan).toString()).isEqualTo(Roof.solve(plan).toString());
    }
  }

  private static Stream<DynamicTest> eachHouse(UnaryOperator<Plan> change, double scale) {
    return Houses.all().entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(), () -> compare(e.getValue(), change.apply(e.getValue()), scale)));
  }

  private static void compare(Plan plan, Plan changed, double scale) {
    RoofSurface a = Roof.solve(plan);
    RoofSurface b = Roof.solve(changed);
    RoofLaws.check(a);
    RoofLaws.check(b);
    assertThat(b.problems()).hasSameSizeAs(a.problems());
    same(areas(a, scale * scale), areas(b, 1));
    for (LineKind kind : LineKind.values()) {
      same(lengths(a, kind, scale), lengths(b, kind, 1));
      same(shown(a, kind, scale), shown(b, kind, 1));
    }
  }

  private static void same(List<Double> a, List<Double> b) {
    assertThat(b).hasSameSizeAs(a);
    for (int i = 0; i < a.size(); i++) {
      assertThat(b.get(i)).isCloseTo(a.get(i), within(1e-7 * (1 + a.get(i))));
    }
  }

  private static List<Double> areas(RoofSurface roof, double factor) {
    return Stream.concat(
            roof.planes().stream().map(p -> p.area() * factor),
            roof.planes().stream().map(p -> p.coveredArea() * factor))
        .sorted()
        .toList();
  }

  private static List<Double> lengths(RoofSurface roof, LineKind kind, double factor) {
    return roof.lines(kind).stream().map(l -> l.length() * factor).sorted().toList();
  }

  /** What an overhang does not hide of each line. */
  private static List<Double> shown(RoofSurface roof, LineKind kind, double factor) {
    return roof.lines(kind).stream()
        .map(l -> roof.seen(l).stream().mapToDouble(Segment::length).sum() * factor)
        .sorted()
        .toList();
  }

  private static Plan scaled(Plan plan, double by) {
    Plan bigger = RandomPlans.changed(plan, p -> p.times(by));
    List<Part> parts = new ArrayList<>();
    for (Part part : bigger.parts()) {
      List<Edge> edges = new ArrayList<>();
      for (int i = 0; i < part.sideCount(); i++) {
        double overhang = plan.side(part, i).overhang() * by;
        double heel = plan.side(part, i).heel() * by;
        edges.add(part.edges().get(i).withOverhang(overhang).withHeel(heel));
      }
      parts.add(
          part.withShape(part.outline(), part.holes(), edges)
              .withPlateHeight(part.plateHeight() * by));
    }
    longpoint.plan.Defaults d = plan.defaults();
    return plan.withParts(parts)
        .withDefaults(
            new longpoint.plan.Defaults(
                d.slope(),
                d.overhang() * by,
                d.heel().map(h -> h * by),
                d.fascia() * by,
                d.ridgeBlockRelief() * by,
                d.lookoutFirst() * by,
                d.lookoutSpacing() * by,
                d.extras()));
  }
}
