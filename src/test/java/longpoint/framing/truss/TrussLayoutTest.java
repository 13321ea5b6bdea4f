package longpoint.framing.truss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import longpoint.framing.FramingSet;
import longpoint.framing.Houses;
import longpoint.framing.valley.ValleySet;
import longpoint.plan.Extras;
import longpoint.plan.FrameChoices;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.Slope;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;

/** Layouts a framer can check with a tape and a pocket calculator. */
class TrussLayoutTest {
  private static TrussMark mark(FramingSet set, TrussKind kind, int which) {
    return set.marks().stream().filter(m -> m.kind() == kind).toList().get(which);
  }

  /** Common practice: 24 in layout marks at 23 1/4, 47 1/4, … for 1 1/2 in stock. */
  @Test
  void tapeMarksOfTwentyFourInchLayout() {
    TapeMarks tape = Houses.solve(Houses.plan(Houses.box("egeg", 8, 480, 336))).tapes().get(0);
    assertThat(tape.marks().subList(0, 4)).containsExactly(0.0, 23.25, 47.25, 71.25);
    assertThat(tape.marks().get(tape.marks().size() - 1)).isEqualTo(478.5);
  }

  /** 24 less 1 1/2 is 22 1/2; less 1/16 relief is 22 7/16 (common practice). */
  @Test
  void ridgeBlocks() {
    FramingSet set = Houses.solve(Houses.plan(Houses.box("egeg", 8, 480, 336)));
    RidgeBlocks ordinary = set.ridgeBlocks().get(1);
    assertThat(ordinary.length()).isEqualTo(22 + 7.0 / 16);
    assertThat(ordinary.count()).isEqualTo(18);
    RidgeBlocks ends = set.ridgeBlocks().get(0);
    assertThat(ends.length()).isEqualTo(21 + 11.0 / 16);
    assertThat(ends.count()).isEqualTo(2);
  }

  /** Blocks are cut down to the mark below, never up: 20.03 less 1/16 is 19 15/16, not 19 31/32. */
  @Test
  void ridgeBlocksRoundDown() {
    List<RidgeBlocks> cut =
        RidgeBlocks.cut(
            "p",
            "p",
            RidgeBlocks.Place.RIDGE,
            List.of(20.03, 20.0),
            0.0625,
            longpoint.framing.Shop.of(longpoint.units.LengthUnit.INCH));
    assertThat(cut).hasSize(1);
    assertThat(cut.get(0).length()).isEqualTo(19.9375);
  }

  /**
   * A college estimating worksheet, by hand: 27 ft span, 4 in 12, 33 ft long at 24 in: 18 trusses,
   * rise 4.5 ft, slope 14.230 ft.
   */
  @Test
  void worksheetHouse() {
    Part part = Houses.box("egeg", 4, 396, 324);
    Part bare =
        part.withEdge(0, part.edges().get(0).withHeel(0).withOverhang(0))
            .withEdge(2, part.edges().get(2).withHeel(0).withOverhang(0))
            .withEdge(1, part.edges().get(1).withOverhang(0))
            .withEdge(3, part.edges().get(3).withOverhang(0));
    FramingSet set = Houses.solve(Houses.plan(bare));
    assertThat(set.trusses()).hasSize(18);
    TrussMark common = mark(set, TrussKind.COMMON, 0);
    assertThat(common.height()).isEqualTo(4.5 * 12, within(1e-9));
    assertThat(common.topChords().get(0)).isEqualTo(14.230 * 12, within(0.006));
    assertThat(set.ladders()).isEmpty();
  }

  /**
   * Slopes 6 and 12 in 12 over 18 ft meet twice as far from the flatter side: 12 ft in, 6 ft up.
   */
  @Test
  void unequalSlopes() {
    Part part = Houses.box("egeg", 6, 240, 216);
    Part uneven = part.withEdge(2, part.edges().get(2).withSlope(Slope.inTwelve(12)));
    TrussMark t = mark(Houses.solve(Houses.plan(uneven)), TrussKind.COMMON, 0);
    assertThat(t.profile().top().get(1).x()).isEqualTo(144, within(1e-9));
    assertThat(t.height()).isEqualTo(72 + 4.5, within(1e-9));
  }

