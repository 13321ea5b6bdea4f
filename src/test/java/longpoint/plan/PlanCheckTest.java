package longpoint.plan;

import static longpoint.plan.Parts.part;
import static longpoint.plan.Parts.plan;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;

class PlanCheckTest {
  private static final Ring HOUSE = Ring.of(0, 0, 480, 0, 480, 336, 0, 336);
  private static final Ring COURT = Ring.of(100, 100, 100, 200, 200, 200, 200, 100);

  /** Exactly one problem, at one place, said with its cure. */
  private static void one(Plan plan, Problem.Level level, String where, String... words) {
    List<Problem> problems = PlanCheck.check(plan);
    assertThat(problems).hasSize(1);
    Problem p = problems.get(0);
    assertThat(p.level()).isEqualTo(level);
    assertThat(p.where()).isEqualTo(where);
    assertThat(p.message()).contains(words).endsWith(".");
    assertThat(p.cure()).isNotBlank().endsWith(".");
  }

  private static void error(Plan plan, String where, String... words) {
    one(plan, Problem.Level.ERROR, where, words);
  }

  private static void warning(Plan plan, String where, String... words) {
    one(plan, Problem.Level.WARNING, where, words);
  }

  private static Part house() {
    return part("main", HOUSE).withName("House");
  }

  private static Part edge(int side, Edge edge) {
    return house().withEdge(side, edge);
  }

  @Test
  void aSoundPlanHasNoProblems() {
    assertThat(PlanCheck.check(plan())).isEmpty();
    assertThat(PlanCheck.check(plan(part("a", HOUSE, COURT)))).isEmpty();
    assertThat(PlanCheck.check(Plan.empty(LengthUnit.MILLIMETRE))).isEmpty();
  }

  @Test
  void crossingSidesAreNamedWithThePlace() {
    // A bow tie: the diagonals of a 480 by 336 rectangle cross in its middle.
    Part tie = part("main", Ring.of(0, 0, 480, 336, 480, 0, 0, 336)).withName("House");
    error(plan(tie), "main/0", "of House crosses or touches the", "at 20'-0\" across, 14'-0\" up");
  }

  @Test
  void aCornerOnAnotherWallIsTold() {
    Part notch = part("main", Ring.of(0, 0, 480, 0, 480, 336, 240, 0, 0, 336));
    assertThat(PlanCheck.check(plan(notch)))
        .extracting(Problem::where)
        .containsExactly("main/0", "main/0");
  }

  @Test
  void overlappingWallsAreTold() {
    Part slit =
        part("main", Ring.of(0, 0, 300, 0, 300, 200, 100, 200, 100, 0, 50, 0, 50, 100, 0, 100));
    assertThat(PlanCheck.check(plan(slit)))
        .anyMatch(
            p ->
                p.message()
                    .contains(
                        "The south wall of main crosses or touches the north wall of main (no. 2)"));
  }

  @Test
  void aSideOfNoLengthIsTold() {
    Part doubled = part("main", Ring.of(0, 0, 480, 0, 480, 0, 480, 336, 0, 336)).withName("House");
    error(plan(doubled), "main/1", "Side 2 of House has no length");
  }

  @Test
  void aSpikeIsTold() {
    Part spike = part("main", Ring.of(0, 0, 480, 0, 480, 500, 480, 336, 0, 336)).withName("House");
    error(
        plan(spike),
        "main/2",
        "(no. 1) doubles back on the east wall of House",
        "40'-0\" across, 41'-8\" up");
    assertThat(PlanCheck.check(plan(part("flat", Ring.of(0, 0, 100, 0, 50, 0))))).isNotEmpty();
  }

  @Test
  void aWallShorterThanATapeMarkIsASlip() {
    Part slip = part("main", Ring.of(0, 0, 480, 0, 480.01, 0.02, 480.01, 336, 0, 336));
    warning(plan(slip), "main/1", "The southeast wall of main is shorter than the smallest mark");
  }

  @Test
  void windingsAreTold() {
    error(plan(part("main", HOUSE.reversed())), "main", "runs clockwise");
    error(plan(part("main", HOUSE, COURT.reversed())), "main", "hole", "counter-clockwise");
  }

  @Test
  void holesBelongInside() {
    Ring away = Ring.of(600, 0, 600, 50, 650, 50, 650, 0);
    error(plan(part("main", HOUSE, away)), "main/4", "wall of main", "outside the outline");
    Ring inner = Ring.of(120, 120, 120, 150, 150, 150, 150, 120);
    error(plan(part("main", HOUSE, COURT, inner)), "main/8", "wall of main", "inside another");
    Ring across = Ring.of(440, 100, 440, 200, 520, 200, 520, 100);
    assertThat(PlanCheck.check(plan(part("main", HOUSE, across))))
        .extracting(Problem::message)
        .allMatch(m -> m.contains("which is of a hole"))
        .hasSize(2);
  }

