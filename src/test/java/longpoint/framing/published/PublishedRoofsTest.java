package longpoint.framing.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Worked examples out of printed carpentry texts, each drawn as a plan file and read back from the
 * figures a user gets. Tolerances follow the print: 0.005 in per foot of run where it multiplied a
 * two-decimal figure, else half its last fraction. Numbers marked "worked out" were not printed but
 * follow from the printed inputs.
 */
class PublishedRoofsTest {
  private static final String NAVY = "US Navy NAVEDTRA 14044 vol. 2: ";

  private static double length(JsonNode rafter) {
    return rafter.get("lineLength").asDouble();
  }

  private static double off(JsonNode rafter, String end) {
    return rafter.get(end).get("off").asDouble();
  }

  private static double angle(JsonNode rafter, String end) {
    return rafter.get(end).get("left").get("planAngle").asDouble();
  }

  private static Job gable(double span, double rise) {
    return Job.of().box(480, span, "e" + rise + " g e" + rise + " g", "\"spacing\":24");
  }

  private static Job hip(double length, double span, double rise, double spacing) {
    String e = "e" + rise;
    return Job.of().box(length, span, e + " " + e + " " + e + " " + e, "\"spacing\":" + spacing);
  }

  private static DynamicTest test(String source, double printed, double found, double tolerance) {
    return DynamicTest.dynamicTest(
        source, () -> assertThat(found).isEqualTo(printed, within(tolerance)));
  }

  @TestFactory
  Stream<DynamicTest> commons() {
    return Stream.of(
        test(
            NAVY + "span 16 ft, rise 7: 111.12 in",
            111.12,
            length(gable(192, 7).rafter("common")),
            .04),
        test(
            NAVY + "span 25 ft, rise 6, by its method",
            167.75,
            length(gable(300, 6).rafter("common")),
            .0625),
        test(
            "US Army EN0069(a): 20 ft 8 in, rise 13",
            182.79,
            length(gable(248, 13).rafter("common")),
            .052),
        test(
            "Griffith, Carpentry, app. IV: 25 ft, 12 in 12: 17 ft 8.12 in",
            212.12,
            length(gable(300, 12).rafter("common")),
            .0625),
        test(
            "Hodgson, Steel Square, 28: 24 ft, half pitch: 16 ft 11 2/3 in",
            203.667,
            length(gable(288, 12).rafter("common")),
            .06));
  }

  @TestFactory
  Stream<DynamicTest> hips() {
    return Stream.of(
        test(
            "Griffith app. IV: hip of 25 ft, 20.78 per foot",
            259.75,
            length(hip(480, 300, 12, 24).rafter("hip")),
            .0625),
        test(
            NAVY + "span 30 ft, rise 8: hip run 21.21 ft",
            21.21,
            hip(480, 360, 8, 24).rafter("hip").get("planRun").asDouble() / 12,
            .005),
        test(
            NAVY + "same: hip 23.45 ft",
            23.45,
            length(hip(480, 360, 8, 24).rafter("hip")) / 12,
            .005),
        test(
            NAVY + "hip tail, 18 in out, rise 8: 28.14 in",
            28.14,
            hip(480, 360, 8, 24).overhang(18).rafter("hip").get("tail").asDouble(),
            .0075),
        test(
            "Cyclopedia of Architecture, 1907: run 13 ft 6 in, rise 9 (worked out)",
            259.327,
            length(hip(480, 324, 9, 24).rafter("hip")),
            .001),
        test(
            "Carpentry Refresher: ridge of 24 by 36 ft, 12 ft",
            144,
            length(hip(432, 288, 6, 25).rafter("ridge")),
            1e-6),
        test(
            "Carpentry Refresher: 26 by 42 ft, hips against the ridge (worked out)",
            195.621,
            hip(504, 312, 6, 25).rafter("ridge").get("length").asDouble(),
            .001),
        test(
            "Carpentry Refresher: same between commons (worked out)",
            193.5,
            betweenCommons().rafter("ridge").get("length").asDouble(),
            1e-6),
        test(
            "Griffith app. IV: L − W + ridge + 45° thickness of hip",
            504 - 312 + 1.5 + 1.5 * Math.sqrt(2),
            hip(504, 312, 8, 25).rafter("ridge").get("length").asDouble(),
            1e-6),
        test(
            "Hodgson 32: hip of 10 in 12 is 7 1/17 in 12",
            7 + 1 / 17.0,
            slope(hip(480, 288, 10, 24).rafter("hip")) * 12,
            .0125));
  }

