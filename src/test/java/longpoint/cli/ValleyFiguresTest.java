package longpoint.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Valley sets as the figures command gives them, from a plan file a user could have typed. */
class ValleyFiguresTest {
  @TempDir private Path folder;

  private JsonNode figures(String plan) throws Exception {
    Path file = Files.writeString(folder.resolve("plan.json"), plan);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] args = {"figures", file.toString(), "--json"};
    int exit =
        LongpointCommand.run(
            args, new PrintWriter(out), new PrintWriter(err), p -> Optional.empty());
    assertThat(exit).as(err::toString).isZero();
    return new ObjectMapper().readTree(out.toString());
  }

  /**
   * A wing 20 ft wide whose end stands at the wall of a house 40 ft long; plates and heels level.
   */
  private static String worked(String main, String wing, double deck, double depth) {
    return """
        {"format": "longpoint-plan", "version": 1, "unit": "in",
         "parts": [
          {"id": "house", "plateHeight": 100,
           "outline": [[0, 0], [480, 0], [480, %2$s], [0, %2$s]],
           "edges": [{"kind": "eave"}, {"kind": "gable"}, {"kind": "eave"}, {"kind": "gable"}],
           "deck": {"thickness": %4$s}},
          {"id": "wing", "plateHeight": 100,
           "outline": [[120, -144], [360, -144], [360, 0], [120, 0]],
           "edges": [{"kind": "gable"}, {"kind": "eave", "slope": "%3$s"}, {"kind": "open"},
                     {"kind": "eave", "slope": "%3$s"}]}],
         "joins": [{"upper": "wing", "lower": "house", "method": "overlay", "madeFor": "frame"}],
         "defaults": {"slope": "%1$s", "overhang": 16, "heel": 0, "fascia": 1.5}}
        """
        .formatted(main, depth, wing, deck);
  }

  /**
   * Worked by hand with similar triangles, to 0.001 in: 10 in 12 on 10 in 12, 1/2 in deck; shift
   * 0.5 / sin 39.806°.
   */
  @Test
  void equalSlopes() throws Exception {
    JsonNode set = figures(worked("10/12", "10/12", 0.5, 288)).at("/framing/valleySets/0");
    double[][] table = {
      {23.219, 53.421, 192, 80},
      {47.219, 84.662, 144, 60},
      {71.219, 115.903, 96, 40},
      {95.219, 147.144, 48, 20}
    };
    assertThat(set.at("/shift").asDouble()).isEqualTo(0.781, within(0.001));
    assertThat(set.at("/firstGap").asDouble()).isEqualTo(23.219, within(0.001));
    assertThat(set.at("/apex/x").asDouble()).isEqualTo(119.219, within(0.001));
    assertThat(set.at("/apex/v").asDouble()).isEqualTo(178.385, within(0.001));
    assertThat(set.at("/trusses")).hasSize(table.length);
    for (int i = 0; i < table.length; i++) {
      JsonNode t = set.at("/trusses/" + i);
      assertThat(t.at("/x").asDouble()).isEqualTo(table[i][0], within(0.001));
      assertThat(t.at("/v").asDouble()).isEqualTo(table[i][1], within(0.001));
      assertThat(t.at("/stop").asDouble()).isEqualTo(table[i][1] - 1.5, within(0.001));
      assertThat(t.at("/length").asDouble()).isEqualTo(table[i][2], within(0.001));
      assertThat(t.at("/height").asDouble()).isEqualTo(table[i][3], within(0.001));
    }
    JsonNode line = set.at("/setLines/0");
    // 45 degrees in plan: carried to the wall it is as wide as the apex is far.
    assertThat(line.at("/half").asDouble() + line.at("/x").asDouble())
        .isEqualTo(119.219, within(0.001));
  }

  /** The ridge blocks between: an odd first one, then plain spacings less 1/16 in. */
  @Test
  void ridgeBlocksOfTheSet() throws Exception {
    JsonNode blocks = figures(worked("10/12", "10/12", 0.5, 288)).at("/framing/ridgeBlocks");
    List<String> valley = new ArrayList<>();
    for (JsonNode b : blocks) {
      if (b.at("/place").asText().equals("valley")) {
        valley.add(b.at("/count").asInt() + " x " + b.at("/length").asDouble());
      }
    }
    // 23.219 − 1.5 − 1/16 = 21.656, cut down to 21 5/8; 24 − 1.5 − 1/16 = 22 7/16.
    assertThat(valley).containsExactly("1 x 21.625", "3 x 22.4375");
  }

  /** The same table's second house: 8 in 12 beneath 10 in 12, 15/32 in deck; chords to 1/16. */
  @Test
  void wingSteeperThanMain() throws Exception {
    JsonNode set = figures(worked("8/12", "10/12", 15 / 32.0, 336)).at("/framing/valleySets/0");
    double[] chords = {
      16 * 12 + 9.625, 13 * 12 + 7.1875, 10 * 12 + 4.8125, 7 * 12 + 2.375, 48, 9.625
    };
    assertThat(set.at("/shift").asDouble()).isEqualTo(0.845, within(0.001));
    assertThat(set.at("/trusses")).hasSize(chords.length);
    for (int i = 0; i < chords.length; i++) {
      assertThat(set.at("/trusses/" + i + "/length").asDouble())
          .isEqualTo(chords[i], within(1 / 32.0));
    }
  }

  /**
   * Made-up wings held to nothing but the planes the command itself gives: both ends of every chord
   * lie on the wing's frame plane and on the main plane raised by its deck; places are taped up the
   * deck from its lower top edge, which a square cut puts straight above the fascia's arris.
   */
  @Test
  void madeUpSetsLieOnTheirPlanes() throws Exception {
    Random random = new Random(77);
    int checked = 0;
    for (int round = 0; round < 40; round++) {
      double main = 4 + random.nextInt(9);
      double left = 4 + random.nextInt(9);
      double right = 4 + random.nextInt(9);
      double deck = List.of(0.46875, 0.5, 0.59375, 0.71875).get(random.nextInt(4));
      String madeFor = random.nextBoolean() ? "frame" : "deck";
      double plate = 100 + random.nextInt(13) - 6;
      double width = 96 + random.nextInt(90);
      String plan =
          String.format(
              Locale.ROOT,
              """
              {"format": "longpoint-plan", "version": 1, "unit": "in",
               "parts": [
                {"id": "house", "plateHeight": 100,
                 "outline": [[0, 0], [600, 0], [600, 480], [0, 480]],
                 "edges": [{"kind": "eave", "slope": "%1$s/12", "heel": 5}, {"kind": "gable"},
                           {"kind": "eave", "slope": "%1$s/12"}, {"kind": "gable"}],
                 "deck": {"thickness": %4$s}},
                {"id": "wing", "plateHeight": %5$s,
                 "outline": [[200, -150], [%6$s, -150], [%6$s, 0], [200, 0]],
                 "edges": [{"kind": "gable"}, {"kind": "eave", "slope": "%3$s/12"},
                           {"kind": "open"}, {"kind": "eave", "slope": "%2$s/12", "heel": 7}]}],
               "joins": [{"upper": "wing", "lower": "house", "method": "overlay",
                          "madeFor": "%7$s"}],
               "defaults": {"overhang": 14, "heel": 4.5, "fascia": 1.5}}
              """,
              main,
              left,
              right,
              deck,
              plate,
              200 + width,
              madeFor);
      checked += check(figures(plan), deck, madeFor.equals("frame"));
    }
    assertThat(checked).isGreaterThan(60);
  }

  private static int check(JsonNode figures, double deck, boolean slides) {
    JsonNode set = figures.at("/framing/valleySets/0");
    double[] house = plane(figures, "house/0");
    double[] east = plane(figures, "wing/1");
    double[] west = plane(figures, "wing/3");
    double slope = Math.hypot(house[0], house[1]);
    double plumb = deck * Math.hypot(1, slope);
    double before = set.at("/last").asDouble();
    double expected = 24 - (slides ? deck / Math.sin(Math.atan(slope)) : 0);
    int checked = 0;
    for (JsonNode t : set.at("/trusses")) {
      double x = t.at("/x").asDouble();
      double[] l = place(set, x, t.at("/left").asDouble());
      double[] r = place(set, x, -t.at("/right").asDouble());
      double[] c = place(set, x, 0);
      double top = at(house, c) + plumb;
      assertThat(at(west, l)).isEqualTo(at(house, l) + plumb, within(1e-6));
      assertThat(at(east, r)).isEqualTo(at(house, r) + plumb, within(1e-6));
      assertThat(t.at("/length").asDouble())
          .isEqualTo(Math.hypot(l[0] - r[0], l[1] - r[1]), within(1e-9));
      assertThat(at(west, c)).isEqualTo(at(east, c), within(1e-6));
      assertThat(top + t.at("/height").asDouble()).isEqualTo(at(west, c), within(1e-6));
      // Arris 14 + 1 1/2 in out from the wall at y = 0; the deck's edge stands square on the slope.
      double edgeY = -15.5 - deck * slope / Math.hypot(1, slope);
      double edgeZ = house[1] * -15.5 + house[2] + deck / Math.hypot(1, slope);
      assertThat(t.at("/v").asDouble()).isEqualTo(Math.hypot(x - edgeY, top - edgeZ), within(1e-6));
      assertThat(x - before).isEqualTo(expected, within(1e-6));
      before = x;
      expected = 24;
      checked++;
    }
    return checked;
  }

  private static double[] place(JsonNode set, double u, double v) {
    double ax = set.at("/axes/along/0").asDouble();
    double ay = set.at("/axes/along/1").asDouble();
    return new double[] {
      set.at("/axes/origin/0").asDouble() + ax * u - ay * v,
      set.at("/axes/origin/1").asDouble() + ay * u + ax * v
    };
  }

  private static double at(double[] plane, double[] p) {
    return plane[0] * p[0] + plane[1] * p[1] + plane[2];
  }

  /** z = a x + b y + c through the widest three corners of a plane's outline. */
  private static double[] plane(JsonNode figures, String id) {
    for (JsonNode plane : figures.at("/surface/planes")) {
      if (plane.at("/id").asText().equals(id)) {
        return through(plane.at("/visible/0"));
      }
    }
    throw new AssertionError("no plane " + id);
  }

  private static double[] through(JsonNode ring) {
    double most = 0;
    double[] best = null;
    for (int i = 0; i < ring.size(); i++) {
      for (int j = i + 1; j < ring.size(); j++) {
        double[] o = corner(ring, 0);
        double[] a = corner(ring, i);
        double[] b = corner(ring, j);
        double det = (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
        if (Math.abs(det) > most) {
          most = Math.abs(det);
          double da = a[2] - o[2];
          double db = b[2] - o[2];
          double m = (da * (b[1] - o[1]) - db * (a[1] - o[1])) / det;
          double n = (db * (a[0] - o[0]) - da * (b[0] - o[0])) / det;
          best = new double[] {m, n, o[2] - m * o[0] - n * o[1]};
        }
      }
    }
    return best;
  }

  private static double[] corner(JsonNode ring, int i) {
    JsonNode p = ring.get(i);
    return new double[] {p.get(0).asDouble(), p.get(1).asDouble(), p.get(2).asDouble()};
  }
}