  @Test
  void someSideMustBeAnEave() {
    Part walls = house();
    for (int i = 0; i < 4; i++) {
      walls = walls.withEdge(i, Edge.of(EdgeKind.GABLE));
    }
    error(plan(walls), "main", "No side of House is an eave");
  }

  @Test
  void slopesThatCannotBeMeant() {
    error(plan(edge(1, Edge.eave(Slope.ratio(0)))), "main/1", "The east wall of House", "no slope");
    warning(plan(edge(1, Edge.eave(Slope.inTwelve(0.1)))), "main/1", "quarter inch in a foot");
    warning(plan(edge(1, Edge.eave(Slope.ratio(8)))), "main/1", "steeper than 60 in 12");
    Edge gable = Edge.eave(Slope.ratio(0)).withKind(EdgeKind.GABLE);
    assertThat(PlanCheck.check(plan(edge(1, gable)))).isEmpty();
  }

  @Test
  void overhangsAndHeels() {
    Edge eave = Edge.eave(Slope.inTwelve(8));
    error(
        plan(edge(3, eave.withOverhang(-1))),
        "main/3",
        "The west wall of House",
        "overhang below zero");
    error(plan(edge(3, eave.withOverhang(Double.NaN))), "main/3", "overhang below zero");
    warning(plan(edge(3, eave.withOverhang(400))), "main/3", "overhang of 33'-4\"");
    error(plan(edge(3, eave.withHeel(-2))), "main/3", "heel below zero");
    assertThat(PlanCheck.check(plan(edge(3, Edge.of(EdgeKind.OPEN).withOverhang(-1))))).isEmpty();
  }

  @Test
  void neighboursInOneLineShouldShareASlope() {
    Ring run = Ring.of(0, 0, 200, 0, 480, 0, 480, 336, 0, 336);
    Part part = part("main", run).withName("House").withEdge(1, Edge.eave(Slope.inTwelve(6)));
    warning(
        plan(part),
        "main/0",
        "The south wall of House (no. 1) and the south wall of House (no. 2) run on",
        "slope 8/12 and 6/12");
    Part heels = part("main", run).withEdge(0, Edge.eave(Slope.inTwelve(8)).withHeel(9));
    warning(plan(heels), "main/0", "heels of 0'-9\" and 0'-4 1/2\"");
    assertThat(PlanCheck.check(plan(part("main", run)))).isEmpty();
  }

  @Test
  void sizesInTheWrongUnitAreNoticed() {
    Ring mm = Ring.of(0, 0, 9600, 0, 9600, 7200, 0, 7200);
    warning(plan(part("main", mm)), "main", "800'-0\" across");
    Plan small = Plan.empty(LengthUnit.MILLIMETRE).withParts(List.of(part("main", HOUSE)));
    assertThat(PlanCheck.check(small))
        .extracting(Problem::message)
        .contains("Main is 480 mm across.");
    warning(plan(house().withPlateHeight(9000)), "main", "plate height");
    warning(plan(house().withPlateHeight(Double.NaN)), "main", "plate height");
  }

  @Test
  void framesAndDecks() {
    LengthUnit in = LengthUnit.INCH;
    Frame frame = new Frame(Frame.Method.TRUSS, 0, 1.5, Optional.empty(), Extras.NONE);
    error(plan(house().withFrame(frame)), "main", "spacing of House is not above zero");
    Frame thick = new Frame(Frame.Method.TRUSS, 1.5, 1.5, Optional.of(72.0), Extras.NONE);
    error(plan(house().withFrame(thick)), "main", "as thick as their spacing");
    Frame setback = new Frame(Frame.Method.TRUSS, 24, 1.5, Optional.of(-72.0), Extras.NONE);
    error(plan(house().withFrame(setback)), "main", "set-back");
    Deck deck = new Deck(-1, 48, 96, Deck.Start.LEFT, Extras.NONE);
    error(plan(house().withDeck(deck)), "main", "sheathing");
    Deck sheets = new Deck(0.5, 0, 96, Deck.Start.LEFT, Extras.NONE);
    error(plan(house().withDeck(sheets)), "main", "sheet width");
    Deck ripped = house().deck().withFirstCourse(Optional.of(0.0));
    error(plan(house().withDeck(ripped)), "main", "first course");
    assertThat(PlanCheck.check(plan(house().withFrame(Frame.of(in))))).isEmpty();
  }

