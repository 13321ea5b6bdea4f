package longpoint.framing.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Wings, valleys, dormers and octagons out of printed texts, from plan file to figures. NAVY is US
 * Navy NAVEDTRA 14044 vol. 2.
 */
class PublishedJoinsTest {
  private static double length(JsonNode rafter) {
    return rafter.get("lineLength").asDouble();
  }

  private static double off(JsonNode rafter, String end) {
    return rafter.get(end).get("off").asDouble();
  }

  /** Main roof 40 ft and wing 30 ft wide, 9 in 12, the wing's walls 20 ft out; 16 in on centre. */
  private static Job unequalSpans(String edges) {
    return Job.of()
        .part("house", 96, "0,0 960,0 960,480 0,480", edges, "\"spacing\":16")
        .part("wing", 96, "240,-240 600,-240 600,0 240,0", "g e9 o e9", "\"spacing\":16")
        .join("wing", "house", "through");
  }

  /** NAVY p. 2-28: supported valley 24.01 ft; the supporting one half the main span × 19.21. */
  @Test
  void supportingAndSupportedValleys() {
    Job job = unequalSpans("e9 g e9 g");
    List<JsonNode> valleys =
        job.rafters("valley").stream().sorted(Comparator.comparing(v -> length(v))).toList();
    assertThat(valleys).hasSize(2);
    assertThat(valleys.get(0).get("planRun").asDouble() / 12).isEqualTo(21.21, within(0.005));
    assertThat(length(valleys.get(0)) / 12).isEqualTo(24.01, within(0.005));
    assertThat(length(valleys.get(1))).isEqualTo(20 * 19.21, within(0.1));
    // Short valleys are cut square to the long one; the long one has a single cheek at the ridge.
    assertThat(valleys.get(0).at("/head/on").asText()).isEqualTo("valley");
    assertThat(valleys.get(0).at("/head/by").asText())
        .isEqualTo(valleys.get(1).get("mark").asText());
    assertThat(valleys.get(0).at("/head/left/planAngle").asDouble()).isEqualTo(90, within(1e-6));
    assertThat(valleys.get(1).at("/head/on").asText()).isEqualTo("ridge");
    assertThat(off(valleys.get(1), "head")).isEqualTo(1.0607, within(5e-5));
    // Ridge: plate + half the span of the addition less half the 45° thickness of the long valley.
    JsonNode ridge = job.rafter("ridge", 240 + 180, 1e-6).orElseThrow();
    assertThat(ridge.get("length").asDouble()).isEqualTo(420 - 1.0607, within(5e-5));
  }

  /** NAVY p. 2-34: jacks and cripples lose half the 45° thickness of whatever stands askew. */
  @Test
  void shorteningAtValleys() {
    Job job = unequalSpans("e9 g e9 g");
    assertThat(job.rafters("valley_jack"))
        .isNotEmpty()
        .allSatisfy(
            j -> {
              assertThat(off(j, "foot")).isEqualTo(1.0607, within(5e-5));
              // Audel p. 972 and geometry: half the plain thickness of the ridge.
              assertThat(off(j, "head")).isEqualTo(0.75, within(1e-6));
            });
    assertThat(job.rafters("cripple"))
        .isNotEmpty()
        .allSatisfy(
            c -> {
              assertThat(off(c, "foot")).isEqualTo(1.0607, within(5e-5));
              assertThat(off(c, "head")).isEqualTo(1.0607, within(5e-5));
            });
  }

  /**
   * NAVY fig. 2-53, a main hip roof with an addition on a long and a short valley: valley jacks of
   * the addition D, 2D, 3D …; hip-valley cripples all as long as the plate between hip and valley
   * is, here 3D; valley cripples between the valleys grow by 2D: 2D, 4D.
   */
  @Test
  void patternOfJacks() {
    double d = 20;
    Job job =
        Job.of()
            .part("house", 96, "0,0 960,0 960,480 0,480", "e9 e9 e9 e9", "\"spacing\":16")
            .part("wing", 96, "48,-160 368,-160 368,0 48,0", "g e9 o e9", "\"spacing\":16")
            .join("wing", "house", "through");
    List<Double> wing = lengths(job, "valley_jack", "wing");
    for (int k = 1; k <= 9; k++) {
      assertThat(wing).as(k + " D").anyMatch(near(k * d));
    }
    List<Double> cripples = lengths(job, "cripple", "house");
    assertThat(cripples.stream().filter(near(3 * d)).count()).isGreaterThanOrEqualTo(2);
    for (int k = 1; k <= 4; k++) {
      assertThat(cripples).as(2 * k + " D").anyMatch(near(2 * k * d));
    }
    assertThat(cripples)
        .allMatch(
            c ->
                near(3 * d).test(c)
                    || Math.abs(c / (2 * d) % 1) < 1e-6
                    || Math.abs(c / (2 * d) % 1) > 1 - 1e-6);
  }

