package longpoint.editor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import longpoint.framing.Houses;
import longpoint.framing.TypicalPlans;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Buying;
import longpoint.plan.Defaults;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.FrameChoices;
import longpoint.plan.Join;
import longpoint.plan.Part;
import longpoint.plan.PlacedTruss;
import longpoint.plan.Placements;
import longpoint.plan.Plan;
import longpoint.plan.RunChoices;
import longpoint.plan.SpanRating;
import longpoint.surface.RandomRun;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;

/** A plan for each kind of problem, by the key of its words. */
final class Faults {
  private static final Part BOX = Houses.box("egeg", 8, 480, 336);
  private static final Plan PLAIN = Houses.plan(BOX);
  private static final Plan OVER = Houses.gardenWing(Join.Method.OVERLAY);
  private static final Part WING = OVER.parts().get(1);

  private final Map<String, Plan> all = new LinkedHashMap<>();

  private Faults() {}

  static Map<String, Plan> all() {
    Faults faults = new Faults();
    faults.shapes();
    faults.figures();
    faults.joins();
    faults.roofs();
    faults.frames();
    faults.places();
    faults.bought();
    return faults.all;
  }

  private void shapes() {
    put("noId", Houses.plan(BOX, WING.withId(" ")));
    put("sameId", Houses.plan(BOX, WING.withId("main")));
    put("slashId", Houses.plan(BOX.withId("old/new")));
    put("noLength", shaped(0, 0, 480, 0, 480, 0, 480, 336, 0, 336));
    put("spike", shaped(0, 0, 480, 0, 480, 400, 480, 336, 0, 336));
    put("crosses", shaped(0, 0, 480, 336, 480, 0, 0, 336));
    put("crosses.hole", PLAIN.withPart(holed(450, 60)));
    put("clockwise", shaped(0, 0, 0, 336, 480, 336, 480, 0));
    Part holed = holed(200, 100);
    put(
        "counterClockwise",
        PLAIN.withPart(
            holed.withShape(
                holed.outline(),
                List.of(Ring.of(200, 100, 260, 100, 260, 160, 200, 160)),
                holed.edges())));
    put("hole.outside", PLAIN.withPart(holed(600, 60)));
    Ring outer = Ring.of(100, 60, 100, 260, 300, 260, 300, 60);
    Ring inner = Ring.of(150, 100, 150, 160, 210, 160, 210, 100);
    List<Edge> edges = new ArrayList<>(BOX.edges());
    Stream.generate(() -> Edge.of(EdgeKind.EAVE)).limit(8).forEach(edges::add);
    put("hole.inside", PLAIN.withPart(BOX.withShape(BOX.outline(), List.of(outer, inner), edges)));
    put("tooShort", shaped(0, 0, 480, 0, 480, 0.03, 480, 336, 0, 336));
  }

  private void figures() {
    put("across", PLAIN.withUnit(LengthUnit.MILLIMETRE));
    put("plateHeight", Houses.plan(BOX.withPlateHeight(9712), WING));
    put("noEave", Houses.plan(Houses.box("gggg", 8, 480, 336)));
    put("overhang.negative", edge(0, e -> e.withOverhang(-3)));
    put("overhang.long", edge(0, e -> e.withOverhang(120)));
    put("heel.negative", edge(0, e -> e.withHeel(-2)));
    put("slope.none", edge(0, e -> e.withSlope(Slope.ratio(0))));
    put("slope.least", edge(0, e -> e.withSlope(Slope.ratio(0.01))));
    put("slope.steepest", edge(0, e -> e.withSlope(Slope.ratio(6))));
    put("run.slopes", Houses.plan(inLine(e -> e.withSlope(Slope.inTwelve(5)))));
    put("run.heels", Houses.plan(inLine(e -> e.withHeel(9))));
    put("thick", framed(f -> f.withSpacing(1)));
    put("ceiling", framed(f -> f.withChoices(f.choices().withCeiling(Slope.inTwelve(10)))));
    put("deck.negative", PLAIN.withPart(BOX.withDeck(BOX.deck().withThickness(-1))));
    put("notPositive", framed(f -> f.withSpacing(-24)));
    Defaults d = PLAIN.defaults();
    put("default.level", PLAIN.withDefaults(d.withSlope(Slope.ratio(0))));
    put("default.negative", PLAIN.withDefaults(d.withHeel(-2)));
    put("default.lookoutSpacing", PLAIN.withDefaults(lookouts(0)));
  }

