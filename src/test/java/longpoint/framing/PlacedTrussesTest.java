package longpoint.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussKind;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.CeilingStretch;
import longpoint.plan.Extras;
import longpoint.plan.FrameChoices;
import longpoint.plan.FrameChoices.Flats;
import longpoint.plan.Motion;
import longpoint.plan.Part;
import longpoint.plan.PlacedTruss;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.RunChoices;
import longpoint.units.Slope;
import longpoint.wording.Language;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What the user puts into a frame or takes out of it, by hand on a house 40 ft by 28 ft at 8 in 12:
 * trusses at 0.75, 24, 48 … 456, 479.25 from the start, which is its west end.
 */
class PlacedTrussesTest {
  private static final Part HOUSE = Houses.box("egeg", 8, 480, 336);

  private static Part with(Part part, Placements placements) {
    return part.withFrame(part.frame().withPlacements(placements));
  }

  private static Part put(PlacedTruss... trusses) {
    return with(HOUSE, Placements.NONE.withTrusses(List.of(trusses)));
  }

  private static FramingSet solve(Part part) {
    return Houses.solve(Houses.plan(part));
  }

  private static List<Double> marks(FramingSet set) {
    return set.tapes().get(0).marks();
  }

  private static TrussMark mark(FramingSet set, Truss truss) {
    return set.marks().stream()
        .filter(m -> m.mark().equals(truss.mark()))
        .findFirst()
        .orElseThrow();
  }

  private static List<Truss> ofKind(FramingSet set, TrussKind kind) {
    return set.trusses().stream().filter(t -> t.kind() == kind).toList();
  }

  @Test
  void anExtraTrussStandsBesideTheLayout() {
    FramingSet set = solve(put(PlacedTruss.truss(new Point(130, 0))));
    assertThat(marks(set)).hasSize(22).contains(119.25, 129.25, 143.25);
    assertThat(set.tapes().get(0).gaps()).contains(10 - 1.5, 14 - 1.5);
    assertThat(set.problems()).isEmpty();
  }

  /** Two plies take 3 in: centred at 120 from 118 1/2, in the place of the common there. */
  @Test
  void aGirderTakesThePlaceOfWhatStandsInItsWood() {
    FramingSet set = solve(put(PlacedTruss.girder(new Point(120, 99), 2)));
    assertThat(marks(set)).hasSize(21).contains(118.5).doesNotContain(119.25);
    Truss girder = ofKind(set, TrussKind.GIRDER).get(0);
    assertThat(girder.plies()).isEqualTo(2);
    assertThat(girder.station()).isEqualTo(120);
    TrussMark common = mark(set, ofKind(set, TrussKind.COMMON).get(0));
    assertThat(mark(set, girder).weight()).isEqualTo(2 * common.weight(), within(1e-9));
    assertThat(mark(set, girder).height()).isEqualTo(common.height(), within(1e-9));
  }

  /** Two trusses cannot be in one place: plain fact. The end truss stays, the user is told. */
  @Test
  void anEndTrussDoesNotGiveWay() {
    FramingSet set = solve(put(PlacedTruss.girder(new Point(1, 0), 2)));
    assertThat(marks(set)).hasSize(21);
    assertThat(set.problems()).anyMatch(p -> p.message().contains("in the wood of an end truss"));
  }

  @Test
  void leftOutTrussesAreGoneFromTheTapeAndTheBlocks() {
    FramingSet set = solve(with(HOUSE, Placements.NONE.withLeftOut(List.of(new Point(118, 336)))));
    assertThat(marks(set)).hasSize(20).doesNotContain(119.25);
    assertThat(set.tapes().get(0).gaps()).contains(46.5);
    assertThat(set.ridgeBlocks()).anyMatch(b -> b.clear() == 46.5 && b.count() == 1);
  }

  @Test
  void whatIsPutOutsideIsSaid() {
    FramingSet set = solve(put(PlacedTruss.truss(new Point(900, 0))));
    assertThat(marks(set)).hasSize(21);
    assertThat(set.problems()).anyMatch(p -> p.message().contains("outside its walls"));
  }