  private static java.util.function.Predicate<Double> near(double length) {
    return l -> Math.abs(l - length) < 1e-6;
  }

  /** Each as often as it is cut. */
  private static List<Double> lengths(Job job, String kind, String part) {
    return job.rafters(kind).stream()
        .filter(r -> r.get("part").asText().equals(part))
        .flatMap(r -> java.util.Collections.nCopies(r.get("quantity").asInt(), length(r)).stream())
        .toList();
  }

  /** One outline drawn as an L has the same supporting valley: nothing else would hold the two. */
  @Test
  void valleysOfATeeDrawnInOne() {
    Job job =
        Job.of()
            .part(
                "house",
                96,
                "0,0 240,0 240,-240 600,-240 600,0 960,0 960,480 0,480",
                "e9 e9 g e9 e9 g e9 g",
                "\"spacing\":16,\"legs\":\"whole\"");
    assertThat(job.rafter("valley", 24.01 * 12, 0.06)).isPresent();
    assertThat(job.rafter("valley", 20 * 19.21, 0.1)).isPresent();
    assertThat(job.rafters("cripple")).isNotEmpty();
  }

  /**
   * NAVY p. 2-30 and fig. 2-56: run of a dormer's valley is its half span × √2; half the 45°
   * thickness of header and doubled rafter comes off; its ridge is half the span less half the
   * header, and the plate as well where it has side walls.
   */
  @Test
  void dormers() {
    // The dormer's eaves run into the slope where it starts: no side walls.
    Job low = dormer(96 + 60 * 10 / 12.0);
    assertThat(low.rafters("valley"))
        .hasSize(1)
        .allSatisfy(
            v -> {
              assertThat(v.get("quantity").asInt()).isEqualTo(2);
              assertThat(v.get("planRun").asDouble()).isEqualTo(36 * Math.sqrt(2), within(1e-6));
              assertThat(off(v, "head")).isEqualTo(1.0607, within(5e-5));
              assertThat(off(v, "foot")).isEqualTo(1.0607, within(5e-5));
              assertThat(v.at("/head/on").asText()).isEqualTo("header");
              assertThat(v.at("/foot/on").asText()).isEqualTo("trimmer");
            });
    assertThat(ridgeOf(low)).isEqualTo(36 - 0.75, within(1e-6));
    // 40 in higher they run in 48 in farther up.
    Job high = dormer(96 + 60 * 10 / 12.0 + 40);
    assertThat(ridgeOf(high)).isEqualTo(48 + 36 - 0.75, within(1e-6));
  }

  private static Job dormer(double plate) {
    return Job.of()
        .box(480, 336, "e10 g e10 g", "\"spacing\":16")
        .part("dormer", plate, "204,60 276,60 276,168 204,168", "g e10 o e10", "\"spacing\":16")
        .join("dormer", "house", "through");
  }

  private static double ridgeOf(Job job) {
    return job.rafters(
            r -> r.get("kind").asText().equals("ridge") && r.get("part").asText().equals("dormer"))
        .get(0)
        .get("length")
        .asDouble();
  }

