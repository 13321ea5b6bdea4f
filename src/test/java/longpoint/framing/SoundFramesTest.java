package longpoint.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterKind;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.Girder.Hanger;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.framing.truss.TrussMark;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Problem;
import longpoint.planfile.PlanFile;
import longpoint.sheets.DrawnPlans;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What holds of every frame that can stand, on the sample plans and on houses of every shape: no
 * two hangers in one place, no figure that is not a number, no rafter shorter than its cuts allow,
 * no tail under another roof. Two pieces of wood cannot be in one place: plain fact.
 */
class SoundFramesTest {
  private static Map<String, Plan> plans() {
    Map<String, Plan> all = new LinkedHashMap<>(FramingLawsTest.houses());
    all.putAll(DrawnPlans.all());
    try (Stream<Path> files = Files.list(Path.of("sample-plans"))) {
      files
          .filter(f -> f.toString().endsWith(".json"))
          .sorted()
          .forEach(f -> all.put(f.getFileName().toString(), read(f)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }

  private static Plan read(Path file) {
    try {
      return PlanFile.read(file).plan();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Plan sample(String name) {
    return read(Path.of("sample-plans", name + ".json"));
  }

  private static Stream<DynamicTest> each(BiConsumer<Plan, FramingSet> law) {
    return plans().entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(), () -> law.accept(e.getValue(), Houses.solve(e.getValue()))));
  }

  private static double thickness(Plan plan, FramingSet set, String truss) {
    Truss girder = truss(set, truss);
    return plan.part(girder.part()).orElseThrow().frame().thickness();
  }

  private static Truss truss(FramingSet set, String id) {
    return set.trusses().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
  }

  private static TrussMark mark(FramingSet set, String mark) {
    return set.marks().stream().filter(m -> m.mark().equals(mark)).findFirst().orElseThrow();
  }

  @TestFactory
  Stream<DynamicTest> noTwoHangersInOnePlace() {
    return each(
        (plan, set) -> {
          for (Girder girder : set.girders()) {
            List<Double> along = girder.hangers().stream().map(Hanger::along).toList();
            double least = thickness(plan, set, girder.truss());
            for (int i = 0; i + 1 < along.size(); i++) {
              assertThat(along.get(i + 1) - along.get(i))
                  .as(girder.truss() + " at " + along.get(i))
                  .isGreaterThanOrEqualTo(least);
            }
          }
        });
  }

  /** Leaving a jack out would leave the deck's edge without support over two spacings. */
  @TestFactory
  Stream<DynamicTest> jacksStandNoFartherApartThanTheSpacing() {
    return Stream.of("heronsmere-lodge", "marrowgate-bungalow", "fernholt-garage")
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name,
                    () -> {
                      Plan plan = sample(name);
                      FramingSet set = Houses.solve(plan);
                      Truss girder =
                          set.trusses().stream()
                              .filter(t -> t.kind() == TrussKind.HIP_GIRDER)
                              .findFirst()
                              .orElseThrow();
                      // Jacks of the end wall run the girder's way across; those of the side walls
                      // run along it.
                      List<Double> places =
                          set.trusses().stream()
                              .filter(t -> t.run().equals(girder.run()))
                              .filter(
                                  t ->
                                      t.kind() == TrussKind.JACK
                                          || t.kind() == TrussKind.CORNER_JACK)
                              .filter(t -> square(t, girder) && startsNear(t, set, girder))
                              .map(Truss::station)
                              .sorted()
                              .toList();
                      Frame frame = plan.part(girder.part()).orElseThrow().frame();
                      assertThat(places).hasSizeGreaterThan(5);
                      assertThat(places.get(0)).isEqualTo(frame.spacing(), within(1e-6));
                      for (int i = 0; i + 1 < places.size(); i++) {
                        assertThat(places.get(i + 1) - places.get(i))
                            .isBetween(2 * frame.thickness(), frame.spacing() + 1e-6);
                      }
                    }));
  }

  private static boolean square(Truss t, Truss girder) {
    return Math.abs(t.to().minus(t.from()).unit().dot(girder.to().minus(girder.from()).unit()))
        < 0.1;
  }

  /** Whether a jack belongs to the first hip end, not the one at the far end of the run. */
  private static boolean startsNear(Truss t, FramingSet set, Truss girder) {
    Truss other =
        set.trusses().stream()
            .filter(g -> g.kind() == TrussKind.HIP_GIRDER && g.run().equals(girder.run()))
            .reduce((a, b) -> b)
            .orElseThrow();
    return other.id().equals(girder.id())
        || t.from().distance(girder.from()) + t.from().distance(girder.to())
            < t.from().distance(other.from()) + t.from().distance(other.to());
  }

  @TestFactory
  Stream<DynamicTest> everyFigureIsANumber() {
    return each((plan, set) -> assertThat(numbers(set, "")).isEmpty());
  }

  /** Names of all that is not finite. */
  private static List<String> numbers(Object o, String path) {
    List<String> bad = new ArrayList<>();
    if (o instanceof Double d && !Double.isFinite(d)) {
      bad.add(path + " = " + d);
    } else if (o instanceof Collection<?> all) {
      int i = 0;
      for (Object each : all) {
        bad.addAll(numbers(each, path + "/" + i++));
      }
    } else if (o instanceof Optional<?> maybe) {
      maybe.ifPresent(v -> bad.addAll(numbers(v, path)));
    } else if (o instanceof Record) {
      for (RecordComponent c : o.getClass().getRecordComponents()) {
        try {
          c.getAccessor().setAccessible(true);
          bad.addAll(numbers(c.getAccessor().invoke(o), path + "/" + c.getName()));
        } catch (ReflectiveOperationException e) {
          throw new IllegalStateException(path, e);
        }
      }
    }
    return bad;
  }

  @TestFactory
  Stream<DynamicTest> raftersAreAsLongAsTheirLinesAndCutsAllow() {
    return plans().entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(),
                    () -> {
                      for (Rafter r : Houses.solve(withRafters(e.getValue())).rafters()) {
                        double off = r.shortenFoot() + r.shortenHead();
                        double perRun = r.lineLength() / r.planRun();
                        boolean ridge = r.kind() == RafterKind.RIDGE;
                        assertThat(off)
                            .as(r.toString())
                            .isBetween(ridge ? -r.planRun() : 0.0, r.planRun());
                        assertThat(r.length() + off * perRun)
                            .as(r.toString())
                            .isEqualTo(r.lineLength() + r.tail() + r.over(), within(1e-6));
                        assertThat(r.length()).as(r.toString()).isGreaterThan(r.tail());
                      }
                    }));
  }

  private static Plan withRafters(Plan plan) {
    return plan.withParts(plan.parts().stream().map(SoundFramesTest::withRafters).toList());
  }

  private static Part withRafters(Part part) {
    return part.withFrame(part.frame().withMethod(Frame.Method.RAFTER));
  }

  /**
   * A common whose head lies on the corner of hip and ridge: run 120 at 5 in 12 rises 50 and
   * measures 130; half of 1 1/2 comes off at the ridge, as off any common (US Navy NAVEDTRA 14044
   * vol. 2, ch. 2): (120 − 3/4) × 13 / 12 and the tail of 16 in × 13 / 12.
   */
  @Test
  void commonAtTheEndOfARidge() {
    List<Rafter> commons =
        Houses.solve(withRafters(DrawnPlans.all().get("yard"))).rafters().stream()
            .filter(r -> Math.abs(r.planRun() - 120) < 1e-6 && Math.abs(r.rise() - 50) < 1e-6)
            .filter(r -> r.tail() > 0 && r.shortenFoot() == 0)
            .filter(r -> r.kind() == RafterKind.COMMON)
            .toList();
    assertThat(commons).isNotEmpty();
    for (Rafter r : commons) {
      assertThat(r.shortenHead()).isEqualTo(0.75, within(1e-9));
      assertThat(r.length()).isEqualTo((120 - 0.75 + 16) * 13 / 12, within(1e-6));
    }
  }

  /** A through wing 12 ft wide, mouth from 168 to 312 in the middle of the main wall. */
  @Test
  void noTailsUnderTheOtherRoof() {
    FramingSet set = Houses.solve(Houses.gardenWing(Join.Method.THROUGH));
    TrussMark girder = mark(set, set.girders().get(0).mark());
    assertThat(girder.tailLow()).isZero();
    assertThat(girder.tailHigh()).isZero();
    for (double corner : new double[] {168, 312}) {
      Truss t =
          set.trusses().stream()
              .filter(x -> x.part().equals("main") && Math.abs(x.from().x() - corner) < 1e-6)
              .findFirst()
              .orElseThrow();
      TrussMark mark = mark(set, t.mark());
      assertThat(Math.min(mark.tailLow(), mark.tailHigh())).isZero();
      assertThat(Math.max(mark.tailLow(), mark.tailHigh())).isEqualTo(16);
      // It stands on the corner of the wall and hangs on nothing.
      assertThat(t.carriedFrom()).isEmpty();
      assertThat(t.carriedTo()).isEmpty();
    }
    // One spacing farther out the eave goes on.
    Truss out =
        set.trusses().stream()
            .filter(x -> x.part().equals("main") && Math.abs(x.from().x() - 144) < 1e-6)
            .findFirst()
            .orElseThrow();
    assertThat(mark(set, out.mark()).tailLow()).isEqualTo(16);
    assertThat(mark(set, out.mark()).tailHigh()).isEqualTo(16);
  }

  /** Laid over, the wing's last truss stands under the house's eave as a girder would. */
  @Test
  void lastTrussOfAWingLaidOver() {
    Plan over = Houses.gardenWing(Join.Method.OVERLAY);
    assertThat(lastTails(over)).containsExactly(0.0, 0.0);
    // Without an eave above it the wing's own eave runs on to the wall.
    Part main = over.part("main").orElseThrow();
    for (int i : new int[] {0, 2}) {
      main = main.withEdge(i, main.edges().get(i).withOverhang(0));
    }
    assertThat(lastTails(over.withPart(main))).containsExactly(16.0, 16.0);
  }

  /** Tails of the wing's truss that stands against the house, 3/4 in off its wall. */
  private static List<Double> lastTails(Plan plan) {
    FramingSet set = Houses.solve(plan);
    Truss last =
        set.trusses().stream()
            .filter(t -> t.part().equals("wing") && t.kind() != TrussKind.VALLEY)
            .filter(t -> Math.abs(t.from().y() + 0.75) < 1e-6)
            .findFirst()
            .orElseThrow();
    return List.of(mark(set, last.mark()).tailLow(), mark(set, last.mark()).tailHigh());
  }

  /**
   * Fernholt: the wing carries the house's hip wall on in line. At that corner no hip jack has a
   * tail, the wing's girder keeps the one on the wall that goes on, and the hip girder hangs on it.
   */
  @Test
  void wingInLineWithAHipWall() {
    FramingSet set = Houses.solve(sample("fernholt-garage"));
    List<Double> hipTails =
        set.trusses().stream()
            .filter(t -> t.kind() == TrussKind.HIP_JACK)
            .map(t -> mark(set, t.mark()).tailLow())
            .sorted()
            .toList();
    assertThat(hipTails).hasSize(2);
    assertThat(hipTails.get(0)).isZero();
    // Overhang 450 on both walls, seen along the hip.
    assertThat(hipTails.get(1)).isEqualTo(450 * Math.sqrt(2), within(1e-6));
    TrussMark girder =
        set.marks().stream().filter(m -> m.kind() == TrussKind.GIRDER).findFirst().orElseThrow();
    assertThat(Math.min(girder.tailLow(), girder.tailHigh())).isZero();
    assertThat(Math.max(girder.tailLow(), girder.tailHigh())).isEqualTo(450, within(1e-9));
    assertThat(set.problems())
        .filteredOn(p -> p.level() == Problem.Level.NOTE)
        .extracting(Problem::message)
        .containsExactly(
            "In "
                + sample("fernholt-garage").parts().get(0).name()
                + " a girder carries a girder: HG1 hangs on G1."
                + " The supplier designs that connection.");
  }
}
