package longpoint.field.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longpoint.deck.DeckPlan;
import longpoint.deck.Sheathing;
import longpoint.deck.Support;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.SpanRating;
import longpoint.surface.Roof;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;
import longpoint.units.Slope;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TakeOffTest {
  private static final double FOOT = 12;
  private static final double SQUARE_FOOT = 144;

  /** A box with eaves on the long sides; the short sides are gables or eaves. */
  private static Plan box(double length, double width, double inTwelve, EdgeKind ends) {
    return box(length, width, inTwelve, ends, 0, 0);
  }

  private static Plan box(
      double length, double width, double inTwelve, EdgeKind ends, double overhang, double fascia) {
    List<Edge> edges =
        Stream.of(EdgeKind.EAVE, ends, EdgeKind.EAVE, ends)
            .map(k -> Edge.of(k).withSlope(Slope.inTwelve(inTwelve)).withOverhang(overhang))
            .toList();
    Part part =
        new Part(
            "a",
            "House",
            false,
            Ring.of(0, 0, length, 0, length, width, 0, width),
            List.of(),
            96,
            edges,
            Frame.of(LengthUnit.INCH),
            longpoint.plan.Deck.of(LengthUnit.INCH),
            Extras.NONE);
    Plan empty = Plan.empty(LengthUnit.INCH);
    var d = empty.defaults();
    return empty
        .withDefaults(
            new longpoint.plan.Defaults(
                d.slope(),
                overhang,
                d.heel(),
                fascia,
                d.ridgeBlockRelief(),
                d.lookoutFirst(),
                d.lookoutSpacing(),
                d.extras()))
        .withPart(part);
  }

  private static TakeOff takeOff(Plan plan, double waste) {
    RoofSurface surface = Roof.solve(plan);
    return TakeOff.of(
        plan, surface, DeckPlan.NONE, TakeOffChoices.of(LengthUnit.INCH).withWaste(waste));
  }

  /**
   * US Navy, Builder 3 & 2, vol. 2 (NAVEDTRA 14044), table 3-2 example: 70 by 30 ft, 5 1/2 in 12,
   * factor 1.100, 2,310 sq ft (seen in print).
   */
  @Test
  void findsTheRoofAreaOfTheNavyExample() {
    TakeOff t = takeOff(box(70 * FOOT, 30 * FOOT, 5.5, EdgeKind.GABLE), 0);
    assertThat(t.covering().area() / SQUARE_FOOT).isCloseTo(2310, within(0.5));
  }

  /**
   * JLC, "Estimating with a Spreadsheet": 1,820 sq ft on the flat at 6 in 12 is 2,034.82 (seen).
   */
  @Test
  void findsTheRoofAreaOfTheSpreadsheetExample() {
    TakeOff t = takeOff(box(52 * FOOT, 35 * FOOT, 6, EdgeKind.GABLE), 0);
    assertThat(t.covering().area() / SQUARE_FOOT).isCloseTo(2034.82, within(0.005));
  }

  /**
   * Estimating in Building Construction, p. 181: a hip roof has the area of a gable roof of the
   * same span, pitch and length. 36 by 24 ft at 6 in 12: 965.98 sq ft, worked out from the slope
   * factor.
   */
  @ParameterizedTest
  @EnumSource(
      value = EdgeKind.class,
      names = {"EAVE", "GABLE"})
  void findsHipAndGableEqual(EdgeKind ends) {
    TakeOff t = takeOff(box(36 * FOOT, 24 * FOOT, 6, ends), 0);
    assertThat(t.covering().area() / SQUARE_FOOT).isCloseTo(965.98, within(0.01));
  }

  /**
   * Estimating in Building Construction, p. 163: 72 + 1,184 sq ft take 40 sheets of 32 sq ft
   * (seen).
   */
  @Test
  void countsSheetsByThePanelMethod() {
    assertThat(TakeOff.byArea(2 * 24 * 3 / 2.0 + 148 * 8, 32)).isEqualTo(40);
    assertThat(TakeOff.byArea(32 * 7, 32)).isEqualTo(7);
  }

  /**
   * Habitat for Humanity, materials estimates for a roof: 28 ft of slope by 46 ft is 1,288 sq ft,
   * 39 bundles of shingles and 5 rolls of felt at 300 sq ft a roll (seen).
   */
  @Test
  void countsTheShinglesOfAHabitatHouse() {
    double slope = Math.sqrt(1.25);
    TakeOff t = takeOff(box(46 * FOOT, 28 / slope * FOOT, 6, EdgeKind.GABLE), 0);
    assertThat(t.covering().area() / SQUARE_FOOT).isCloseTo(1288, within(0.01));
    assertThat(t.covering().squares()).isCloseTo(12.88, within(0.0001));
    assertThat(t.covering().bundles()).isEqualTo(39);
    assertThat(t.covering().rolls()).isEqualTo(5);
  }

  /** IRC R806.2: 864 sq ft of attic needs 5.76 sq ft, 829.4 sq in, at 1/150 and 2.88 at 1/300. */
  @Test
  void findsTheOpeningsForAtticAir() {
    Vents vents = takeOff(box(36 * FOOT, 24 * FOOT, 6, EdgeKind.GABLE), 0).vents();
    assertThat(vents.oneIn150() / SQUARE_FOOT).isCloseTo(5.76, within(1e-9));
    assertThat(vents.oneIn150()).isCloseTo(829.4, within(0.05));
    assertThat(vents.oneIn300() / SQUARE_FOOT).isCloseTo(2.88, within(1e-9));
  }

  /** 80 strips of 12 by 36 in at 5 in exposure cover a square: 100 × 144 / (36 × 5), arithmetic. */
  @Test
  void measuresASquareAsAHundredSquareFeet() {
    assertThat(Covering.square(LengthUnit.INCH) / (36 * 5)).isEqualTo(80);
  }

  /** IRC R905: underlay is doubled from 2 to 4 in 12, and shingles are not laid below 2 in 12. */
  @ParameterizedTest
  @CsvSource({"1.9, 2, 1", "2, 2, 0", "3.9, 2, 0", "4, 1, 0", "8, 1, 0"})
  void doublesUnderlayOnLowSlopes(double inTwelve, double layers, int problems) {
    TakeOff t = takeOff(box(360, 240, inTwelve, EdgeKind.GABLE), 0);
    assertThat(t.covering().underlay() / t.covering().area()).isCloseTo(layers, within(1e-9));
    assertThat(t.problems()).hasSize(problems * 2);
  }

  /** Plain arithmetic on a 30 by 20 ft gable house with 12 in overhangs and 1 1/2 in fascia. */
  @Test
  void measuresEdgesAndSoffit() {
    TakeOff t = takeOff(box(360, 240, 9, EdgeKind.GABLE, 12, 1.5), 0.1);
    assertThat(t.lines().eaves()).isCloseTo(2 * 384, within(1e-6));
    // Half the width with overhang and fascia is 133.5; a 3-4-5 slope makes that 166.875.
    assertThat(t.lines().rakes()).isCloseTo(4 * 166.875, within(1e-6));
    assertThat(t.lines().dripEdge()).isCloseTo(768 + 667.5, within(1e-6));
    assertThat(t.lines().caps()).isCloseTo(384, within(1e-6));
    assertThat(t.soffit()).isCloseTo(384 * 264 - 360 * 240, within(1e-3));
    assertThat(t.covering().withWaste()).isCloseTo(1.1 * 384 * 4 * 166.875 / 2, within(1e-3));
  }

  /**
   * A sheet on trusses 24 in apart takes nine nails in each end row at 6 in and five on each of
   * three trusses between at 12 in: 33 (common practice).
   */
  @Test
  void countsTheNailsOfASheet() {
    DeckPlan deck = deck(96, 48, 24);
    Fixings fixings = Fixings.of(deck.planes().get(0), NailSchedule.of(LengthUnit.INCH));
    assertThat(fixings.nails()).isEqualTo(33);
    assertThat(fixings.clips()).isZero();
  }

  /**
   * Clips between supports on the long edges only (APA practice): four bays under three courses.
   */
  @Test
  void countsAClipForEveryBayOfEveryCourseLine() {
    Fixings fixings =
        Fixings.of(deck(96, 144, 24).planes().get(0), NailSchedule.of(LengthUnit.INCH));
    assertThat(fixings.clips()).isEqualTo(2 * 4);
    Fixings wide = Fixings.of(deck(96, 96, 48).planes().get(0), NailSchedule.of(LengthUnit.INCH));
    assertThat(wide.clips()).isEqualTo(2 * 2);
  }

  /** IRC table R503.2.1.1(1), from memory. */
  @ParameterizedTest
  @CsvSource({
    "S24_16, 24, NOT_NEEDED",
    "S24_0, 24, CLIPS",
    "S24_0, 19.2, NOT_NEEDED",
    "S32_16, 32, CLIPS",
    "S16_0, 24, TOO_FAR"
  })
  void asksForClipsByTheStamp(SpanRating rating, double spacing, SpanRating.EdgeSupport expected) {
    assertThat(rating.at(spacing, LengthUnit.INCH)).isEqualTo(expected);
  }

  /** One plane of sheets whose ends stand on trusses at both rakes. */
  private static DeckPlan deck(double length, double up, double spacing) {
    double run = up * 0.8;
    Plan plan = box(length, 2 * run, 9, EdgeKind.GABLE);
    RoofSurface surface = Roof.solve(plan);
    List<Support> trusses =
        IntStream.rangeClosed(0, (int) Math.round(length / spacing))
            .mapToObj(
                i ->
                    new Support(
                        "T",
                        Support.Kind.TRUSS,
                        new Segment(new Point(i * spacing, 0), new Point(i * spacing, run)),
                        1.5))
            .toList();
    DeckPlan deck = Sheathing.lay(plan, surface, Map.of("a/0", trusses));
    assertThat(deck.plane("a/0")).isPresent();
    return new DeckPlan(List.of(deck.plane("a/0").orElseThrow()), deck.stock(), List.of());
  }
}