  /**
   * A dormer laid over the deck: commons where its eaves clear the roof, valley jacks above, a
   * ridge that ends on the deck. 10 in 12 both, eaves level with the frame 48 in in from its front,
   * the deck 15/32 in: by hand.
   */
  @Test
  void dormerOverTheDeck() {
    Job job =
        Job.of()
            .box(480, 336, "e10 g e10 g", "\"spacing\":16")
            .part(
                "dormer",
                96 + 60 * 10 / 12.0 + 40,
                "204,60 276,60 276,168 204,168",
                "g e10 o e10",
                "\"spacing\":16")
            .join("dormer", "house", "overlay");
    double lift = 15 / 32.0 * Math.hypot(1, 10 / 12.0);
    double clear = 48 - lift * 12 / 10;
    List<JsonNode> own = job.rafters(r -> r.get("part").asText().equals("dormer"));
    assertThat(own).filteredOn(r -> r.get("kind").asText().equals("common")).hasSize(1);
    assertThat(own)
        .filteredOn(r -> r.get("kind").asText().equals("valley_jack"))
        .isNotEmpty()
        .allSatisfy(
            j -> {
              assertThat(j.at("/foot/on").asText()).isEqualTo("deck");
              // Saw tilted by the slope of the deck, on a level line.
              assertThat(j.at("/foot/bevel").asDouble()).isEqualTo(39.8056, within(1e-4));
              assertThat(j.at("/foot/faceCut").asDouble()).isEqualTo(39.8056, within(1e-4));
            });
    assertThat(ridgeOf(job)).isEqualTo(clear + 36, within(1e-6));
  }

  /**
   * Griffith arts. 38 and 42, Radford, Hodgson 24 and 31 for octagons at 10 in 12: hip 13 (12.99)
   * and 10, jacks 5 (4.97) and 15 7/12 (15.62), tail mitre 5/12 of a square corner's, jacks grow by
   * 12/5 of a square corner's.
   */
  @Test
  void octagon() {
    StringBuilder walls = new StringBuilder();
    for (int k = 0; k < 8; k++) {
      double turn = Math.PI / 8 + k * Math.PI / 4;
      walls.append(
          String.format(Locale.ROOT, "%.9f,%.9f ", 130 * Math.cos(turn), 130 * Math.sin(turn)));
    }
    Job job =
        Job.of()
            .overhang(16)
            .heel(6.5)
            .part("bay", 96, walls.toString(), "e10 e10 e10 e10 e10 e10 e10 e10", "\"spacing\":16");
    JsonNode hip = job.rafter("hip");
    assertThat(hip.at("/square/run").asDouble()).isEqualTo(13, within(0.012));
    assertThat(hip.at("/square/rise").asDouble()).isEqualTo(10, within(1e-6));
    assertThat(-hip.at("/foot/left/reach").asDouble()).isEqualTo(0.75 * 5 / 12, within(0.002));
    double common = 130 * Math.cos(Math.PI / 8);
    assertThat(length(hip)).isEqualTo(common / 12 * 16.3923, within(0.001));
    List<JsonNode> jacks = job.rafters("hip_jack");
    assertThat(jacks).hasSizeGreaterThan(2);
    for (int i = 0; i < jacks.size(); i++) {
      JsonNode jack = jacks.get(i);
      assertThat(jack.get("quantity").asInt()).isEqualTo(16);
      assertThat(jack.get("mirrored").asInt()).isEqualTo(8);
      double side = Math.toRadians(jack.at("/head/left/planAngle").asDouble());
      assertThat(12 * Math.tan(side)).isEqualTo(4.970563, within(1e-4));
      if (i > 0) {
        assertThat(jack.get("difference").asDouble() / 20.8273).isEqualTo(2.4, within(0.015));
      }
    }
    // On the sheet's own figures: the pair for the side cut as Hodgson and Radford give it.
    assertThat(
            longpoint.framing.square.SquareCut.of(
                new longpoint.framing.square.SquareFigures(10, 12), 22.5, 12))
        .satisfies(
            c -> {
              assertThat(c.run()).isEqualTo(5, within(0.03));
              assertThat(c.length()).isEqualTo(15 + 7 / 12.0, within(0.04));
            });
  }

  /** Three sides of an octagon and two halves out in front of a house, all at 10 in 12. */
  private static Job bay(String last, double plate, String method) {
    double half = 60 * Math.tan(Math.PI / 8);
    String walls =
        String.format(
            Locale.ROOT,
            "180,0 180,%1$.9f %2$.9f,-60 %3$.9f,-60 300,%1$.9f 300,0",
            -half,
            240 - half,
            240 + half);
    Job job =
        Job.of()
            .overhang(16)
            .heel(6.5)
            .part("house", plate, "0,0 480,0 480,336 0,336", "e10 g e10 g", "\"spacing\":16")
            .part("bay", 96, walls, "e10 e10 e10 e10 e10 " + last, "\"spacing\":16");
    return method.isEmpty() ? job : job.join("bay", "house", method);
  }