  /**
   * Step-down hip of a 28 ft house at 6 in 12, heel 4 1/2, set back 6 ft, by hand: the girder's
   * flat lies where the end plane is at its outer face, 71 1/4 in: 4.5 + 35.625 = 40.125; flat 336
   * − 4 × 35.625 = 193.5. Each step 24 in on is 12 in up and 48 in less.
   */
  @Test
  void stepDownHip() {
    Part part = Houses.box("eeee", 6, 528, 336);
    FramingSet set =
        Houses.solve(Houses.plan(part.withFrame(part.frame().withHipSetback(Optional.of(72.0)))));
    TrussMark girder = mark(set, TrussKind.HIP_GIRDER, 0);
    assertThat(girder.height()).isEqualTo(40.125, within(1e-9));
    assertThat(girder.topChords().get(1)).isEqualTo(193.5, within(1e-9));
    assertThat(girder.quantity()).isEqualTo(2);
    TrussMark second = mark(set, TrussKind.STEP_DOWN, 1);
    assertThat(second.height()).isEqualTo(40.125 + 24, within(1e-9));
    assertThat(second.topChords().get(1)).isEqualTo(193.5 - 96, within(1e-9));
    // Jacks 24 and 48 in from each corner die on the hip jack, half a 45° thickness short.
    TrussMark corner = mark(set, TrussKind.CORNER_JACK, 0);
    assertThat(corner.span()).isEqualTo(24 - 1.0607, within(5e-5));
    assertThat(corner.quantity()).isEqualTo(8);
    TrussMark jack = mark(set, TrussKind.JACK, 0);
    assertThat(jack.span()).isEqualTo(71.25);
    assertThat(jack.heelHigh()).isEqualTo(girder.height(), within(1e-9));
    // 96 to 240 in: seven at each end. Those at 72 and 264 would stand in the hip jacks' wood,
    // 3/4 in away on the girder, and die on them like the corner jacks: 72 - 1.0607.
    assertThat(jack.quantity()).isEqualTo(14);
    TrussMark last = mark(set, TrussKind.CORNER_JACK, 2);
    assertThat(last.span()).isEqualTo(72 - 1.0607, within(5e-5));
    assertThat(last.quantity()).isEqualTo(4);
    TrussMark hip = mark(set, TrussKind.HIP_JACK, 0);
    assertThat(hip.span()).isEqualTo(71.25 * Math.sqrt(2), within(1e-9));
    assertThat(hip.quantity()).isEqualTo(4);
  }

  /** Hips of a 28 ft house at equal slopes are 14 ft long; 15 ft back there is no flat left. */
  @Test
  void setbackPastTheHipIsSaid() {
    Part part = Houses.box("eeee", 6, 528, 336);
    FramingSet set =
        Houses.solve(Houses.plan(part.withFrame(part.frame().withHipSetback(Optional.of(180.0)))));
    assertThat(set.problems()).hasSize(2).allMatch(p -> p.message().contains("set back past"));
    assertThat(mark(set, TrussKind.HIP_GIRDER, 0).quantity()).isEqualTo(2);
  }

  @Test
  void hipGirderCarriesItsJacks() {
    Part part = Houses.box("eeee", 6, 528, 336);
    FramingSet set =
        Houses.solve(Houses.plan(part.withFrame(part.frame().withHipSetback(Optional.of(72.0)))));
    assertThat(set.girders()).hasSize(2);
    Girder girder = set.girders().get(0);
    // Two hip jacks and the seven jacks between them.
    assertThat(girder.hangers()).hasSize(9);
    assertThat(girder.hangers().get(0).along()).isEqualTo(71.25, within(1e-9));
    assertThat(girder.hangers().get(1).along()).isEqualTo(96, within(1e-9));
    assertThat(girder.reminder().in(Language.ENGLISH)).contains("1/4 to 3/8 in");
  }

