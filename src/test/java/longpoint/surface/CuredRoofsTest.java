package longpoint.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Made-up plans that once broke a law of a roof or were refused: as drawn, turned, mirrored, far.
 */
class CuredRoofsTest {
  private static final List<String> SOUND =
      List.of(
          "high-eave-beside-wide-rake-1",
          "high-eave-beside-wide-rake-2",
          "high-eave-beside-wide-rake-3",
          "high-eave-beside-wide-rake-4",
          "high-eave-beside-wide-rake-5",
          "high-eave-at-inside-corner-1",
          "high-eave-at-inside-corner-2",
          "high-eave-in-a-notch-1",
          "high-eave-in-a-notch-2",
          "hips-in-one-line-1",
          "hips-in-one-line-2",
          "hips-in-one-line-3",
          "hips-in-one-line-4",
          "hips-in-one-line-5",
          "hips-in-one-line-6",
          "hips-in-one-line-7",
          "plane-round-a-courtyard-1",
          "plane-round-a-courtyard-2",
          "plane-round-a-courtyard-3");

  @TestFactory
  Stream<DynamicTest> asDrawn() {
    return each(p -> p);
  }

  @TestFactory
  Stream<DynamicTest> turned() {
    return each(p -> RandomPlans.turned(p, 33));
  }

  @TestFactory
  Stream<DynamicTest> mirrored() {
    return each(RandomPlans::mirrored);
  }

  @TestFactory
  Stream<DynamicTest> farOff() {
    return each(p -> RandomPlans.changed(p, q -> new Point(q.x() - 3_000_000, q.y() + 1_000_000)));
  }

  /** The heel named in the cure is where the side's plane begins. */
  @Test
  void anEaveClosedOverIsNamedWithTheHeelThatFreesIt() {
    closedOver("eave-closed-over-1", "Set its heel lower than 1'-3 5/16\"", 15.25, 15.35);
    closedOver("eave-closed-over-2", "Set its heel to 0'-5\" or less", 5, 10.5);
  }

  private static void closedOver(String name, String cure, double frees, double closes) {
    Plan plan = plan(name);
    assertThat(Roof.solve(plan).problems())
        .filteredOn(p -> p.level() == Problem.Level.ERROR)
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.where()).isEqualTo("star/6");
              assertThat(p.cure()).startsWith(cure);
            });
    assertThat(Roof.solve(withHeel(plan, frees)).plane("star/6")).isPresent();
    assertThat(Roof.solve(withHeel(plan, closes)).plane("star/6")).isEmpty();
  }

  private static Plan withHeel(Plan plan, double heel) {
    return plan.withPart(
        plan.parts().get(0).withEdge(6, plan.parts().get(0).edges().get(6).withHeel(heel)));
  }

  private static Stream<DynamicTest> each(UnaryOperator<Plan> change) {
    return SOUND.stream().map(n -> DynamicTest.dynamicTest(n, () -> check(plan(n), change)));
  }

  private static void check(Plan plan, UnaryOperator<Plan> change) {
    RoofSurface drawn = Roof.solve(plan);
    RoofSurface changed = Roof.solve(change.apply(plan));
    RoofLaws.check(changed);
    assertThat(changed.problems())
        .filteredOn(p -> p.level() == Problem.Level.ERROR)
        .noneMatch(p -> p.message().contains("worked out"));
    assertThat(changed.planes()).hasSameSizeAs(drawn.planes());
    for (int i = 0; i < drawn.planes().size(); i++) {
      // In a mirror the sides are numbered the other way round, so planes are compared by size.
      assertThat(areas(changed).get(i)).isCloseTo(areas(drawn).get(i), within(1e-3));
    }
    for (LineKind kind : LineKind.values()) {
      assertThat(length(changed, kind)).isCloseTo(length(drawn, kind), within(1e-4));
    }
  }

  private static List<Double> areas(RoofSurface roof) {
    return roof.planes().stream().map(RoofPlane::area).sorted().toList();
  }

  private static double length(RoofSurface roof, LineKind kind) {
    return roof.lines(kind).stream().mapToDouble(RoofLine::length).sum();
  }

  private static Plan plan(String name) {
    try (InputStream in = CuredRoofsTest.class.getResourceAsStream("cured/" + name + ".json")) {
      return PlanFile.read(in).plan();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
