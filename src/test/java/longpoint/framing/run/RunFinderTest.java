package longpoint.framing.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import longpoint.framing.Houses;
import longpoint.plan.Plan;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class RunFinderTest {
  /** Outline, its edges, and the runs it should fall into as span × length, main run first. */
  private record Shape(String name, String edges, double[] xy, String... runs) {}

  private static double[] xy(double... xy) {
    return xy;
  }

  @TestFactory
  Stream<DynamicTest> shapes() {
    return Stream.of(
            new Shape("box", "egeg", xy(0, 0, 40, 0, 40, 24, 0, 24), "24x40"),
            new Shape("tall box", "gege", xy(0, 0, 20, 0, 20, 40, 0, 40), "20x40"),
            new Shape(
                "L, wider leg goes through",
                "eeeege",
                xy(0, 0, 40, 0, 40, 24, 20, 24, 20, 50, 0, 50),
                "24x40",
                "20x26"),
            new Shape(
                "L of equal legs, longer leg goes through",
                "eeeege",
                xy(0, 0, 40, 0, 40, 24, 24, 24, 24, 60, 0, 60),
                "24x60",
                "24x16"),
            new Shape(
                "T",
                "egeegeeg",
                xy(0, 0, 60, 0, 60, 28, 40, 28, 40, 50, 20, 50, 20, 28, 0, 28),
                "28x60",
                "20x22"),
            new Shape(
                "T whose stem is wider",
                "egeegeeg",
                xy(0, 0, 60, 0, 60, 20, 44, 20, 44, 50, 16, 50, 16, 20, 0, 20),
                "28x50",
                "20x16",
                "20x16"),
            new Shape(
                "U",
                "eegeeege",
                xy(0, 0, 70, 0, 70, 50, 50, 50, 50, 26, 20, 26, 20, 50, 0, 50),
                "26x70",
                "20x24",
                "20x24"),
            new Shape(
                "cross",
                "geegeegeegee",
                xy(
                    20, 0, 40, 0, 40, 16, 60, 16, 60, 44, 40, 44, 40, 60, 20, 60, 20, 44, 0, 44, 0,
                    16, 20, 16),
                "28x60",
                "20x16",
                "20x16"),
            new Shape(
                "gabled bump",
                "egeegege",
                xy(10, 0, 10, -4, 26, -4, 26, 0, 60, 0, 60, 28, 0, 28, 0, 0),
                "28x60",
                "16x4"),
            new Shape(
                "narrower run in line",
                "eeegegee",
                xy(0, 0, 30, 0, 30, 4, 60, 4, 60, 24, 30, 24, 30, 28, 0, 28),
                "28x30",
                "20x30"))
        .map(s -> DynamicTest.dynamicTest(s.name(), () -> check(s)));
  }

  private static void check(Shape shape) {
    double[] inches = new double[shape.xy().length];
    for (int i = 0; i < inches.length; i++) {
      inches[i] = shape.xy()[i] * 12;
    }
    Plan plan = Houses.plan(Houses.part("p", 96, shape.edges(), 8, inches));
    FoundRuns found = RunFinder.find(plan);
    assertThat(found.problems()).isEmpty();
    assertThat(found.runs())
        .extracting(r -> Math.round(r.width() / 12) + "x" + Math.round(r.length() / 12))
        .containsExactly(shape.runs());
    assertThat(found.meetings()).hasSize(shape.runs().length - 1);
    assertThat(found.proposals()).hasSize(shape.runs().length > 1 ? 1 : 0);
  }

  /**
   * The roof runs on over a bump with an eave out front: a longer span, not a wing. Over its side
   * walls a truss stands inside their outer face, so those of the layout at 120 and 312 give way.
   */
  @Test
  void bumpUnderARunOnEave() {
    Plan plan =
        Houses.plan(
            Houses.part(
                "p",
                96,
                "gegegege",
                8,
                120,
                0,
                120,
                -48,
                312,
                -48,
                312,
                0,
                720,
                0,
                720,
                336,
                0,
                336,
                0,
                0));
    FoundRuns found = RunFinder.find(plan);
    assertThat(found.runs()).hasSize(1);
    assertThat(found.runs().get(0).extensions()).hasSize(1);
    assertThat(found.runs().get(0).extensions().get(0).depth()).isEqualTo(48);
    assertThat(Houses.solve(plan).trusses().stream().filter(t -> t.span() == 384)).hasSize(9);
    assertThat(Houses.solve(plan).trusses().stream().filter(t -> t.span() == 336)).hasSize(22);
  }

  /** Side by side with ridges that pass each other: more than one main run; said, not guessed. */
  @Test
  void whatIsTooInvolvedIsSaid() {
    Plan plan =
        Houses.plan(
            Houses.part(
                "p",
                96,
                "eeeeeeee",
                8,
                0,
                0,
                480,
                0,
                480,
                288,
                720,
                288,
                720,
                624,
                240,
                624,
                240,
                288,
                0,
                288));
    FoundRuns found = RunFinder.find(plan);
    assertThat(found.problems()).hasSize(1);
    assertThat(found.problems().get(0).cure()).contains("several parts");
  }

  @Test
  void crookedWallIsNamed() {
    Plan plan = Houses.plan(Houses.part("p", 96, "eeee", 8, 0, 0, 480, 0, 500, 288, 0, 288));
    assertThat(RunFinder.find(plan).problems().get(0).where()).isEqualTo("p/1");
  }
}