  /**
   * A girder of two plies along the ridge at 100 in from the low wall, from 96 to 192: it hangs on
   * the trusses at 96 and 192, and those at 120, 144 and 168 stop at its faces, 98.5 and 101.5. By
   * hand: it is 192 − 96 − 1.5 long; its top lies on the frame plane at its lower face, 4.5 + 98.5
   * · 8/12.
   */
  @Test
  void trussesStopAtAGirderAlongTheRidge() {
    FramingSet set = solve(put(PlacedTruss.girder(new Point(96, 100), new Point(192, 100), 2)));
    Truss girder = ofKind(set, TrussKind.CROSS_GIRDER).get(0);
    assertThat(girder.span()).isEqualTo(94.5, within(1e-9));
    assertThat(girder.height()).isEqualTo(4.5 + 98.5 * 8 / 12, within(1e-9));
    assertThat(girder.carriedFrom()).isPresent();
    assertThat(girder.carriedTo()).isPresent();
    List<Truss> bearings = ofKind(set, TrussKind.GIRDER);
    assertThat(bearings).extracting(Truss::station).containsExactly(96.0, 192.0);
    Girder hangers =
        set.girders().stream().filter(g -> g.truss().equals(girder.id())).findFirst().orElseThrow();
    assertThat(hangers.hangers()).hasSize(6);
    assertThat(hangers.hangers().stream().filter(h -> h.face() == Girder.Face.LEFT)).hasSize(3);
    // From the girder's end at 96.75 to the trusses' middles.
    assertThat(hangers.hangers().get(0).along()).isEqualTo(120 - 96.75, within(1e-9));
    assertThat(hangers.reminder().in(Language.ENGLISH)).contains("1/4 to 3/8 in");
    List<Truss> mono = ofKind(set, TrussKind.MONO);
    assertThat(mono).hasSize(3);
    assertThat(mono.get(0).span()).isEqualTo(98.5, within(1e-9));
    assertThat(mark(set, mono.get(0)).tailHigh()).isZero();
    assertThat(mark(set, mono.get(0)).tailLow()).isEqualTo(16);
    // What is left of each truss and the girder make the whole span.
    for (Truss piece : mono) {
      Truss rest =
          set.trusses().stream()
              .filter(t -> t.station() == piece.station() && t.kind() == TrussKind.COMMON)
              .findFirst()
              .orElseThrow();
      assertThat(piece.span() + 3 + rest.span()).isEqualTo(336, within(1e-9));
      assertThat(mark(set, rest).tailLow() + mark(set, rest).tailHigh()).isEqualTo(16);
    }
    assertThat(marks(set)).hasSize(21);
    assertThat(set.problems()).allMatch(p -> p.message().contains("a girder carries a girder"));
  }

  /** Over an end wall the wall carries; no hanger there. */
  @Test
  void aGirderToTheEndWallBearsOnIt() {
    FramingSet set = solve(put(PlacedTruss.girder(new Point(0, 100), new Point(72, 100), 1)));
    Truss girder = ofKind(set, TrussKind.CROSS_GIRDER).get(0);
    assertThat(girder.carriedFrom()).isEmpty();
    assertThat(girder.carriedTo()).isPresent();
    assertThat(girder.span()).isEqualTo(72 - 1.5 - 0.75, within(1e-9));
  }

  /** One piece of a truss that is stopped can go: an opening on one side of the girder. */
  @Test
  void onePieceOfAStoppedTrussIsLeftOut() {
    Placements places =
        Placements.NONE
            .withTrusses(List.of(PlacedTruss.girder(new Point(96, 100), new Point(192, 100), 1)))
            .withLeftOut(List.of(new Point(144, 40)));
    FramingSet set = solve(with(HOUSE, places));
    assertThat(set.trusses().stream().filter(t -> t.station() == 144)).hasSize(1);
    assertThat(marks(set)).hasSize(21);
  }

  @Test
  void ceilingOfAStretch() {
    Placements places =
        Placements.NONE.withCeilings(
            List.of(
                new CeilingStretch(
                    new Point(90, 0), new Point(150, 0), Slope.inTwelve(4), Extras.NONE)));
    FramingSet set = solve(with(HOUSE, places));
    assertThat(ofKind(set, TrussKind.SCISSOR))
        .extracting(Truss::station)
        .containsExactly(96.0, 120.0, 144.0);
    TrussMark scissor = mark(set, ofKind(set, TrussKind.SCISSOR).get(0));
    assertThat(scissor.profile().bottomAt(168)).isEqualTo(56, within(1e-9));
  }

  /** A level stretch in a vaulted house, such as a hall across it. */
  @Test
  void aLevelStretchInAVaultedPart() {
    Part vaulted =
        HOUSE.withFrame(
            HOUSE.frame().withChoices(FrameChoices.NONE.withCeiling(Slope.inTwelve(4))));
    Placements places =
        Placements.NONE.withCeilings(
            List.of(
                new CeilingStretch(
                    new Point(90, 0), new Point(150, 0), Slope.ratio(0), Extras.NONE)));
    FramingSet set = solve(with(vaulted, places));
    assertThat(ofKind(set, TrussKind.COMMON)).hasSize(3);
    assertThat(ofKind(set, TrussKind.SCISSOR)).hasSize(16);
  }

  /** 40 ft leave whole bays from either end; 41 ft leave 12 in at the far end. */
  @Test
  void layoutStartsFromTheEndThatIsNamed() {
    Part house = Houses.box("egeg", 8, 492, 336);
    List<Double> usual = marks(solve(house));
    assertThat(usual.get(usual.size() - 2)).isEqualTo(480 - 0.75);
    Part other =
        house.withFrame(
            house
                .frame()
                .withChoices(
                    FrameChoices.NONE.withRuns(
                        RunChoices.NONE.withLayoutFrom(List.of(new Point(492, 168))))));
    FramingSet set = solve(other);
    // The tape is hooked on the named end; in the plan the short bay is now at the west end.
    assertThat(marks(set)).isEqualTo(usual);
    assertThat(set.trusses()).anyMatch(t -> Math.abs(t.from().x() - 12) < 1e-9);
  }

