package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longpoint.drawing.Mark;
import longpoint.drawing.Pen;
import longpoint.drawing.Pick;
import longpoint.drawing.Strokes;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Edge;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.Slope;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@Execution(ExecutionMode.CONCURRENT)
class PlanViewTest {
  private static final double EIGHTH = 96 / 25.4;

  private static PlanView view(Plan plan) {
    return PlanView.of(plan, Roof.solve(plan), EIGHTH);
  }

  @Test
  void everyWallIsALineWithItsSidesId() {
    PlanView view = PlanView.of(GableHouse.PLAN, GableHouse.SURFACE, EIGHTH);
    assertThat(view.walls()).hasSize(4);
    Mark.Path second = (Mark.Path) view.walls().get(1);
    assertThat(second.subject()).isEqualTo("main/1");
    assertThat(second.points()).containsExactly(new Point(480, 0), new Point(480, 336));
  }

  @Test
  void whatLiesUnderThePointerIsNamed() {
    PlanView view = PlanView.of(GableHouse.PLAN, GableHouse.SURFACE, EIGHTH);
    List<Mark> marks = view.drawing().marks();
    assertThat(subjectAt(marks, 100, 1)).isEqualTo("main/0");
    assertThat(subjectAt(marks, 481, 50)).isEqualTo("main/1");
    assertThat(subjectAt(marks, 100, 168)).isEqualTo("l0");
    assertThat(subjectAt(marks, 100, 250)).isEqualTo("main/2");
    assertThat(subjectAt(marks, -400, 250)).isEqualTo("");
  }

  private static String subjectAt(List<Mark> marks, double x, double y) {
    return Pick.at(marks, new Point(x, y), 4, EIGHTH).map(Pick::subject).orElse("");
  }

  /** Arrows point down the slope: the way the height falls. */
  @TestFactory
  Stream<DynamicTest> arrowsPointDownTheSlope() {
    return each(
        (plan, surface) -> {
          int arrows = 0;
          for (Mark mark : PlanView.of(plan, surface, EIGHTH).labels()) {
            if (mark instanceof Mark.Path p
                && p.layer().equals(Layers.SLOPE)
                && p.points().size() == 3) {
              // The head: wing, tip, wing.
              RoofPlane plane = surface.plane(p.subject()).orElseThrow();
              Point tip = p.points().get(1);
              Point back = p.points().get(0).toward(p.points().get(2), 0.5);
              double fall = plane.plane().heightAt(back) - plane.plane().heightAt(tip);
              assertThat(fall / back.distance(tip)).isCloseTo(plane.slope(), within(1e-6));
              arrows++;
            }
          }
          assertThat(arrows > 0).isEqualTo(!surface.planes().isEmpty());
        });
  }

  @TestFactory
  Stream<DynamicTest> dimensionsSayWhatTheyMeasure() {
    return each(
        (plan, surface) -> {
          for (Mark mark : PlanView.of(plan, surface, EIGHTH).dimensions()) {
            Mark.Dimension d = (Mark.Dimension) mark;
            assertThat(d.text())
                .isEqualTo(longpoint.units.LengthText.of(d.from().distance(d.to()), plan.unit()));
          }
        });
  }

  /** The wing stands 168 in from the house's corner: the chain says 14'-0", 12'-0", 14'-0". */
  @Test
  void aWallThatAWingMeetsGetsAChain() {
    assertThat(figures(view(DrawnPlans.wing())))
        .containsExactlyInAnyOrder(
            "14'-0\"", "12'-0\"", "14'-0\"", "40'-0\"", "28'-0\"", "12'-0\"");
  }

  @Test
  void aYardIsTiedToTheOuterWalls() {
    assertThat(figures(view(DrawnPlans.all().get("yard"))))
        .contains("20'-0\"", "19'-2\"", "20'-10\"", "18'-4\"", "13'-4\"");
  }

  @Test
  void whatLiesBeneathTheWingIsDashed() {
    List<Mark.Path> hidden =
        view(DrawnPlans.wing()).roof().stream()
            .map(m -> (Mark.Path) m)
            .filter(p -> p.layer().equals(Layers.COVERED))
            .toList();
    assertThat(hidden).isNotEmpty();
    assertThat(Layers.COVERED.pen().type()).isEqualTo(Pen.LineType.DASHED);
    // The house's own eave runs on beneath the wing at y = −17.5.
    assertThat(hidden)
        .anyMatch(p -> p.points().stream().allMatch(q -> Math.abs(q.y() + 17.5) < 1e-6));
  }

  @TestFactory
  Stream<DynamicTest> noFigureStandsOnAnotherAndNoStrokeRunsThroughOne() {
    return each(
        (plan, surface) -> {
          PlanView view = PlanView.of(plan, surface, plan.unit().fromMillimetres(96));
          checkFree(view, true);
        });
  }

  /**
   * Random outlines of right angles, at random scales: some lettering may be left off, none covers.
   */
  @Test
  void randomPlansKeepTheirLetteringApart() {
    Random random = new Random(7);
    for (int i = 0; i < 40; i++) {
      Plan plan = staircase(random);
      double unitsPerMm = (20 + random.nextInt(200)) / 25.4;
      PlanView view = PlanView.of(plan, Roof.solve(plan), unitsPerMm);
      checkFree(view, false);
    }
  }

