package longpoint.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Mark;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Extras;
import longpoint.plan.Markup;
import longpoint.plan.Note;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension;
import longpoint.plan.PlanDimension.Along;
import org.junit.jupiter.api.Test;

class MarkupMarksTest {
  private static final double EIGHTH = 96 / 25.4;

  private static Plan with(PlanDimension dimension) {
    return GableHouse.PLAN.withMarkup(Markup.NONE.with(dimension));
  }

  private static PlanDimension dimension(int from, int to, Along along, double offset) {
    return new PlanDimension(
        "d",
        new PlanDimension.Corner("main", from),
        new PlanDimension.Corner("main", to),
        along,
        offset,
        Extras.NONE);
  }

  @Test
  void aDimensionSaysWhatItMeasuresAndItsLineLiesWhereItWasPut() {
    for (double scale : List.of(EIGHTH, 2 * EIGHTH)) {
      List<Mark> marks = MarkupMarks.of(with(dimension(0, 1, Along.STRAIGHT, -60)), scale);
      Mark.Dimension drawn = (Mark.Dimension) marks.get(0);
      assertThat(marks).hasSize(1);
      assertThat(drawn.subject()).isEqualTo("d");
      assertThat(drawn.text()).isEqualTo("40'-0\"");
      Segment line = DimensionLayout.of(drawn, scale).line();
      assertThat(line.from().x()).isCloseTo(0, within(1e-9));
      assertThat(line.from().y()).isCloseTo(-60, within(1e-9));
      assertThat(line.length()).isCloseTo(480, within(1e-9));
    }
  }

  @Test
  void staggeredEndsAreCarriedToOneLevel() {
    // From the lower left to the upper right corner of 480 by 336, measured across above both.
    List<Mark> marks = MarkupMarks.of(with(dimension(0, 2, Along.ACROSS, 400)), EIGHTH);
    Mark.Dimension drawn = (Mark.Dimension) marks.get(0);
    assertThat(drawn.text()).isEqualTo("40'-0\"");
    Segment line = DimensionLayout.of(drawn, EIGHTH).line();
    assertThat(line.from().y()).isCloseTo(400, within(1e-9));
    // The corner farther below the line is joined to the level of the nearer one.
    Mark.Path carried = (Mark.Path) marks.get(1);
    assertThat(carried.points().get(0)).isEqualTo(new Point(0, 0));
    assertThat(carried.points().get(1).y()).isCloseTo(336, within(1e-9));
  }

  @Test
  void anEndThatHasGoneDrawsNothing() {
    assertThat(MarkupMarks.of(with(dimension(0, 9, Along.STRAIGHT, 0)), EIGHTH)).isEmpty();
  }

  @Test
  void aNoteStandsOnItsLinesWithALeader() {
    Note note =
        new Note(
            "n", new Point(600, 100), Optional.of(new Point(480, 80)), "Vent\nhere", Extras.NONE);
    Plan plan = GableHouse.PLAN.withMarkup(Markup.NONE.with(note));
    PlanView view = PlanView.of(plan, GableHouse.SURFACE, EIGHTH);
    assertThat(view.markup().stream().filter(Mark.Text.class::isInstance)).hasSize(2);
    assertThat(view.drawing().marks()).containsAll(view.markup());
    Mark.Path leader =
        view.markup().stream()
            .filter(Mark.Path.class::isInstance)
            .map(Mark.Path.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(leader.points()).containsExactly(new Point(600, 100), new Point(480, 80));
  }

  @Test
  void noFigureOfTheProgramStandsOnANote() {
    // A note right where the program puts the length of the south wall.
    Mark.Dimension usual =
        PlanView.of(GableHouse.PLAN, GableHouse.SURFACE, EIGHTH).dimensions().stream()
            .map(Mark.Dimension.class::cast)
            .filter(d -> d.subject().equals("main/0"))
            .findFirst()
            .orElseThrow();
    Point there = DimensionLayout.of(usual, EIGHTH).text().at();
    Note note = new Note("n", there, Optional.empty(), "Not here", Extras.NONE);
    Plan plan = GableHouse.PLAN.withMarkup(Markup.NONE.with(note));
    List<Mark> dimensions = PlanView.of(plan, GableHouse.SURFACE, EIGHTH).dimensions();
    assertThat(dimensions).doesNotContain(usual);
  }
}
