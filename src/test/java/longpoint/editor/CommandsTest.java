package longpoint.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Reshape.End;
import longpoint.plan.Side;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Edits from panels and menus. */
@ExtendWith(EnglishWords.class)
class CommandsTest {
  private static final Plan HOUSE = Houses.house();
  private static final List<Ref.OfSide> EAVES = sides(0, 2);

  private static List<Ref.OfSide> sides(int... numbers) {
    return Arrays.stream(numbers).mapToObj(i -> new Ref.OfSide("main", i)).toList();
  }

  private static Outcome.Commit commit(Command command, Plan plan) {
    assertThat(command.on(plan)).isInstanceOf(Outcome.Commit.class);
    return (Outcome.Commit) command.on(plan);
  }

  private static Plan done(Command command, Plan plan) {
    return commit(command, plan).plan();
  }

  private static List<Edge> edges(Plan plan) {
    return plan.parts().get(0).edges();
  }

  @Test
  void severalSidesChangeAtOnceAndTheOthersStay() {
    Command steep = SideCommands.slope(HOUSE, EAVES, Optional.of(Slope.inTwelve(10)));
    assertThat(commit(steep, HOUSE).name()).isEqualTo("Slope of 2 sides: 10/12");
    List<Edge> edges = edges(done(steep, HOUSE));
    assertThat(edges.get(0).slope()).contains(Slope.inTwelve(10));
    assertThat(edges.get(2).slope()).contains(Slope.inTwelve(10));
    assertThat(edges.get(1)).isEqualTo(edges(HOUSE).get(1));
    Command back = SideCommands.slope(HOUSE, EAVES, Optional.empty());
    assertThat(commit(back, done(steep, HOUSE)).name()).isEqualTo("Slope of 2 sides: as the plan");
    assertThat(done(back, done(steep, HOUSE))).isEqualTo(HOUSE);
  }

  @Test
  void overhangHeelAndKindAreSetByName() {
    Command overhang = SideCommands.overhang(HOUSE, sides(0), Optional.of(24.0));
    assertThat(commit(overhang, HOUSE).name())
        .isEqualTo("Overhang of the south wall of House: 2'-0\"");
    assertThat(edges(done(overhang, HOUSE)).get(0).overhang()).contains(24.0);
    Command heel = SideCommands.heel(HOUSE, sides(0), Optional.of(12.0));
    assertThat(edges(done(heel, HOUSE)).get(0).heel()).contains(12.0);
    Command hip = SideCommands.kind(HOUSE, sides(1, 3), EdgeKind.EAVE);
    assertThat(edges(done(hip, HOUSE))).extracting(Edge::kind).containsOnly(EdgeKind.EAVE);
    assertThat(hip.on(done(hip, HOUSE))).isEqualTo(Outcome.NONE);
  }

  @Test
  void whatIsGoneIsPassedOver() {
    Command command = SideCommands.kind(HOUSE, sides(1, 7), EdgeKind.EAVE);
    assertThat(edges(done(command, HOUSE)).get(1).kind()).isEqualTo(EdgeKind.EAVE);
    assertThat(command.on(Houses.empty())).isEqualTo(Outcome.NONE);
    assertThat(SideCommands.length(HOUSE, sides(0).get(0), 9, End.START).on(Houses.empty()))
        .isEqualTo(Outcome.NONE);
  }

  @Test
  void aSideTakesALengthFromEitherEnd() {
    Ref.OfSide south = sides(0).get(0);
    Command finish = SideCommands.length(HOUSE, south, 291.5, End.FINISH);
    assertThat(commit(finish, HOUSE).name())
        .isEqualTo("Length of the south wall of House: 24'-3 1/2\"");
    assertThat(Hand.print(done(finish, HOUSE)))
        .containsExactly("main 0,0 291.5,0 291.5,336 0,336 | EGEG");
    Command start = SideCommands.length(HOUSE, south, 291.5, End.START);
    assertThat(Hand.print(done(start, HOUSE)))
        .containsExactly("main 188.5,0 480,0 480,336 188.5,336 | EGEG");
    assertThat(SideCommands.length(HOUSE, south, -5, End.START).on(HOUSE))
        .isInstanceOf(Outcome.Refuse.class);
  }

