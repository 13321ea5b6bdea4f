package longpoint.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.RoofMemory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is shown while drawing is the first part of the whole, and memory changes nothing. */
class SketchTest {
  @ParameterizedTest
  @ValueSource(strings = {"heronsmere-lodge", "sable-lane-garden-wing", "fernholt-garage"})
  void theSketchIsTheBeginningOfTheWhole(String sample) throws IOException {
    Plan plan = PlanFile.read(Path.of("sample-plans", sample + ".json")).plan();
    Design whole = Pipeline.solve(plan);
    RoofMemory memory = new RoofMemory();
    Pipeline.sketch(plan.withTitle("Another"), memory);
    Design sketch = Pipeline.sketch(plan, memory);
    assertThat(sketch.surface()).isEqualTo(whole.surface());
    assertThat(sketch.framing()).isEqualTo(whole.framing());
    assertThat(whole.problems()).containsAll(sketch.problems());
    assertThat(whole.deck().planes()).isNotEmpty();
    assertThat(Pipeline.solve(plan, memory)).isEqualTo(whole);
  }
}
