package longpoint.pipeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longpoint.deck.Sheathing;
import longpoint.field.chalk.Chalk;
import longpoint.field.lumber.Lumber;
import longpoint.field.lumber.LumberChoices;
import longpoint.field.takeoff.TakeOff;
import longpoint.field.takeoff.TakeOffChoices;
import longpoint.framing.Framing;
import longpoint.packet.Packet;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.sheets.Paper;
import longpoint.stop.CalledOff;
import longpoint.surface.Roof;
import longpoint.surface.RoofMemory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Whoever does not wait any more interrupts, and every stage ends. */
class CallingOffTest {
  private static Plan plan;
  private static Design design;

  @BeforeAll
  static void solve() throws Exception {
    plan = PlanFile.read(Path.of("sample-plans", "heronsmere-lodge.json")).plan();
    design = Pipeline.solve(plan);
  }

  /** The thread is the test runner's own. */
  @AfterEach
  void put() {
    Thread.interrupted();
  }

  @TestFactory
  Stream<DynamicTest> everyStageAsks() {
    Map<String, Runnable> stages = new LinkedHashMap<>();
    stages.put("roof", () -> Roof.solve(plan));
    stages.put("frame", () -> Framing.solve(plan, design.surface()));
    stages.put("deck", () -> Sheathing.lay(plan, design.surface(), design.framing()));
    stages.put("chalk", () -> Chalk.sheets(plan, design.framing(), design.deck()));
    stages.put(
        "take-off",
        () -> TakeOff.of(plan, design.surface(), design.deck(), TakeOffChoices.of(plan)));
    stages.put(
        "lumber",
        () -> Lumber.of(plan, design.surface(), design.framing(), LumberChoices.of(plan)));
    stages.put("sheets", () -> Packet.pages(design, Paper.TABLOID));
    return stages.entrySet().stream()
        .map(
            s ->
                DynamicTest.dynamicTest(
                    s.getKey(),
                    () -> {
                      Thread.currentThread().interrupt();
                      try {
                        assertThatThrownBy(() -> s.getValue().run()).isInstanceOf(CalledOff.class);
                      } finally {
                        Thread.interrupted();
                      }
                    }));
  }

  @Test
  void stagesAreToldInTheirOrder() {
    List<Pipeline.Stage> told = new ArrayList<>();
    Pipeline.solve(plan, new RoofMemory(), told::add);
    assertThat(told).containsExactly(Pipeline.Stage.values());
  }

  /** Called off in the middle of each stage in turn, then worked out with the same memory. */
  @Test
  void whatIsRememberedStaysWhole() {
    RoofMemory memory = new RoofMemory();
    for (Pipeline.Stage at : Pipeline.Stage.values()) {
      assertThatThrownBy(
              () ->
                  Pipeline.solve(
                      plan,
                      memory,
                      stage -> {
                        if (stage == at) {
                          Thread.currentThread().interrupt();
                        }
                      }))
          .isInstanceOf(CalledOff.class);
      Thread.interrupted();
    }
    assertThat(Pipeline.solve(plan, memory)).isEqualTo(design);
  }
}