  @Test
  void whatStandsAgainstAWallGoesAlongWithIt() {
    // The east wall grows by 24 at its start: the south wall moves out, and the wing with it, and
    // a porch on the wing.
    Plan winged = Houses.winged();
    Ring porch = Ring.of(192, -192, 288, -192, 288, -144, 192, -144);
    List<EdgeKind> kinds = List.of(EdgeKind.EAVE, EdgeKind.EAVE, EdgeKind.OPEN, EdgeKind.EAVE);
    Plan plan =
        winged
            .withPart(NewPart.of(winged, "part", porch, kinds))
            .withJoins(List.of(winged.joins().get(0), Join.overlay("part", "wing")));
    Command longer = SideCommands.length(plan, sides(1).get(0), 360, End.START);
    assertThat(Hand.print(done(longer, plan)))
        .containsExactly(
            "main 0,-24 480,-24 480,336 0,336 | EGEG",
            "wing 168,-168 312,-168 312,-24 168,-24 | GEOE",
            "part 192,-216 288,-216 288,-168 192,-168 | EEOE");
    // At its other end the north wall moves, where nothing stands.
    Command north = SideCommands.length(plan, sides(1).get(0), 360, End.FINISH);
    assertThat(done(north, plan).parts().subList(1, 3)).isEqualTo(plan.parts().subList(1, 3));
  }

  /** Top outer edge of the fascia of an eave. */
  private static double fascia(Plan plan, int side) {
    Side eave = plan.side(plan.parts().get(0), side);
    Point outside = eave.wall().from().plus(eave.wall().direction().left().times(-eave.reach()));
    return eave.framePlane().heightAt(outside);
  }

  @Test
  void aSteeperEavesFasciaIsLevelledByOverhangOrHeel() {
    // 8 in 12 with 16 + 1 1/2 out drops 11.667 below its heel of 4 1/2. At 12 in 12 the same drop
    // is reached 11.667 out: an overhang of 10.1667. Keeping 16, the heel rises by 5.8333.
    Plan uneven = done(SideCommands.slope(HOUSE, sides(2), Optional.of(Slope.inTwelve(12))), HOUSE);
    Ref.OfSide north = sides(2).get(0);
    Ref.OfSide south = sides(0).get(0);
    Command shorter = SideCommands.levelFascia(uneven, north, south, SideCommands.LevelBy.OVERHANG);
    Plan byOverhang = done(shorter, uneven);
    assertThat(edges(byOverhang).get(2).overhang().orElseThrow())
        .isCloseTo(10 + 1.0 / 6, within(1e-9));
    assertThat(fascia(byOverhang, 2)).isCloseTo(fascia(byOverhang, 0), within(1e-9));
    Command higher = SideCommands.levelFascia(uneven, north, south, SideCommands.LevelBy.HEEL);
    Plan byHeel = done(higher, uneven);
    assertThat(edges(byHeel).get(2).heel().orElseThrow()).isCloseTo(4.5 + 17.5 / 3, within(1e-9));
    assertThat(fascia(byHeel, 2)).isCloseTo(fascia(byHeel, 0), within(1e-9));
    assertThat(
            SideCommands.levelFascia(uneven, sides(1).get(0), south, SideCommands.LevelBy.HEEL)
                .on(uneven))
        .isInstanceOf(Outcome.Refuse.class);
    Plan flat = done(SideCommands.slope(HOUSE, sides(2), Optional.of(Slope.inTwelve(0))), HOUSE);
    assertThat(SideCommands.levelFascia(flat, north, south, SideCommands.LevelBy.OVERHANG).on(flat))
        .isInstanceOf(Outcome.Refuse.class);
  }

