package longpoint.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Join;
import longpoint.plan.Markup;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanCheck;
import longpoint.plan.PlanDimension;
import longpoint.plan.Problem;
import longpoint.surface.Roof;
import longpoint.units.LengthFigure;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import longpoint.wording.Phrase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A cure that is offered takes its problem away, as the checks themselves see it. */
class CuresTest {
  private static Part main() {
    return Houses.house().parts().get(0);
  }

  private static Plan with(Part part) {
    return Houses.empty().withPart(part);
  }

  private static Plan edge(int side, Edge edge) {
    return with(main().withEdge(side, edge));
  }

  private static Part shaped(Ring ring) {
    return main()
        .withShape(
            ring, List.of(), java.util.Collections.nCopies(ring.size(), Edge.of(EdgeKind.EAVE)));
  }

  private static Plan joined(Join... joins) {
    return Houses.winged().withJoins(List.of(joins));
  }

  static Stream<Arguments> faults() {
    Edge eave = Edge.of(EdgeKind.EAVE);
    Edge open = Edge.of(EdgeKind.OPEN);
    Part far =
        Houses.winged()
            .parts()
            .get(1)
            .withShape(
                Ring.of(1168, -144, 1312, -144, 1312, 0, 1168, 0),
                List.of(),
                Houses.winged().parts().get(1).edges());
    return Stream.of(
        fault("clockwise", with(shaped(Ring.of(0, 0, 0, 336, 480, 336, 480, 0))), "main"),
        fault("no length", with(shaped(Ring.of(0, 0, 480, 0, 480, 0, 480, 336, 0, 336))), "main/1"),
        fault("spike", with(shaped(Ring.of(0, 0, 480, 0, 480, 400, 480, 336, 0, 336))), "main/2"),
        fault(
            "no eave",
            with(main().withEdge(0, Edge.of(EdgeKind.GABLE)).withEdge(2, Edge.of(EdgeKind.GABLE))),
            "main"),
        fault("overhang below zero", edge(0, eave.withOverhang(-3)), "main/0"),
        fault("overhang of ten feet", edge(0, eave.withOverhang(120)), "main/0"),
        fault("heel below zero", edge(0, eave.withHeel(-2)), "main/0"),
        fault("no slope", edge(0, eave.withSlope(Slope.ratio(0))), "main/0"),
        fault("steep", edge(0, eave.withSlope(Slope.ratio(6))), "main/0"),
        fault("open to nothing", edge(1, open), "main/1"),
        fault("wing not joined", joined(), "wing/2"),
        fault(
            "joined twice",
            joined(Join.overlay("wing", "main"), Join.overlay("wing", "main")),
            "wing"),
        fault(
            "joined to itself",
            joined(Join.overlay("wing", "main"), Join.overlay("wing", "wing")),
            "wing"),
        fault(
            "joined to nothing",
            joined(Join.overlay("wing", "main"), Join.overlay("wing", "shed")),
            "plan"),
        fault("joined from afar", Houses.winged().withPart(far), "wing"),
        fault("metric figures", with(main()).withUnit(LengthUnit.MILLIMETRE), "main"),
        fault("fascias", edge(1, eave.withSlope(Slope.inTwelve(12))), "main/1"),
        fault(
            "wing's fascia",
            Houses.winged()
                .withPart(
                    Houses.winged().parts().get(1).withEdge(1, eave.withSlope(Slope.inTwelve(12)))),
            "wing/1"));
  }

  private static Arguments fault(String name, Plan plan, String where) {
    return Arguments.of(name, plan, where);
  }

  private static List<Problem> problems(Plan plan, String where) {
    List<Problem> all = new ArrayList<>(PlanCheck.check(plan));
    all.addAll(Roof.solve(plan).problems());
    all.removeIf(p -> !p.where().equals(where));
    return all;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("faults")
  void aCureTakesItsProblemAway(String name, Plan plan, String where) {
    List<String> before = problems(plan, where).stream().map(Problem::message).toList();
    assertThat(before).isNotEmpty();
    List<Cure> cures = Cures.at(plan, where);
    assertThat(cures).isNotEmpty();
    for (Cure cure : cures) {
      Plan cured = ((Outcome.Commit) cure.command().on(plan)).plan();
      List<String> after = problems(cured, where).stream().map(Problem::message).toList();
      assertThat(after).as(cure.label()).doesNotContain(before.get(0));
    }
  }

  @Test
  void aSoundPlanNeedsNoCure() {
    for (Part part : Houses.house().parts()) {
      assertThat(Cures.at(Houses.house(), part.id())).isEmpty();
      for (int i = 0; i < part.sideCount(); i++) {
        assertThat(Cures.at(Houses.house(), part.id() + "/" + i)).isEmpty();
      }
    }
    assertThat(Cures.at(Houses.house(), "plan")).isEmpty();
  }

  @Test
  void aDimensionKeepsItsWallWhenTheOutlineIsTurnedRound() {
    Plan clockwise = with(shaped(Ring.of(0, 0, 0, 336, 480, 336, 480, 0)));
    PlanDimension d =
        new PlanDimension(
            "d",
            new PlanDimension.Corner("main", 2),
            new PlanDimension.Corner("main", 3),
            PlanDimension.Along.STRAIGHT,
            0,
            Extras.NONE);
    Plan plan = clockwise.withMarkup(Markup.NONE.with(d));
    Plan round = ((Outcome.Commit) Cures.at(plan, "main").get(0).command().on(plan)).plan();
    PlanDimension after = round.markup().dimensions().get(0);
    assertThat(after.from().at(round)).isEqualTo(Optional.of(new Point(480, 336)));
    assertThat(after.to().at(round)).isEqualTo(Optional.of(new Point(480, 0)));
  }

  /** What the sheathing says about a last course names the first course that cures it. */
  @Test
  void aFirstCourseIsRippedAsTheProblemSays() {
    LengthFigure width = new LengthFigure(24, LengthUnit.INCH);
    Problem sliver =
        Problem.warning("main/0", Phrase.of("deck.lastCourse", "wall", width, width, width));
    Plan plan = Houses.house();
    List<Cure> cures = Cures.at(plan, "main/0", List.of(sliver));
    assertThat(cures).hasSize(1);
    assertThat(cures.get(0).label()).contains("2'-0\"");
    Plan cured = ((Outcome.Commit) cures.get(0).command().on(plan)).plan();
    assertThat(cured.parts().get(0).edges().get(0).firstCourse()).contains(24.0);
    assertThat(Cures.at(plan, "main/0", List.of())).isEmpty();
    assertThat(Cures.at(plan, "main/1", List.of(Problem.note("main/1", Phrase.of("deck.x")))))
        .isEmpty();
  }
}