  /** 40 ft at 10 in 12 stands 16 ft 8 in over its heel: base to 12 ft, cap above. */
  @Test
  void tallTrussComesInTwo() {
    FramingSet set = Houses.solve(Houses.plan(Houses.box("egeg", 10, 240, 480)));
    TrussMark base = mark(set, TrussKind.BASE, 0);
    assertThat(set.marks()).extracting(TrussMark::kind).doesNotContain(TrussKind.COMMON);
    assertThat(base.height()).isEqualTo(144 - 1.5, within(1e-9));
    // The flat purlin fills the 1 1/2 in between: base, purlin and cap make the whole.
    TrussMark cap = mark(set, TrussKind.CAP, 0);
    assertThat(base.height() + 1.5 + cap.height()).isEqualTo(204.5, within(1e-9));
    assertThat(cap.span()).isEqualTo(2 * (204.5 - 144) * 1.2, within(1e-9));
    assertThat(base.quantity()).isEqualTo(cap.quantity());
  }

  /**
   * Its gable ends keep their studs on the layout of 24 in, the cap's over the base's: the dropped
   * top chord stands 1 1/2 x 15.6205/12 = 1.953 in lower, so the cap starts (144 - 4.5 + 1.953) x
   * 1.2 = 169.743 in from the wall and its first stud, at 192, 22.257 in from its end.
   */
  @Test
  void tallGableEndKeepsItsStuds() {
    FramingSet set = Houses.solve(Houses.plan(Houses.box("egeg", 10, 240, 480)));
    TrussMark base = mark(set, TrussKind.GABLE_BASE, 0);
    TrussMark cap = mark(set, TrussKind.GABLE_CAP, 0);
    assertThat(base.quantity()).isEqualTo(2);
    assertThat(cap.quantity()).isEqualTo(2);
    assertThat(base.shape().webs()).hasSize(19).allMatch(w -> w.from().x() % 24 < 1e-9);
    assertThat(cap.shape().webs()).hasSize(5);
    assertThat(cap.shape().webs().get(0).from().x()).isEqualTo(22.257, within(0.001));
    assertThat(set.marks())
        .extracting(TrussMark::kind)
        .doesNotContain(TrussKind.GABLE_END, TrussKind.DROPPED_GABLE_END);
  }

  @Test
  void scissor() {
    Part part = Houses.box("egeg", 8, 240, 240);
    Part sloped =
        part.withFrame(part.frame().withChoices(FrameChoices.NONE.withCeiling(Slope.inTwelve(4))));
    TrussMark t = mark(Houses.solve(Houses.plan(sloped)), TrussKind.SCISSOR, 0);
    assertThat(t.profile().bottomAt(120)).isEqualTo(40, within(1e-9));
    assertThat(t.bottomChords().get(0)).isEqualTo(120 * 12.6491 / 12, within(0.001));
  }

  @Test
  void shedRoofTakesMonoTrusses() {
    FramingSet set = Houses.solve(Houses.plan(Houses.box("eggg", 3, 240, 144)));
    TrussMark t = mark(set, TrussKind.MONO, 0);
    assertThat(t.heelHigh()).isEqualTo(4.5 + 36, within(1e-9));
  }

  /** The shorter span by default; the other way when the user asks for the taller ridge. */
  @Test
  void directionOfTrusses() {
    Part part = Houses.box("eeee", 6, 528, 336);
    assertThat(Houses.solve(Houses.plan(part)).trusses().get(0).span()).isEqualTo(336);
    Part turned =
        part.withFrame(
            part.frame().withChoices(FrameChoices.NONE.withRidge(FrameChoices.Ridge.HIGH)));
    Truss first = Houses.solve(Houses.plan(turned)).trusses().get(0);
    assertThat(first.span()).isEqualTo(528);
  }