  @Test
  void partsChangeTogether() {
    Plan winged = Houses.winged();
    List<String> both = List.of("main", "wing");
    Command plate = PartCommands.plateHeight(winged, both, 109.125);
    assertThat(commit(plate, winged).name()).isEqualTo("Plate height of House, Wing: 9'-1 1/8\"");
    assertThat(done(plate, winged).parts()).extracting(Part::plateHeight).containsOnly(109.125);
    assertThat(done(PartCommands.spacing(winged, both, 16), winged).parts())
        .extracting(Part::frame)
        .extracting(Frame::spacing)
        .containsOnly(16.0);
    Plan existing = done(PartCommands.markExisting(winged, List.of("main")), winged);
    assertThat(existing.parts()).extracting(Part::existing).containsExactly(true, false);
    assertThat(done(PartCommands.markNew(existing, both), existing)).isEqualTo(winged);
  }

  @Test
  void fourQuarterTurnsAndTwoMirrorImagesLeadBack() {
    Plan plan = Houses.winged();
    List<String> both = List.of("main", "wing");
    for (int i = 0; i < 4; i++) {
      plan = done(PartCommands.quarterLeft(plan, both), plan);
    }
    assertThat(plan).isEqualTo(Houses.winged());
    plan = done(PartCommands.quarterLeft(plan, both), plan);
    assertThat(done(PartCommands.quarterRight(plan, both), plan)).isEqualTo(Houses.winged());
    Plan across = done(PartCommands.mirrorAcross(HOUSE, List.of("main")), HOUSE);
    assertThat(done(PartCommands.mirrorAcross(across, List.of("main")), across)).isEqualTo(HOUSE);
    Segment line = new Segment(new Point(0, 0), new Point(1, 0));
    assertThat(Hand.print(done(PartCommands.mirror(HOUSE, List.of("main"), line), HOUSE)).get(0))
        .isEqualTo("main 0,-336 480,-336 480,0 0,0 | EGEG");
  }

  @Test
  void deletingAPartTakesItsJoins() {
    Plan winged = Houses.winged();
    assertThat(done(PartCommands.delete(winged, List.of("wing")), winged)).isEqualTo(HOUSE);
    Command delete = PlanCommands.delete(Selection.of(Ref.part("main"), Ref.corner("wing", 1)));
    Plan rest = done(delete, winged);
    assertThat(rest.joins()).isEmpty();
    assertThat(Hand.print(rest)).containsExactly("wing 168,-144 312,0 168,0 | GOE");
  }

  @Test
  void severalCornersGoByTheirOldNumbers() {
    Plan court = Houses.courtyard();
    Command corners =
        PlanCommands.delete(
            Selection.of(Ref.corner("main", 1), Ref.corner("main", 4), Ref.corner("main", 5)));
    assertThat(Hand.print(done(corners, court))).containsExactly("main 0,0 480,336 0,336 | EEG");
    Command walls = PlanCommands.delete(Selection.of(Ref.side("main", 4), Ref.side("main", 6)));
    assertThat(done(walls, court)).isEqualTo(HOUSE);
    Command tooMany =
        PlanCommands.delete(Selection.of(Ref.corner("main", 0), Ref.corner("main", 2)));
    assertThat(tooMany.on(HOUSE)).isInstanceOf(Outcome.Refuse.class);
  }

  @Test
  void joinsAreSetOncePerPair() {
    Plan winged = Houses.winged();
    Join overlay = winged.joins().get(0);
    Join through =
        new Join("wing", "main", Join.Method.THROUGH, overlay.madeFor(), overlay.extras());
    Plan changed = done(PartCommands.join(through), winged);
    assertThat(changed.joins()).containsExactly(through);
    assertThat(done(PartCommands.removeJoin(through), changed).joins()).isEmpty();
  }

  @Test
  void defaultsReachEverySideThatSaysNothing() {
    Plan steep = done(PlanCommands.defaults(d -> d.withSlope(Slope.inTwelve(12))), HOUSE);
    assertThat(steep.side(steep.parts().get(0), 0).slope()).isEqualTo(Slope.inTwelve(12));
    assertThat(edges(steep)).isEqualTo(edges(HOUSE));
  }
}
