package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.drawing.Pick;
import longpoint.drawing.Strokes;
import longpoint.framing.Framing;
import longpoint.framing.FramingSet;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Plan;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class FrameViewTest {
  /** Inches of building to a millimetre of paper at 1:48. */
  private static final double QUARTER = 48 / 25.4;

  private static final Set<Layer> LINES =
      Set.of(FrameLayers.TRUSS, FrameLayers.GIRDER, FrameLayers.VALLEY);

  @TestFactory
  Stream<DynamicTest> everyTrussHasItsLineAndItsMark() throws Exception {
    return FrameSheetsTest.plans().entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> check(e.getValue())));
  }

  private static void check(Plan plan) {
    RoofSurface surface = Roof.solve(plan);
    FramingSet framing = Framing.solve(plan, surface);
    FrameView view = FrameView.of(plan, surface, framing, plan.unit().fromMillimetres(48));
    for (Truss truss : framing.trusses()) {
      List<Mark.Path> lines = paths(view.frame(), truss.id());
      assertThat(lines).as(truss.id()).hasSize(1);
      Segment line = new Segment(lines.get(0).points().get(0), lines.get(0).points().get(1));
      assertThat(line.distance(truss.from())).isCloseTo(0, within(1e-6));
      assertThat(line.distance(truss.to())).isCloseTo(0, within(1e-6));
      TrussMark shape =
          framing.marks().stream()
              .filter(m -> m.mark().equals(truss.mark()))
              .findFirst()
              .orElseThrow();
      assertThat(line.length())
          .isCloseTo(
              truss.from().distance(truss.to()) + shape.tailLow() + shape.tailHigh(), within(1e-6));
    }
    // Every truss and every place of a rafter is named, once, by what the schedule calls it.
    List<String> named = new ArrayList<>();
    for (Mark mark : view.labels()) {
      if (mark instanceof Mark.Text text) {
        named.add(text.subject() + " " + text.text());
      }
    }
    List<String> wanted = new ArrayList<>();
    framing.trusses().forEach(t -> wanted.add(t.id() + " " + t.mark()));
    framing
        .rafters()
        .forEach(
            r -> r.places().forEach(p -> wanted.add(r.run() + ":" + r.mark() + " " + r.mark())));
    assertThat(view.leftOff()).isZero();
    assertThat(named).containsExactlyInAnyOrderElementsOf(wanted);
    checkApart(view);
    for (Girder girder : framing.girders()) {
      checkHangers(view, framing, girder);
    }
  }

  private static void checkApart(FrameView view) {
    List<Strokes.Label> labels = Strokes.of(view.drawing().marks(), view.unitsPerMm()).labels();
    for (int i = 0; i < labels.size(); i++) {
      for (int j = i + 1; j < labels.size(); j++) {
        assertThat(labels.get(i).box().overlaps(labels.get(j).box()))
            .as("%s / %s", labels.get(i).mark(), labels.get(j).mark())
            .isFalse();
      }
    }
  }

  /** A hanger's tick stands beside the girder, level with the end of what it carries. */
  private static void checkHangers(FrameView view, FramingSet framing, Girder girder) {
    Truss carrier = truss(framing, girder.truss());
    Segment line = new Segment(carrier.from(), carrier.to());
    for (Girder.Hanger hanger : girder.hangers()) {
      Truss carried = truss(framing, hanger.carries());
      List<Point> middles =
          view.frame().stream()
              .filter(m -> m instanceof Mark.Path p && p.layer().equals(FrameLayers.HANGER))
              .map(m -> (Mark.Path) m)
              .filter(p -> p.subject().equals(hanger.carries()))
              .map(p -> p.points().get(0).toward(p.points().get(1), 0.5))
              .toList();
      Point body = carried.from().toward(carried.to(), 0.5);
      assertThat(middles)
          .anyMatch(
              m ->
                  Math.abs(line.along(m) - hanger.along()) < 1e-6
                      && Math.signum(line.offset(m)) == Math.signum(line.offset(body)));
    }
  }

  private static Truss truss(FramingSet framing, String id) {
    return framing.trusses().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<Mark.Path> paths(List<Mark> marks, String subject) {
    return marks.stream()
        .filter(m -> m instanceof Mark.Path p && LINES.contains(p.layer()))
        .map(m -> (Mark.Path) m)
        .filter(p -> p.subject().equals(subject))
        .toList();
  }

  /** Common practice: end truss flush, the next centred 24 in from the outside: 24 − 3/4. */
  @Test
  void tapeFiguresStandWhereTheyMeasure() {
    FrameView view = gable();
    List<String> figures = new ArrayList<>();
    for (int i = 0; i < view.tapes().size(); i += 2) {
      Mark.Path lead = (Mark.Path) view.tapes().get(i);
      Mark.Text text = (Mark.Text) view.tapes().get(i + 1);
      figures.add(text.text());
      double x = lead.points().get(0).x();
      boolean first = text.text().equals("0'-0\"");
      boolean second = text.text().equals("1'-11 1/4\"");
      assertThat(x).isCloseTo(first ? 0 : second ? 23.25 : x, within(1e-9));
      // Outside the tails, which end 16 in off either wall.
      assertThat(lead.points().get(0).y()).matches(y -> y < -16 || y > 352);
    }
    // 40 ft of wall: 0, then 24 k − 3/4 for k = 1 … 19, then the far end truss.
    assertThat(figures).hasSize(21).startsWith("0'-0\"", "1'-11 1/4\"", "3'-11 1/4\"");
    assertThat(figures.get(20)).isEqualTo("39'-10 1/2\"");
  }

  /**
   * By hand: rake 12 in out with a 1 1/2 in fly rafter; lookouts from its inside, x = −10.5, to the
   * near face of the first truss in, x = 23.25; the first lookout's lower edge 20 in up the slope
   * from the tail, itself 3 1/2 in wide; cos of 8 in 12 is 12/√208.
   */
  @Test
  void lookoutsLieSquareToTheRake() {
    double y = (20 + 1.75) * 12 / Math.sqrt(208) - 16;
    Point from = new Point(-10.5, y);
    Point to = new Point(23.25, y);
    assertThat(gable().frame())
        .anyMatch(
            m ->
                m instanceof Mark.Path p
                    && p.layer().equals(FrameLayers.LADDER)
                    && p.subject().equals("main/3")
                    && middle(p).distance(from.toward(to, 0.5)) < 1e-9);
  }

  private static Point middle(Mark.Path path) {
    Point sum = new Point(0, 0);
    for (Point p : path.points()) {
      sum = sum.plus(p);
    }
    return sum.times(1.0 / path.points().size());
  }

  private static FrameView gable() {
    FramingSet framing = Framing.solve(GableHouse.PLAN, GableHouse.SURFACE);
    return FrameView.of(GableHouse.PLAN, GableHouse.SURFACE, framing, QUARTER);
  }

  @Test
  void aTrussUnderThePointerIsNamed() {
    List<Mark> marks = gable().drawing().marks();
    // The truss centred on 10 ft.
    assertThat(Pick.at(marks, new Point(120.4, 77), 1, QUARTER).map(Pick::subject))
        .hasValueSatisfying(id -> assertThat(id).startsWith("main:T"));
  }

  @Test
  void largeScalesShowBothFaces() {
    FramingSet framing = Framing.solve(GableHouse.PLAN, GableHouse.SURFACE);
    FrameView view = FrameView.of(GableHouse.PLAN, GableHouse.SURFACE, framing, 12 / 25.4);
    for (Truss truss : framing.trusses()) {
      Mark.Path faces = paths(view.frame(), truss.id()).get(0);
      assertThat(faces.closed()).isTrue();
      assertThat(faces.points().get(1).distance(faces.points().get(2)))
          .isCloseTo(1.5, within(1e-9));
      assertThat(middle(faces).distance(truss.from().toward(truss.to(), 0.5)))
          .isCloseTo(0, within(1e-9));
    }
  }

  /** Bearing lines on the deck end on the set lines, which are where the two roofs meet. */
  @Test
  void valleyTrussesEndOnTheirSetLines() {
    Plan plan = DrawnPlans.wing();
    FramingSet framing = Framing.solve(plan, Roof.solve(plan));
    ValleySet set = framing.valleySets().get(0);
    SheetFigure figure = ValleyFigure.of(set, Words.of(plan), QUARTER, t -> Optional.empty());
    List<Segment> lines = new ArrayList<>();
    Set<Double> seen = new HashSet<>();
    for (Mark mark : figure.marks()) {
      if (mark instanceof Mark.Path p && p.layer().equals(FrameLayers.SET_LINE)) {
        lines.add(new Segment(p.points().get(0), p.points().get(1)));
      }
    }
    assertThat(lines).hasSize(2);
    for (Mark mark : figure.marks()) {
      if (mark instanceof Mark.Path p && p.layer().equals(FrameLayers.BEARING)) {
        for (Point end : p.points()) {
          assertThat(Math.min(lines.get(0).distance(end), lines.get(1).distance(end)))
              .isCloseTo(0, within(1e-6));
        }
        seen.add(p.points().get(0).y());
      }
    }
    assertThat(seen)
        .containsExactlyInAnyOrderElementsOf(set.trusses().stream().map(ValleyTruss::v).toList());
  }
}