  /** Trusses over the mouth of a wing hang on its girder and have no tail there. */
  @Test
  void throughJoinHangsTrussesOnAGirder() {
    FramingSet set = Houses.solve(Houses.gardenWing(Join.Method.THROUGH));
    Girder girder = set.girders().get(0);
    assertThat(girder.mark()).isEqualTo("G1");
    // The mouth runs from 168 to 312: 192, 216, 240, 264, 288 have no wall; 168 and 312 do.
    assertThat(girder.hangers()).hasSize(5);
    TrussMark hung =
        set.marks().stream()
            .filter(m -> m.mark().equals(girder.hangers().get(0).mark()))
            .findFirst()
            .orElseThrow();
    assertThat(Math.min(hung.tailLow(), hung.tailHigh())).isZero();
    assertThat(Math.max(hung.tailLow(), hung.tailHigh())).isEqualTo(16);
    assertThat(set.valleySets().get(0).shift()).isZero();
  }

  private static Plan dormer(Join.Method method) {
    return Houses.plan(
            Houses.box("egeg", 8, 480, 336),
            Houses.part("dormer", 160, "geoe", 8, 200, 40, 280, 40, 280, 100, 200, 100))
        .withJoins(List.of(new Join("dormer", "main", method, Join.MadeFor.FRAME, Extras.NONE)));
  }

  /**
   * A dormer drawn 100 in up the main plane, by hand: ridge 160 + 4.5 + 40 × 2/3 = 191.167; main
   * deck at x: 101.625 + 2x/3 + 0.601, so apex 133.411. The deck reaches the dormer's plates at
   * 86.661, so its walls carry the front truss, from 40, and the one centred 24 in behind that
   * face; first valley truss 24 in on less the shift 0.5 / sin 33.69° = 0.901.
   */
  @Test
  void dormer() {
    ValleySet set = Houses.solve(dormer(Join.Method.OVERLAY)).valleySets().get(0);
    assertThat(set.last()).isEqualTo(64.75, within(0.001));
    assertThat(set.apex().x()).isEqualTo(133.411, within(0.001));
    assertThat(set.trusses()).hasSize(2);
    assertThat(set.trusses().get(0).x()).isEqualTo(88.75 - 0.901, within(0.001));
    assertThat(set.trusses().get(0).length()).isEqualTo(2 * (133.411 - 87.849), within(0.003));
  }

  @Test
  void dormerFramedThroughHasNoGirderAtTheWall() {
    FramingSet set = Houses.solve(dormer(Join.Method.THROUGH));
    assertThat(set.girders()).isEmpty();
    assertThat(set.problems()).anyMatch(p -> p.message().contains("stands inside"));
  }

  /** An existing house is not framed again, and cutting it open is warned of. */
  @Test
  void existingPartsAreLeftAlone() {
    Plan plan = Houses.gardenWing(Join.Method.OVERLAY);
    Plan built = plan.withPart(plan.part("main").orElseThrow().withExisting(true));
    FramingSet set = Houses.solve(built);
    assertThat(set.trusses()).allMatch(t -> t.part().equals("wing"));
    assertThat(set.fascia()).allMatch(f -> f.part().equals("wing"));
    assertThat(set.valleySets()).hasSize(1);
    Plan through = Houses.gardenWing(Join.Method.THROUGH);
    Plan opened = through.withPart(through.part("main").orElseThrow().withExisting(true));
    assertThat(Houses.solve(opened).problems())
        .anyMatch(p -> p.message().contains("would cut its trusses"));
  }

  /**
   * US Navy NAVEDTRA 14044 vol. 2, light W truss: top chords met at the quarter points, bottom
   * chord in three equal parts; 26 ft at 4 in 12 rises 52 in.
   */
  @Test
  void shapeOfTheManualsW() {
    Part part = Houses.box("egeg", 4, 240, 312);
    Part bare =
        part.withEdge(0, part.edges().get(0).withHeel(0).withOverhang(0))
            .withEdge(2, part.edges().get(2).withHeel(0).withOverhang(0));
    TrussMark w = mark(Houses.solve(Houses.plan(bare)), TrussKind.COMMON, 0);
    assertThat(w.height()).isEqualTo(52, within(1e-9));
    assertThat(w.shape().webs()).hasSize(4);
    assertThat(w.shape().webs()).extracting(s -> s.from().x()).contains(78.0, 156.0, 234.0);
    assertThat(w.shape().webs().stream().map(s -> s.to().x()).distinct())
        .containsExactlyInAnyOrder(104.0, 208.0);
  }
}