  /** A building with a stepped front: walls of random length. */
  private static Plan staircase(Random random) {
    List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
    double x = 0;
    double y = 0;
    for (int i = 0; i < 1 + random.nextInt(8); i++) {
      x += 20 + random.nextInt(200);
      points.add(new Point(x, y));
      y += (random.nextBoolean() ? 1 : -1) * (10 + random.nextInt(90));
      points.add(new Point(x, y));
    }
    x += 100;
    points.add(new Point(x, y));
    points.add(new Point(x, 1000));
    points.add(new Point(0, 1000));
    Ring ring = new Ring(points);
    Part shape = GableHouse.PLAN.parts().get(0);
    Edge eave = Edge.eave(Slope.inTwelve(1 + random.nextInt(12)));
    return GableHouse.PLAN.withParts(
        List.of(
            shape.withShape(ring, List.of(), java.util.Collections.nCopies(ring.size(), eave))));
  }

  private static void checkFree(PlanView view, boolean clean) {
    List<Strokes.Label> labels = Strokes.of(view.drawing().marks(), view.unitsPerMm()).labels();
    for (int i = 0; i < labels.size(); i++) {
      for (int j = i + 1; j < labels.size(); j++) {
        assertThat(labels.get(i).box().overlaps(labels.get(j).box()))
            .as("%s / %s", labels.get(i).mark(), labels.get(j).mark())
            .isFalse();
      }
    }
    if (clean) {
      for (Strokes.Stroke stroke :
          Strokes.of(view.drawing().marks(), view.unitsPerMm()).strokes()) {
        for (Strokes.Label label : labels) {
          longpoint.drawing.Box thin = longpoint.drawing.Box.around(stroke.segment(), 0);
          assertThat(label.box().overlaps(thin))
              .as("%s / %s", label.mark(), stroke.mark())
              .isFalse();
        }
      }
    }
  }

  /** From a pinhead of paper to a thousand times real size. */
  @Test
  void anyZoomIsDrawnAtOnce() {
    Plan plan = DrawnPlans.wing();
    RoofSurface surface = Roof.solve(plan);
    for (double unitsPerMm : new double[] {1e9, 1e4, 1e-1, 1e-2, 1e-3, 1e-5}) {
      PlanView view =
          assertTimeoutPreemptively(
              Duration.ofSeconds(10), () -> PlanView.of(plan, surface, unitsPerMm));
      assertThat(view.walls()).hasSize(8);
    }
  }

  /** At 1:480 the bays have no room for all their lettering; the CAD drawing letters larger. */
  @Test
  void theCadDrawingLeavesNothingOff() {
    Plan plan = DrawnPlans.all().get("bays");
    RoofSurface surface = Roof.solve(plan);
    PaperScale small =
        PaperScale.of(plan.unit()).stream().filter(s -> s.ratio() == 480).findFirst().orElseThrow();
    assertThat(PlanView.of(plan, surface, small.unitsPerMm(plan.unit())).leftOff()).isPositive();
    ModelDrawing model = ModelDrawing.of(plan, surface, small);
    assertThat(model.leftOff()).isZero();
    assertThat(model.scale().ratio()).isLessThan(480);
  }

  @Test
  void plainPlansHaveRoomForAllTheirLettering() {
    for (String name : List.of("gable", "wing", "hip-el", "metric-el", "yard", "turned")) {
      Plan plan = DrawnPlans.all().get(name);
      PlanView view = PlanView.of(plan, Roof.solve(plan), plan.unit().fromMillimetres(96));
      assertThat(view.leftOff()).as(name).isZero();
    }
  }

  @Test
  void lettersRunOnAfterZ() {
    RoofPlane plane = GableHouse.SURFACE.planes().get(0);
    List<RoofPlane> many = new ArrayList<>();
    for (int i = 0; i < 704; i++) {
      many.add(
          new RoofPlane("p" + i, "main", 0, plane.plane(), plane.visible(), List.of(), List.of()));
    }
    List<String> letters =
        List.copyOf(PlaneMarks.of(new RoofSurface(many, List.of(), List.of())).values());
    assertThat(letters.get(25)).isEqualTo("Z");
    assertThat(letters.get(26)).isEqualTo("AA");
    assertThat(letters.get(701)).isEqualTo("ZZ");
    assertThat(letters.get(702)).isEqualTo("AAA");
    assertThat(Set.copyOf(letters)).hasSize(704);
  }

  private static List<String> figures(PlanView view) {
    return view.dimensions().stream()
        .map(m -> ((Mark.Dimension) m).text())
        .collect(Collectors.toList());
  }

  private interface Check {
    void check(Plan plan, RoofSurface surface);
  }

  private static Stream<DynamicTest> each(Check check) {
    return DrawnPlans.all().entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(), () -> check.check(e.getValue(), Roof.solve(e.getValue()))));
  }
}