  /**
   * Two plies of hip girder set back 72 in: the first stands as a single one would, the second
   * behind it, so jacks keep their length, 71 1/4, and the next truss stays on its spacing.
   */
  @Test
  void pliesOfAHipGirderStandBehindTheFirst() {
    Part hip = Houses.box("eeee", 6, 528, 336);
    Part asked = hip.withFrame(hip.frame().withHipSetback(Optional.of(72.0)));
    FramingSet one = solve(asked);
    FramingSet two =
        solve(asked.withFrame(asked.frame().withChoices(FrameChoices.NONE.withGirderPlies(2))));
    assertThat(two.tapes().get(0).marks().get(0)).isEqualTo(71.25);
    assertThat(two.tapes().get(0).widths().get(0)).isEqualTo(3);
    assertThat(two.tapes().get(0).marks().get(1)).isEqualTo(95.25);
    assertThat(spans(two, TrussKind.JACK)).isEqualTo(spans(one, TrussKind.JACK));
    Truss girder = ofKind(two, TrussKind.HIP_GIRDER).get(0);
    assertThat(girder.height())
        .isEqualTo(ofKind(one, TrussKind.HIP_GIRDER).get(0).height(), within(1e-9));
    assertThat(two.girders().get(0).hangers()).hasSize(9);
  }

  private static List<Double> spans(FramingSet set, TrussKind kind) {
    return ofKind(set, kind).stream().map(Truss::span).sorted().toList();
  }

  /**
   * Flats held low for a 2x4 laid flat over them: 1 1/2 in square to a slope of 6 in 12 is 1.5 ·
   * 1.1180 = 1.677 plumb.
   */
  @Test
  void flatsHeldLow() {
    Part hip = Houses.box("eeee", 6, 528, 336);
    Part asked = hip.withFrame(hip.frame().withHipSetback(Optional.of(72.0)));
    FramingSet low =
        solve(asked.withFrame(asked.frame().withChoices(FrameChoices.NONE.withFlats(Flats.LOW))));
    TrussMark girder = mark(low, ofKind(low, TrussKind.HIP_GIRDER).get(0));
    assertThat(girder.height()).isEqualTo(40.125 - 1.677, within(0.001));
    assertThat(girder.topChords().get(1)).isEqualTo(193.5 + 4 * 1.677, within(0.002));
    assertThat(ofKind(low, TrussKind.COMMON)).extracting(Truss::height).doesNotContain(40.125);
  }

  /** Every way of moving a plan moves what the user put into it, so that the figures stay. */
  @TestFactory
  Stream<DynamicTest> placesGoAlongWithThePart() {
    Placements places =
        new Placements(
            List.of(
                PlacedTruss.girder(new Point(299, 20), 2),
                PlacedTruss.girder(new Point(96, 100), new Point(192, 100), 2)),
            List.of(new Point(408, 300)),
            List.of(
                new CeilingStretch(
                    new Point(330, 0), new Point(400, 0), Slope.inTwelve(3), Extras.NONE)));
    Part part =
        with(
            HOUSE.withFrame(
                HOUSE
                    .frame()
                    .withChoices(
                        FrameChoices.NONE.withRuns(
                            RunChoices.NONE.withLayoutFrom(List.of(new Point(480, 100)))))),
            places);
    Map<String, Motion> motions = new LinkedHashMap<>();
    motions.put("turned", Motion.turn(new Point(7, -3), 33.3));
    motions.put("turned about", Motion.turn(new Point(0, 0), 180));
    motions.put("mirrored", Motion.mirror(new Segment(new Point(0, 0), new Point(0, 1))));
    motions.put("mirrored up", Motion.mirror(new Segment(new Point(0, 9), new Point(1, 9))));
    motions.put("far away", Motion.shift(new Point(4e5, -7e5)));
    UnaryOperator<Plan> none = p -> p;
    List<String> expected = figures(Houses.solve(none.apply(Houses.plan(part))));
    return motions.entrySet().stream()
        .map(
            m ->
                DynamicTest.dynamicTest(
                    m.getKey(),
                    () -> assertThat(figures(solve(m.getValue().on(part)))).isEqualTo(expected)));
  }

  private static List<String> figures(FramingSet set) {
    List<String> lines = new ArrayList<>();
    for (TapeMarks t : set.tapes()) {
      t.marks().forEach(m -> lines.add("tape %.3f".formatted(m)));
    }
    for (TrussMark m : set.marks()) {
      lines.add(
          "%s %d x%d %.3f %.3f".formatted(m.kind(), m.plies(), m.quantity(), m.span(), m.height()));
    }
    for (Girder g : set.girders()) {
      lines.add("girder " + g.hangers().size());
    }
    lines.sort(String::compareTo);
    return lines;
  }
}