  private static Job betweenCommons() {
    return Job.of().box(504, 312, "e6 e6 e6 e6", "\"spacing\":25,\"ridgeEnds\":\"commons\"");
  }

  private static double slope(JsonNode rafter) {
    return rafter.get("rise").asDouble() / rafter.get("planRun").asDouble();
  }

  /**
   * NAVEDTRA 14044 p. 2-31: 19.23 in at 16 in and rise 8; Audel p. 975: 20.83 and 26 at rise 10.
   */
  @Test
  void hipJacksStepByTheCommonDifference() {
    steps(hip(480, 320, 8, 16), 19.23, 0.005);
    steps(hip(480, 320, 10, 16), 20.83, 0.005);
    steps(hip(480, 320, 10, 20), 26, 0.05);
  }

  private static void steps(Job job, double difference, double tolerance) {
    List<JsonNode> jacks = job.rafters("hip_jack");
    assertThat(jacks).hasSizeGreaterThan(5);
    for (int i = 0; i < jacks.size(); i++) {
      assertThat(length(jacks.get(i)) / (i + 1)).isEqualTo(difference, within(tolerance));
      assertThat(jacks.get(i).get("quantity").asInt()).isEqualTo(8);
      assertThat(jacks.get(i).get("mirrored").asInt()).isEqualTo(4);
      if (i > 0) {
        assertThat(jacks.get(i).get("difference").asDouble())
            .isEqualTo(difference, within(tolerance));
      }
    }
  }

  /** Half-thickness rules for 1 1/2 in stock: NAVEDTRA 14044 ch. 2; Griffith app. IV. */
  @Test
  void shorteningOfAHipRoof() {
    Job against = hip(504, 312, 8, 25);
    assertThat(off(against.rafter("common"), "head")).isEqualTo(0.75, within(1e-9));
    assertThat(off(against.rafter("hip"), "head")).isEqualTo(1.0607, within(5e-5));
    assertThat(against.rafter("hip").get("head").get("on").asText()).isEqualTo("ridge");
    assertThat(against.rafter("hip").get("head").get("by").asText()).isEqualTo("RB1");
    assertThat(off(against.rafter("hip_jack"), "head")).isEqualTo(1.0607, within(5e-5));
    JsonNode between = betweenCommons().rafter("hip");
    assertThat(off(between, "head")).isEqualTo(1.0607, within(5e-5));
    assertThat(between.get("head").get("on").asText()).isEqualTo("commons");
    assertThat(angle(between, "head")).isEqualTo(45, within(1e-6));
    // NAVEDTRA p. 2-33: 10 with 12 for the side cut of jacks at rise 8; the old books' 12 and
    // 14.42.
    JsonNode jack = against.rafter("hip_jack");
    assertThat(
            12 / Math.tan(Math.toRadians(jack.get("head").get("left").get("sideCut").asDouble())))
        .isEqualTo(14.42, within(0.005));
    // Fig. 2-34: half the thickness along the 17 leg: 0.3536 in; Griffith 24: mitre back half of
    // it.
    assertThat(against.rafter("hip").get("drop").asDouble()).isEqualTo(0.3536, within(5e-5));
    assertThat(against.rafter("hip").get("foot").get("left").get("reach").asDouble())
        .isEqualTo(-0.75, within(1e-9));
  }

  /**
   * Hodgson 43 and 44: span 24 ft, end run 16 ft, rise 10 ft; hip run 20, line 15 for the ridge.
   */
  @Test
  void unequalHip() {
    Job job = Job.of().box(600, 288, "e10 e7.5 e10 e7.5", "\"spacing\":24");
    JsonNode hip = job.rafter("hip");
    assertThat(hip.get("planRun").asDouble() / 12).isEqualTo(20, within(1e-6));
    assertThat(hip.get("rise").asDouble() / 12).isEqualTo(10, within(1e-6));
    assertThat(length(hip) / 12).isEqualTo(22.3607, within(5e-5));
    assertThat(job.rafter("common", 15.6205 * 12, 1e-3)).isPresent();
    assertThat(job.rafter("common", 18.8680 * 12, 1e-3)).isPresent();
    // 44: jacks at 2 ft step by 3.1447 ft on the end and 1.9526 ft on the long side (worked out).
    assertThat(job.rafters(r -> r.get("difference").asDouble(0) > 30))
        .allSatisfy(
            r -> assertThat(r.get("difference").asDouble() / 12).isEqualTo(3.1447, within(5e-5)))
        .hasSizeGreaterThan(3);
    assertThat(job.rafters(r -> r.path("difference").asDouble(99) < 30))
        .allSatisfy(
            r -> assertThat(r.get("difference").asDouble() / 12).isEqualTo(1.9526, within(5e-5)))
        .hasSizeGreaterThan(5);
    // The side cut against the ridge, with no commons at its end: 15 on a run of 20.
    JsonNode single = Job.of().box(600, 288, "e10 e7.5 e10 e7.5", "\"spacing\":25").rafter("hip");
    assertThat(20 * Math.tan(Math.toRadians(angle(single, "head")))).isEqualTo(15, within(1e-6));
  }