  @Test
  void defaultsAreToldOnce() {
    Plan plan = plan(part("a", HOUSE), part("b", Ring.of(600, 0, 900, 0, 900, 300, 600, 300)));
    error(plan.withDefaults(plan.defaults().withOverhang(-16)), "plan", "overhang is below zero");
    warning(plan.withDefaults(plan.defaults().withSlope(Slope.ratio(0))), "plan", "slope is level");
  }

  @Test
  void idsAreShortAndTheirOwn() {
    Ring away = Ring.of(600, 0, 900, 0, 900, 300, 600, 300);
    error(plan(part(" ", HOUSE).withName("x")), "plan", "no id");
    error(plan(part("a", HOUSE), part("a", away)), "a", "Two parts have the id “a”");
    error(plan(part("a/1", HOUSE)), "a/1", "slash");
  }

  @Test
  void joinsNameTwoPartsAndRunInNoCircle() {
    Ring wing = Ring.of(168, -144, 312, -144, 312, 0, 168, 0);
    Ring bay = Ring.of(480, 100, 600, 100, 600, 200, 480, 200);
    Plan plan = plan(part("main", HOUSE), part("wing", wing), part("bay", bay));
    assertThat(PlanCheck.check(plan.withJoins(List.of(Join.overlay("wing", "main"))))).isEmpty();
    error(plan.withJoins(List.of(Join.overlay("wing", "hall"))), "plan", "A join names “hall”");
    error(plan.withJoins(List.of(Join.overlay("wing", "wing"))), "wing", "joined to itself");
    error(
        plan.withJoins(List.of(Join.overlay("wing", "main"), Join.overlay("wing", "main"))),
        "wing",
        "The join of wing over main stands twice");
    error(
        plan.withJoins(List.of(Join.overlay("wing", "main"), Join.overlay("main", "wing"))),
        "wing",
        "circle: wing over main over wing");
    error(
        plan.withJoins(
            List.of(
                Join.overlay("wing", "main"),
                Join.overlay("main", "bay"),
                Join.overlay("bay", "main"))),
        "main",
        "circle: main over bay over main");
    Part far = part("far", Ring.of(900, 900, 1000, 900, 1000, 1000, 900, 1000));
    warning(
        plan.withPart(far).withJoins(List.of(Join.overlay("far", "main"))),
        "far",
        "Far is joined to main but stands clear");
  }

  @Test
  void groundIsSharedOnlyByJoinedParts() {
    Part main = part("main", HOUSE).withName("House");
    Part wing = part("wing", Ring.of(168, -144, 312, -144, 312, 48, 168, 48)).withName("Wing");
    warning(plan(main, wing), "wing", "House and Wing cover the same ground");
    assertThat(PlanCheck.check(plan(main, wing).withJoins(List.of(Join.overlay("wing", "main")))))
        .isEmpty();
    Part beside = part("wing", Ring.of(168, -144, 312, -144, 312, 0, 168, 0));
    assertThat(PlanCheck.check(plan(main, beside))).isEmpty();
    // A cabin in the middle of a courtyard shares no ground with the house around it.
    Part round = part("round", HOUSE, COURT);
    Part cabin = part("cabin", Ring.of(110, 110, 190, 110, 190, 190, 110, 190));
    assertThat(PlanCheck.check(plan(round, cabin))).isEmpty();
  }

  /** Whatever is drawn is answered, in the same words each time, every place one that exists. */
  @Test
  void anythingThatCanBeDrawnIsAnswered() {
    Random random = new Random(99);
    int withProblems = 0;
    for (int n = 0; n < 3000; n++) {
      List<Part> parts = new ArrayList<>();
      for (int p = random.nextInt(3); p >= 0; p--) {
        parts.add(
            part("p" + p, jumble(random), n % 3 == 0 ? new Ring[] {jumble(random)} : new Ring[0]));
      }
      Plan plan = plan(parts.toArray(Part[]::new)).withJoins(List.of(Join.overlay("p0", "p1")));
      List<Problem> problems = PlanCheck.check(plan);
      assertThat(PlanCheck.check(plan)).isEqualTo(problems);
      withProblems += problems.isEmpty() ? 0 : 1;
      for (Problem p : problems) {
        Said.inEveryLanguage(p);
        String[] where = p.where().split("/");
        assertThat(p.where().equals("plan") || plan.part(where[0]).isPresent()).isTrue();
        if (where.length > 1) {
          int side = Integer.parseInt(where[1]);
          assertThat(side).isLessThan(plan.part(where[0]).orElseThrow().sideCount());
        }
      }
    }
    assertThat(withProblems).isGreaterThan(1000);
  }

  private static Ring jumble(Random random) {
    List<Point> points = new ArrayList<>();
    for (int i = 3 + random.nextInt(5); i > 0; i--) {
      points.add(new Point(random.nextInt(6) * 60, random.nextInt(6) * 60));
    }
    return new Ring(points);
  }
}