  /**
   * Radford's octagon bay on a house at 10 in 12 (part 4): hips 13 and 10, jacks cut 5 and 15 7/12,
   * and where the bay's square sides meet the house 17 and 19 3/4; against a taller wall and over
   * the house's own roof.
   */
  @ParameterizedTest
  @CsvSource({"a, 217, ''", "o, 96, overlay", "o, 96, through"})
  void octagonBayOnAHouse(String last, double plate, String method) {
    Job job = bay(last, plate, method);
    List<JsonNode> own = job.rafters(r -> r.get("part").asText().equals("bay"));
    List<JsonNode> hips = own.stream().filter(r -> r.get("kind").asText().equals("hip")).toList();
    assertThat(hips.stream().mapToInt(h -> h.get("quantity").asInt()).sum()).isEqualTo(4);
    for (JsonNode hip : hips) {
      assertThat(hip.at("/square/run").asDouble()).isEqualTo(13, within(0.012));
      assertThat(hip.at("/square/rise").asDouble()).isEqualTo(10, within(1e-6));
      assertThat(length(hip)).isEqualTo(5 * 16.3923, within(0.001));
    }
    List<JsonNode> jacks =
        own.stream().filter(r -> r.get("kind").asText().equals("hip_jack")).toList();
    assertThat(jacks).hasSizeGreaterThan(2);
    for (JsonNode jack : jacks) {
      double side = Math.tan(Math.toRadians(jack.at("/head/left/planAngle").asDouble()));
      assertThat(12 * side).isEqualTo(5, within(0.03));
      assertThat(12 / side).isEqualTo(144 / 4.970563, within(1e-3));
      double top = Math.tan(Math.toRadians(jack.at("/head/left/sideCut").asDouble()));
      assertThat(top).isEqualTo(4.970563 / 15.6205, within(1e-4));
    }
    List<JsonNode> valleys =
        own.stream().filter(r -> r.get("kind").asText().equals("valley")).toList();
    if (method.equals("through")) {
      assertThat(valleys).isNotEmpty();
      assertThat(length(valleys.get(0))).isEqualTo(5 * 19.75, within(5 * 0.055));
      assertThat(length(valleys.get(0))).isEqualTo(5 * 19.6977, within(0.001));
      assertThat(job.text()).contains("is not one straight run");
    } else {
      assertThat(valleys).isEmpty();
    }
    for (JsonNode jack : own) {
      if (method.equals("overlay") && jack.get("kind").asText().equals("valley_jack")) {
        assertThat(jack.at("/foot/on").asText()).isEqualTo("deck");
        // Saw tilted by the slope of the deck, as on any jack that stands on one.
        assertThat(jack.at("/foot/bevel").asDouble()).isEqualTo(39.8056, within(1e-4));
        for (JsonNode place : jack.get("places")) {
          double y = place.at("/from/1").asDouble();
          double x = place.at("/from/0").asDouble();
          double deck = 102.5 + y * 10 / 12 + 15 / 32.0 * Math.hypot(1, 10 / 12.0);
          double rafter = 102.5 + Math.min(x - 180, 300 - x) * 10 / 12;
          assertThat(rafter).isEqualTo(deck, within(1e-6));
        }
      }
    }
  }

  /** A wing out of square gets rafters and the reason; its feet are on the deck. */
  @Test
  void wingOutOfSquare() {
    Job job =
        Job.of()
            .box(480, 336, "e8 g e8 g", "\"spacing\":24")
            .part(
                "wing",
                96,
                "263.0384757729337,-179.9038105676658 366.9615242270663,-119.9038105676658 291.9615242270663,10 188.0384757729337,-50",
                "g e8 o e8",
                "\"spacing\":24")
            .join("wing", "house", "overlay");
    assertThat(job.text()).doesNotContain("Level valley trusses"); // who asked for rafters knows
    List<JsonNode> jacks =
        job.rafters(
            r ->
                r.get("part").asText().equals("wing")
                    && r.get("kind").asText().equals("valley_jack"));
    assertThat(jacks).isNotEmpty();
    double deck = 15 / 32.0 * Math.hypot(1, 8 / 12.0);
    for (JsonNode jack : jacks) {
      for (JsonNode place : jack.get("places")) {
        double foot = 96 + place.at("/from/1").asDouble() * 8 / 12 + deck;
        double head = 96 + 60 * 8 / 12.0;
        assertThat(head - jack.get("rise").asDouble()).isEqualTo(foot, within(1e-6));
      }
    }
  }
}
