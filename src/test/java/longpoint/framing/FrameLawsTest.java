package longpoint.framing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The laws of {@link FrameLaws} on houses as people draw them and on made-up ones. */
class FrameLawsTest {
  /** Each broke a law once: short hips, unequal heels, slender hips, caps of no height. */
  private static final List<Long> SEEDS =
      List.of(1L, 13L, 17L, 20L, 39L, 93L, 158L, 207L, 264L, 283L, 333L, 413L, 492L, 541L, 1956L);

  @TestFactory
  Stream<DynamicTest> nothingToLaughAt() {
    Map<String, Plan> plans = new LinkedHashMap<>(TypicalPlans.all());
    SEEDS.forEach(seed -> plans.put("seed " + seed, TypicalPlans.random(seed)));
    return plans.entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> check(e.getValue())));
  }

  private static void check(Plan plan) {
    RoofSurface roof = Roof.solve(plan);
    FramingSet set = Framing.solve(plan, roof);
    List<String> broken = new ArrayList<>(FrameLaws.broken(plan, roof, set));
    assertThat(broken).isEmpty();
    assertThat(set.trusses().isEmpty())
        .isEqualTo(
            set.problems().stream().anyMatch(p -> p.level() == Problem.Level.ERROR)
                || set.tapes().isEmpty());
  }
}