  private void joins() {
    Join over = Join.overlay("wing", "main");
    put("sharedGround", Houses.plan(BOX, moved(BOX, 200, 100).withId("two")));
    put("noJoin", OVER.withJoins(List.of()));
    put("join.twice", OVER.withJoins(List.of(over, over)));
    put("join.itself", OVER.withJoins(List.of(over, Join.overlay("wing", "wing"))));
    put("join.unknown", OVER.withJoins(List.of(over, Join.overlay("wing", "shed"))));
    put("join.apart", OVER.withPart(moved(WING, 0, -400)));
    put("join.circle", OVER.withJoins(List.of(over, Join.overlay("main", "wing"))));
  }

  private void roofs() {
    put("surface.crowded", Houses.plan(notched(30)));
    put("surface.overtaken", overtaken());
    put("surface.fascia.higher", edge(1, e -> Edge.eave(Slope.inTwelve(4))));
    put("surface.fascia.lower", edge(1, e -> Edge.eave(Slope.inTwelve(12))));
    put("surface.open.part", OVER.withPart(wing("geoe", 400, -144, 544, 0)));
    put("surface.open.nothing", OVER.withPart(moved(WING, 0, -60)));
    put(
        "surface.open.overRidge",
        Houses.plan(BOX, Houses.part("d", 240, "egog", 2, 160, 60, 320, 60, 320, 120, 160, 120))
            .withJoins(List.of(Join.overlay("d", "main"))));
    put(
        "surface.open.cheeks",
        Houses.plan(BOX, Houses.part("d", 170, "egog", 2, 160, 60, 320, 60, 320, 100, 160, 100))
            .withJoins(List.of(Join.overlay("d", "main"))));
    put("surface.open.pastEdge", TypicalPlans.all().get("wing near the hip"));
    put("surface.noRoom", Houses.plan(heeled()));
    put("surface.sweep.stranded", Houses.plan(stranded()));
  }

  private void frames() {
    put("framing.run.crooked", Houses.plan(outline("egeg", 0, 0, 480, 0, 440, 336, 0, 336)));
    put("framing.run.courtyard", Houses.plan(courtyard("eeee")));
    put(
        "framing.run.involved",
        Houses.plan(
            outline(
                "eeeeeeeeeeee",
                0,
                0,
                300,
                0,
                300,
                100,
                400,
                100,
                400,
                400,
                200,
                400,
                200,
                300,
                100,
                300,
                100,
                200,
                50,
                200,
                50,
                150,
                0,
                150)));
    put("framing.run.sideBySide", CureHunt.knocked(RandomRun.plan(5), 5));
    put("framing.run.noEave", Houses.plan(bump("egggegeg")));
    put("framing.run.shallow", Houses.plan(bump("eeeeeege")));
    Plan through = Houses.gardenWing(Join.Method.THROUGH);
    put("framing.join.cuts", through.withPart(BOX.withExisting(true)));
    put("framing.join.inside", TypicalPlans.all().get("dormer through"));
    put(
        "framing.join.notSquare",
        OVER.withPart(
            Houses.part("wing", 97.125, "geoe", 8, 180, -190, 310, -150, 250, 45, 120, 5)));
    put("framing.join.under", OVER.withPart(wing("geoe", 200, 2, 344, 30)));
    put("framing.shed.seat", TypicalPlans.all().get("shed dormer 3.0"));
    put("framing.hip.short", Houses.plan(Houses.box("eeee", 8, 240, 44)));
    put(
        "framing.hip.setback",
        Houses.plan(
            framed(Houses.box("eeee", 8, 480, 336), f -> f.withHipSetback(Optional.of(400.0)))));
    put("framing.girder.girder", TypicalPlans.all().get("L eeeeee"));
    put("framing.valley.oneWay", OVER.withPart(WING.withEdge(1, Edge.of(EdgeKind.GABLE))));
    put("framing.valley.tallerLeg", TypicalPlans.all().get("H"));
    put("framing.valley.small", TypicalPlans.all().get("dormer through"));
    put("framing.valley.past", TypicalPlans.all().get("wing near the hip"));
    put("framing.ladder.close", PLAIN.withDefaults(lookouts(2)));
    put("framing.seat.deep", Houses.plan(rafters(BOX, 8, 0.5)));
    put("framing.seat.none", Houses.plan(rafters(BOX, 8, 14)));
    put("framing.seat.short", Houses.plan(rafters(BOX, 8, 8)));
    put("framing.ridge.shallow", Houses.plan(rafters(BOX, 16, 8)));
    put("framing.post.thin", Houses.plan(post(octagon(), 2)));
    put("framing.stick.short", Houses.plan(Houses.framed(ell(), Frame.Method.RAFTER, 16)));
    put("framing.chords.count", chords(96.0, 60.0, 48.0));
    put("framing.chords.off", chords(200.0));
    put("framing.chords.gap", chords(96.0, 40.0));
    put("deck.sizes", PLAIN.withPart(BOX.withDeck(BOX.deck().withThickness(Double.NaN))));
    put("deck.noSupports", framed(f -> f.withMethod(Frame.Method.NONE)));
    put("deck.taper", Houses.plan(outline("egeg", 0, 0, 480, 0, 484, 336, 0, 336)));
    put("deck.unsupported", TypicalPlans.all().get("hip NONE"));
    put("deck.stagger", TypicalPlans.all().get("U hips"));
    put("deck.lastCourse", Houses.plan(Houses.box("egeg", 6, 480, 144)));
  }