  /** Hodgson 32: 18 by 28 ft, rise 9, no ridge: runs 14 and 9, the rest worked out. */
  @Test
  void unequalPyramid() {
    Job job = Job.of().box(336, 216, "e12 e7.714285714 e12 e7.714285714", "\"spacing\":12");
    assertThat(job.rafters("hip"))
        .isNotEmpty()
        .allSatisfy(
            h -> {
              assertThat(h.get("planRun").asDouble() / 12).isEqualTo(16.6433, within(5e-5));
              assertThat(length(h) / 12).isEqualTo(18.9209, within(5e-5));
            });
    assertThat(job.rafter("common", 12.7279 * 12, 2e-3)).isPresent();
    assertThat(job.rafter("common", 16.6433 * 12, 2e-3)).isPresent();
    assertThat(job.rafters("ridge")).isEmpty();
  }

  /**
   * Heavy Timber Roof Framing p. 87: 14 and 20 in 12; hip run 1.2207, 1.6886, commons to 1 of run.
   */
  @Test
  void unequalUnitLengths() {
    Job job = Job.of().box(480, 240, "e14 e20 e14 e20", "\"spacing\":24");
    JsonNode hip = job.rafter("hip");
    assertThat(hip.get("planRun").asDouble() / 120).isEqualTo(1.2207, within(5e-5));
    assertThat(length(hip) / 120).isEqualTo(1.6886, within(1.2e-4));
    assertThat(job.rafter("common", 1.5366 * 120, 0.01)).isPresent();
    assertThat(job.rafter("common", 1.3606 * 120, 0.01)).isPresent();
  }

  /**
   * A trade journal's answer on walls of unequal height: 2 ft at 6 in 12 and a span of 24 ft is
   * framed as 28 ft from the low plate; 48 in more run.
   */
  @Test
  void unequalPlates() {
    Job job = Job.of().box(480, 288, "e6@0 g e6@24 g", "\"spacing\":24");
    List<Double> runs =
        job.rafters("common").stream().map(r -> r.get("planRun").asDouble()).sorted().toList();
    assertThat(runs.get(runs.size() - 1)).isEqualTo(28 * 12 / 2.0, within(1e-6));
    assertThat(runs.get(runs.size() - 1) - runs.get(0)).isEqualTo(48, within(1e-6));
    assertThat(job.text()).contains("stand");
  }

  /** NAVEDTRA 14044 fig. 2-29: gable studs 24 in apart at 6 in 12 differ by 12 in. */
  @Test
  void gableStuds() {
    JsonNode wall = gable(288, 6).figures().at("/framing/gableWalls/0");
    assertThat(wall.at("/low/difference").asDouble()).isEqualTo(12, within(1e-9));
    JsonNode close =
        Job.of().box(480, 288, "e6 g e6 g", "\"spacing\":16").figures().at("/framing/gableWalls/0");
    assertThat(close.at("/low/difference").asDouble()).isEqualTo(8, within(1e-9));
  }

  /**
   * NAVEDTRA 14044 (shed roofs): the run is the span less the width of the high wall's plate: 12 ft
   * and 3 1/2 in give 11 ft 8 1/2 in. Beyond the inside of that plate it runs on over the wall.
   */
  @Test
  void shed() {
    JsonNode rafter =
        Job.of().overhang(12).heel(5).box(240, 144, "e4 g g g", "\"spacing\":16").rafter("common");
    assertThat(rafter.get("planRun").asDouble()).isEqualTo(11 * 12 + 8.5, within(1e-9));
    assertThat(rafter.get("head").get("on").asText()).isEqualTo("wall");
    assertThat(rafter.get("over").asDouble())
        .isEqualTo((3.5 + 12) * Math.sqrt(10) / 3, within(1e-6));
    JsonNode wide =
        Job.of().box(240, 144, "e4 g g g", "\"spacing\":16,\"plateWidth\":5.5").rafter("common");
    assertThat(wide.get("planRun").asDouble()).isEqualTo(144 - 5.5, within(1e-9));
  }
}
