package longpoint.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import longpoint.framing.square.SquareFigures;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Worked examples out of printed carpentry texts. The tolerance follows the print: 0.005 in per
 * foot of run where the text multiplied a two-decimal figure, else half its last fraction.
 */
class PublishedRaftersTest {
  private static final String NAVY = "US Navy NAVEDTRA 14044 vol. 2: ";
  private static final String GRIFFITH = "Griffith, Carpentry, 1916: ";
  private static final String HODGSON = "Hodgson, A.B.C. of the Steel Square, 1908: ";
  private static final String AUDEL = "Audel's Carpenters and Builders Guide vol. 3, 1923: ";
  private static final String UNION = "Heavy Timber Roof Framing, union apprentice text, 2024: ";
  private static final String REFRESHER = "Carpentry Refresher, open textbook, topic 8: ";
  private static final String HUNTER = "R. Hunter, Basic Carpentry Techniques: ";

  private record Example(String source, double printed, double found, double tolerance) {}

  private static Example example(String source, double printed, double found, double tolerance) {
    return new Example(source, printed, found, tolerance);
  }

  @TestFactory
  Stream<DynamicTest> printedAnswers() {
    return Stream.of(
            common(NAVY + "span 16 ft, rise 7: 111.12 in", 111.12, 16 * 12, 7, 0.04),
            common(NAVY + "same, as 9 ft 3 1/8 in", 9 * 12 + 3.125, 16 * 12, 7, 0.04),
            common(NAVY + "span 25 ft, rise 6, by its method", 167.75, 300, 6, 0.0625),
            common("US Army EN0069(a): 20 ft 8 in wide, rise 13", 182.79, 248, 13, 0.052),
            common(GRIFFITH + "span 25 ft, 12 in 12: 17 ft 8.12 in", 17 * 12 + 8.12, 300, 12, 0.06),
            common(
                HODGSON + "24 ft, half pitch: 16 ft 11 2/3 in", 16 * 12 + 35.0 / 3, 288, 12, .06),
            example(
                GRIFFITH + "hip of the 25 ft roof, 20.78 per foot",
                259.75,
                hip(150, 12).length(),
                0.0625),
            example(
                NAVY + "hip, span 30 ft, rise 8: run 21.21 ft",
                21.21,
                hip(180, 8).run() / 12,
                .005),
            example(NAVY + "same: 23.45 ft", 23.45, hip(180, 8).length() / 12, 0.005),
            example(
                NAVY + "hip tail, 18 in out, rise 8: 18.76 × 1.5",
                28.14,
                hip(18, 8).length(),
                .0075),
            example(
                GRIFFITH + "7/12 of a hip step on the 17 leg: 9 11/12",
                9 + 11.0 / 12,
                hip(7, 6).run(),
                .03),
            example(GRIFFITH + "same on the rise leg: 3 1/2", 3.5, hip(7, 6).rise(), 1e-9),
            example(
                "Cyclopedia of Architecture, 1907: hip run for half a foot",
                8.5,
                hip(6, 9).run(),
                0.02),
            example(
                NAVY + "p. 2-28 supported valley, wing 30 ft, rise 9: 24.01 ft",
                24.01,
                new ValleyPair(480, 360, 0.75).supported().length() / 12,
                0.005),
            example(
                NAVY + "p. 2-28 rule for the supporting valley: half main span × 19.21",
                20 * 19.21,
                new ValleyPair(480, 360, 0.75).supporting().length(),
                0.1),
            example(NAVY + "p. 2-31 first jack, 16 in, rise 8", 19.23, jack(8, 16, 0), 0.005),
            example(NAVY + "p. 2-31 second jack", 38.46, jack(8, 16, 1), 0.01),
            example(AUDEL + "p. 975, 16 in, rise 10", 20.83, jack(10, 16, 0), 0.005),
            example(AUDEL + "p. 975, 20 in, rise 10", 26, jack(10, 20, 0), 0.05),
            example(
                HODGSON + "unequal hip: runs 12 and 16 ft, hip run 20", 20, unequal().run(), 1e-9),
            example(HODGSON + "same: rise 10", 10, unequal().rise(), 1e-9),
            example(
                HODGSON + "same: figure for the side cut at the ridge, 15 on 20",
                15,
                20 * Math.tan(Math.toRadians(UNEQUAL.planAngleA())),
                1e-9),
            example(
                UNION + "p. 87: 14 and 20 in 12, hip run",
                1.2207,
                FOURTEEN.overCommonRunA(1).run(),
                5e-5),
            example(UNION + "p. 87: hip", 1.6886, FOURTEEN.overCommonRunA(1).length(), 1.2e-4),
            example(UNION + "p. 87: main common", 1.5366, new Incline(1, 14 / 12.0).length(), 5e-5),
            example(
                UNION + "p. 87: adjacent common",
                1.3606,
                new Incline(0.7, 20 / 12.0).length(),
                5e-5),
            example(
                UNION + "p. 102: 1.6057 in of plan on 20 in 12",
                3.1210,
                new Incline(1.6057, 20 / 12.0).length(),
                1.5e-4),
            example(
                REFRESHER + "ridge of a 24 × 36 ft hip roof", 12, RidgeLength.hipRoof(36, 24), 0),
            example(
                NAVY + "area factor, 5 1/2 rise",
                1.100,
                SquareFigures.inTwelve(5.5).areaFactor(),
                5e-4),
            example(
                "US Army EN0069(a): 2 in 5 is 4 4/5 in 12",
                4.8,
                new Incline(12, 2 / 5.0).rise(),
                1e-12),
            example(
                HUNTER + "4.8 units of 250, rise 150: 720 mm",
                720,
                new Incline(1200, 150 / 250.0).rise(),
                1e-9),
            example(
                "trade journal, unequal wall heights: 2 ft at 6 in 12 is 48 in more run",
                24,
                new Incline(48, 0.5).rise(),
                1e-9))
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.source(),
                    () -> assertThat(e.found()).isEqualTo(e.printed(), within(e.tolerance()))));
  }

  /** Half-thickness rules for 1 1/2 in stock: NAVEDTRA 14044 ch. 2; Griffith app. IV. */
  @TestFactory
  Stream<DynamicTest> shortening() {
    return Stream.of(
            example(GRIFFITH + "common at the ridge", 0.75, Shortening.square(1.5), 1e-12),
            example(NAVY + "hip against ridge", 1.0607, Shortening.fortyFive(1.5), 5e-5),
            example(NAVY + "hip against a 3/4 in ridge", 0.5303, Shortening.fortyFive(0.75), 5e-5),
            example(NAVY + "45° thickness", 2.1213, Shortening.fortyFiveThickness(1.5), 5e-5),
            example(NAVY + "as an angle", 1.0607, Shortening.against(1.5, 45), 5e-5),
            example(
                REFRESHER + "26 × 42 ft, hips against the ridge (figure from the rule)",
                16 * 12 + 3.621,
                RidgeLength.hipsOnRidge(504, 312, 1.5, 1.5),
                5e-4),
            example(
                REFRESHER + "same, hips between commons (figure from the rule)",
                16 * 12 + 1.5,
                RidgeLength.hipsBetweenCommons(504, 312, 1.5),
                1e-9))
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.source(),
                    () -> assertThat(e.found()).isEqualTo(e.printed(), within(e.tolerance()))));
  }

  /** Hodgson's unequal hip: side eave 10 in 12 over 12 ft, end eave 10 in 16 over 16 ft. */
  private static final RoofCorner UNEQUAL = RoofCorner.square(10 / 12.0, 10 / 16.0);

  private static final RoofCorner FOURTEEN = RoofCorner.square(14 / 12.0, 20 / 12.0);

  private static Incline unequal() {
    return UNEQUAL.overCommonRunA(12);
  }

  private static Incline hip(double run, double rise) {
    return RoofCorner.square(rise / 12, rise / 12).overCommonRunA(run);
  }

  private static double jack(double rise, double spacing, int which) {
    return JackLengths.fill(RoofCorner.square(rise / 12, rise / 12), spacing, 144)
        .lengths()
        .get(which);
  }

  private static Example common(String s, double printed, double span, double rise, double tol) {
    return example(s, printed, new Incline(span / 2, rise / 12).length(), tol);
  }
}