  private void places() {
    put("framing.placed.idle", placed(Frame.Method.RAFTER, PlacedTruss.truss(new Point(240, 168))));
    put("framing.placed.outside", placed(Frame.Method.TRUSS, PlacedTruss.truss(new Point(600, 9))));
    put(
        "framing.placed.taken",
        placed(Frame.Method.TRUSS, PlacedTruss.girder(new Point(1, 168), 2)));
    put(
        "framing.crossGirder.bearing",
        placed(
            Frame.Method.TRUSS, PlacedTruss.girder(new Point(100, 100), new Point(104, 100), 2)));
    put("framing.leftOut.none", leftOut(Placements.NONE, new Point(120, 168), new Point(120, 168)));
    put(
        "framing.leftOut.girder",
        leftOut(
            Placements.NONE.withTrusses(List.of(PlacedTruss.girder(new Point(120, 168), 2))),
            new Point(120, 168)));
    put(
        "framing.through.none",
        Houses.plan(
            framed(
                ell(),
                f ->
                    f.withChoices(
                        f.choices().withRuns(RunChoices.NONE.withThrough(new Point(900, 900)))))));
  }

  private void bought() {
    Buying usual = Buying.of(LengthUnit.INCH);
    put("buying.waste", PLAIN.withBuying(usual.withWaste(5)));
    put("buying.bundles", PLAIN.withBuying(usual.withBundles(0)));
    put("buying.roll", PLAIN.withBuying(usual.withRoll(-1)));
    put("buying.nails", PLAIN.withBuying(usual.withNails(new Buying.Nails(6, 0))));
    put("buying.kerf", boards(9, List.of(96.0), 3.5));
    put("buying.lengths", boards(0.125, List.of(4.0), 3.5));
    put("buying.widths", boards(0.125, List.of(96.0), 99));
    put("field.span.far", framed(f -> f.withSpacing(32)));
    put("field.board.tooLong", Houses.plan(rafters(Houses.box("egeg", 8, 480, 480), 8, 6)));
    put(
        "field.shingles.low",
        Houses.plan(Houses.box("egeg", 1, 480, 336))
            .withBuying(usual.withRating(SpanRating.S32_16)));
  }

  private void put(String key, Plan plan) {
    boolean elsewhere =
        Stream.of("surface.", "framing.", "deck.", "field.").anyMatch(key::startsWith)
            && !key.equals("deck.negative");
    all.put(elsewhere ? key : "plan." + key, plan);
  }

  private static Part outline(String kinds, double... xy) {
    return Houses.part("main", 97.125, kinds, 8, xy);
  }

  private static Plan shaped(double... xy) {
    return Houses.plan(outline("e".repeat(xy.length / 2), xy));
  }

  private static Plan edge(int side, UnaryOperator<Edge> change) {
    return PLAIN.withPart(BOX.withEdge(side, change.apply(BOX.edges().get(side))));
  }

  private static Plan framed(UnaryOperator<Frame> change) {
    return Houses.plan(framed(BOX, change));
  }

  private static Part framed(Part part, UnaryOperator<Frame> change) {
    return part.withFrame(change.apply(part.frame()));
  }

  private static Part moved(Part part, double x, double y) {
    List<Point> points =
        part.outline().points().stream().map(p -> p.plus(new Point(x, y))).toList();
    return part.withShape(new Ring(points), List.of(), part.edges());
  }

  private static Part wing(String kinds, double x0, double y0, double x1, double y1) {
    return Houses.part("wing", 97.125, kinds, 8, x0, y0, x1, y0, x1, y1, x0, y1);
  }

  /** The front wall in two pieces, the second with another figure. */
  private static Part inLine(UnaryOperator<Edge> second) {
    Part part = outline("eegeg", 0, 0, 240, 0, 480, 0, 480, 336, 0, 336);
    return part.withEdge(1, second.apply(part.edges().get(1)));
  }

  private static Part holed(double x, double y) {
    Ring hole = Ring.of(x, y, x, y + 60, x + 60, y + 60, x + 60, y);
    List<Edge> edges = new ArrayList<>(BOX.edges());
    Stream.generate(() -> Edge.of(EdgeKind.EAVE)).limit(4).forEach(edges::add);
    return BOX.withShape(BOX.outline(), List.of(hole), edges);
  }

  private static Part courtyard(String kinds) {
    Part part = outline(kinds, 0, 0, 700, 0, 700, 700, 0, 700);
    Ring hole = Ring.of(250, 250, 250, 450, 450, 450, 450, 250);
    List<Edge> edges = new ArrayList<>(part.edges());
    Stream.generate(() -> Edge.eave(Slope.inTwelve(8))).limit(4).forEach(edges::add);
    return part.withShape(part.outline(), List.of(hole), edges);
  }

  /** A notch in the front wall. */
  private static Part notched(double wide) {
    double a = 240 - wide / 2;
    double b = 240 + wide / 2;
    return outline("eeeeeeee", 0, 0, a, 0, a, 100, b, 100, b, 0, 480, 0, 480, 336, 0, 336);
  }

  /** A notch whose walls carry high heels. */
  private static Part heeled() {
    Part part = notched(22);
    double[] heels = {4, 36, 60, 42, 4, 4, 4, 42};
    double[] overhangs = {12, 30, 42, 0, 24, 18, 12, 18};
    for (int i = 0; i < heels.length; i++) {
      Edge edge = Edge.eave(Slope.inTwelve(2)).withHeel(heels[i]).withOverhang(overhangs[i]);
      part = part.withEdge(i, edge);
    }
    return part;
  }

  /** Of the four walls at one end only one is an eave, and gables stand round it. */
  private static Part stranded() {
    Part part =
        Houses.part(
            "main",
            97.125,
            "eeegggge",
            3,
            0,
            0,
            229.5,
            0,
            229.5,
            79,
            250.5,
            79,
            250.5,
            0,
            480,
            0,
            480,
            336,
            0,
            336);
    double[] overhangs = {6, 18, 0, 6, 24, 0, 0, 0};
    for (int i = 0; i < overhangs.length; i++) {
      part = part.withEdge(i, part.edges().get(i).withOverhang(overhangs[i]));
    }
    return part.withEdge(7, part.edges().get(7).withHeel(12));
  }

  private static Plan overtaken() {
    Part hip = Houses.box("eeee", 8, 480, 336);
    return Houses.plan(hip.withEdge(1, hip.edges().get(1).withHeel(140)));
  }

  private static Part bump(String kinds) {
    return outline(kinds, 0, 0, 180, 0, 180, -8, 300, -8, 300, 0, 480, 0, 480, 336, 0, 336);
  }

  private static Part ell() {
    return outline("eeeeee", 0, 0, 480, 0, 480, 520, 300, 520, 300, 300, 0, 300);
  }

  private static Part octagon() {
    double[] xy = new double[16];
    for (int i = 0; i < 8; i++) {
      xy[2 * i] = 120 * Math.cos(Math.toRadians(22.5 + 45 * i));
      xy[2 * i + 1] = 120 * Math.sin(Math.toRadians(22.5 + 45 * i));
    }
    return Houses.framed(outline("eeeeeeee", xy), Frame.Method.RAFTER, 16);
  }

  private static Part post(Part part, double width) {
    FrameChoices now = part.frame().choices();
    return framed(
        part, f -> f.withChoices(now.withSticks(now.sticks().withPost(Optional.of(width)))));
  }

  private static Part rafters(Part part, double rise, double heel) {
    Part framed = Houses.framed(part, Frame.Method.RAFTER, 16);
    for (int side : new int[] {0, 2}) {
      framed = framed.withEdge(side, Edge.eave(Slope.inTwelve(rise)).withHeel(heel));
    }
    return framed;
  }

  private static Plan chords(Double... lengths) {
    Join join = OVER.joins().get(0).withChords(List.of(lengths));
    return OVER.withJoins(List.of(join));
  }

  private static Plan placed(Frame.Method method, PlacedTruss truss) {
    Placements placements = Placements.NONE.withTrusses(List.of(truss));
    return framed(f -> f.withMethod(method).withPlacements(placements));
  }

  private static Plan leftOut(Placements placements, Point... at) {
    return framed(f -> f.withPlacements(placements.withLeftOut(List.of(at))));
  }

  private static Defaults lookouts(double spacing) {
    return new Defaults(
        Slope.inTwelve(8), 16, Optional.of(4.5), 1.5, 0.0625, 20, spacing, Extras.NONE);
  }

  private static Plan boards(double kerf, List<Double> lengths, double blocking) {
    return PLAIN.withBuying(
        Buying.of(LengthUnit.INCH)
            .withBoards(
                new Buying.Boards(kerf, lengths, blocking, 7.25, 9.25, 9.25, 5.5, 5.5, 0.75)));
  }
}
