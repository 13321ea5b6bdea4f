package longpoint.planfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import longpoint.geometry.Point;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.PlanCheck;
import longpoint.plan.Problem;
import longpoint.units.Slope;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@Execution(ExecutionMode.CONCURRENT)
class PlanFileTest {
  private static Opened open(String json) throws PlanFileException {
    return PlanFile.read(json.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
  }

  private static PlanFileException refused(byte[] bytes) {
    PlanFileException e = catchThrowableOfType(PlanFileException.class, () -> PlanFile.read(bytes));
    assertThat(e).isNotNull();
    return e;
  }

  private static PlanFileException refused(String json) {
    return refused(json.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
  }

  @TestFactory
  Stream<DynamicTest> goodFilesOpenAndBadOnesNameThePlace() {
    return PlanCase.all().stream().map(c -> DynamicTest.dynamicTest(c.name(), () -> check(c)));
  }

  private static void check(PlanCase c) throws PlanFileException {
    if (c.good()) {
      Plan plan = open(c.json()).plan();
      assertThat(PlanFile.read(PlanFile.bytes(plan)).plan()).isEqualTo(plan);
    } else {
      PlanFileException e = refused(c.json());
      assertThat(e).hasMessageContaining(c.wrong());
      assertThat(e.pointer()).isEqualTo(c.place());
      assertThat(e.line()).isEqualTo(1);
    }
  }

  @Test
  void placesAreNamedInWordsWithLineAndColumn() {
    PlanFileException e =
        refused(
            """
            { "format": "longpoint-plan", "version": 1, "unit": "in",
              "parts": [ { "id": "a", "outline": [[0,0],[9,0],[9,9]], "plateHeight": 97,
                "edges": [ {"kind":"eave"},
                           {"kind":"eave","slope":"steep"}, {"kind":"eave"} ] } ] }
            """);
    assertThat(e)
        .hasMessage(
            "parts[0].edges[1].slope: \"steep\" is not a slope. Write \"8/12\", \"33.7deg\","
                + " \"66.7%\", or rise over run as a number. (line 4, column 39)");
    assertThat(e.line()).isEqualTo(4);
    assertThat(e.column()).isEqualTo(39);
  }

  @Test
  void syntaxErrorsNameLineAndColumn() {
    PlanFileException e = refused("{ 'format': 'longpoint-plan',\n  'version': 1,\n  unit: 'in' }");
    assertThat(e).hasMessageStartingWith("line 3, column ").hasMessageContaining("well-formed");
    assertThat(e.line()).isEqualTo(3);
    assertThat(refused("{'format':'longpoint-plan','format':'x'}"))
        .hasMessageContaining("format: This key stands twice");
    assertThat(refused("")).hasMessageContaining("empty");
    assertThat(refused("{} {}")).hasMessageContaining("More text follows");
    assertThat(refused("{'format':")).hasMessageContaining("well-formed");
    assertThat(refused(new byte[] {'{', '\n', (byte) 0xff, '}'}))
        .hasMessageContaining("line 2, column 1: This is not UTF-8");
  }

  @Test
  void whatIsLeftOutTakesTheDefaults() throws PlanFileException {
    Plan plan =
        open("{'format':'longpoint-plan','version':1,'unit':'mm','parts':[{'id':'shed',"
                + "'outline':[[0,0],[3000,0],[3000,2000],[0,2000]],'plateHeight':2100,"
                + "'deck':{'thickness':15}}]}")
            .plan();
    Part shed = plan.parts().get(0);
    assertThat(shed.name()).isEqualTo("shed");
    assertThat(shed.edges()).containsOnly(Edge.of(EdgeKind.EAVE));
    assertThat(shed.frame().spacing()).isEqualTo(610);
    assertThat(shed.deck().thickness()).isEqualTo(15);
    assertThat(shed.deck().sheetLength()).isEqualTo(2440);
    assertThat(plan.defaults().fascia()).isEqualTo(38);
  }

  @Test
  void unknownKeysAreNotedAndKept() throws PlanFileException {
    Opened opened =
        open(
            "{'format':'longpoint-plan','version':1,'unit':'in','client':'Mrs. Tarn','parts':["
                + "{'id':'a','outline':[[0,0],[9,0],[9,9]],'plateHeight':97.0,'colour':[1.50,null],"
                + "'edges':[{'kind':'eave','gutter':{'size':5}},{'kind':'eave'},{'kind':'eave'}]}]}");
    assertThat(opened.notes()).extracting(Problem::where).containsExactly("a/0", "a", "plan");
    assertThat(opened.notes()).allMatch(n -> n.level() == Problem.Level.NOTE);
    assertThat(opened.notes().get(0).message()).startsWith("parts[0].edges[0].gutter: ");
    String saved = new String(PlanFile.bytes(opened.plan()), StandardCharsets.UTF_8);
    assertThat(saved)
        .contains("\"client\": \"Mrs. Tarn\"")
        .contains("\"colour\": [1.50,null]")
        .contains("\"gutter\": {\"size\":5}");
  }

  @Test
  void aClockwiseOutlineIsTurnedWithItsEdges() throws PlanFileException {
    Opened opened =
        open(
            "{'format':'longpoint-plan','version':1,'unit':'in','parts':["
                + "{'id':'a','outline':[[0,0],[0,336],[480,336],[480,0]],'plateHeight':97,"
                + "'edges':[{'kind':'gable'},{'kind':'eave','slope':'7/12'},{'kind':'abutment'},"
                + "{'kind':'eave','slope':'5/12'}]}]}");
    Part part = opened.plan().parts().get(0);
    assertThat(part.outline().counterClockwise()).isTrue();
    assertThat(part.outline().corner(0)).isEqualTo(new Point(0, 0));
    assertThat(opened.notes()).hasSize(1);
    assertThat(opened.notes().get(0).message()).contains("clockwise");
    for (int i = 0; i < 4; i++) {
      Point middle = part.side(i).middle();
      Edge edge = part.edges().get(i);
      if (middle.y() == 0) {
        assertThat(edge.slope()).contains(Slope.inTwelve(5));
      } else if (middle.y() == 336) {
        assertThat(edge.slope()).contains(Slope.inTwelve(7));
      } else {
        assertThat(edge.kind()).isEqualTo(middle.x() == 0 ? EdgeKind.GABLE : EdgeKind.ABUTMENT);
      }
    }
  }

  @Test
  void edgesMustMatchSides() {
    PlanFileException e =
        refused(
            "{'format':'longpoint-plan','version':1,'unit':'in','parts':["
                + "{'id':'a','outline':[[0,0],[9,0],[9,9]],'plateHeight':97,"
                + "'edges':[{'kind':'eave'}]}]}");
    assertThat(e)
        .hasMessageContaining("parts[0].edges: There are 1 edges for 3 sides. Give one for each");
  }

  @Test
  void hostileFilesAreRefusedQuickly() {
    assertThat(refused("[".repeat(100_000))).hasMessageContaining("larger than in any plan");
    assertThat(refused("{'a':" + "9".repeat(10_000) + "}")).hasMessageContaining("larger");
    assertThat(refused("{'format':'" + "x".repeat(300_000) + "'}")).hasMessageContaining("larger");
    assertThat(refused(new byte[JsonText.MOST_BYTES + 1])).hasMessageContaining("16 MB");
    String corners = "[0,0],".repeat(20_001);
    assertThat(
            refused(
                "{'format':'longpoint-plan','version':1,'unit':'in','parts':[{'id':'a','outline':["
                    + corners
                    + "[0,0]],'plateHeight':97}]}"))
        .hasMessageContaining("20000 corners");
    String parts = "{},".repeat(501);
    assertThat(
            refused(
                "{'format':'longpoint-plan','version':1,'unit':'in','parts':[" + parts + "{}]}"))
        .hasMessageContaining("500 parts");
    assertThat(
            refused(
                "{'format':'longpoint-plan','version':1,'unit':'in','parts':[{'id':'a',"
                    + "'outline':[[1e999,0],[1,0],[1,1]],'plateHeight':97}]}"))
        .hasMessageContaining("too large");
  }

  @Test
  void anyPlanComesBackTheSameAndWritesTheSameBytes() throws PlanFileException {
    Random random = new Random(4711);
    for (int n = 0; n < 600; n++) {
      Plan plan = RandomPlans.plan(random);
      byte[] bytes = PlanFile.bytes(plan);
      Plan back = PlanFile.read(bytes).plan();
      assertThat(back).isEqualTo(plan);
      assertThat(PlanFile.bytes(back)).isEqualTo(bytes);
    }
  }

  /** Files with bytes knocked out, doubled or swapped open or are refused, and nothing else. */
  @Test
  void spoiltFilesOpenOrAreRefused() throws IOException {
    Random random = new Random(1);
    int opened = 0;
    int refused = 0;
    for (int n = 0; n < 1200; n++) {
      byte[] bytes = PlanFile.bytes(RandomPlans.plan(random));
      for (int i = random.nextInt(3); i >= 0; i--) {
        bytes = spoilt(bytes, random);
      }
      try {
        Plan plan = PlanFile.read(bytes).plan();
        assertThat(PlanFile.read(PlanFile.bytes(plan)).plan()).isEqualTo(plan);
        opened++;
      } catch (PlanFileException e) {
        assertThat(e.getMessage()).isNotBlank();
        refused++;
      }
    }
    assertThat(opened).isGreaterThan(40);
    assertThat(refused).isGreaterThan(300);
  }

  private static byte[] spoilt(byte[] bytes, Random random) {
    StringBuilder text = new StringBuilder(new String(bytes, StandardCharsets.ISO_8859_1));
    if (text.isEmpty()) {
      return bytes;
    }
    int at = random.nextInt(text.length());
    int to = Math.min(text.length(), at + 1 + random.nextInt(20));
    switch (random.nextInt(5)) {
      case 0 -> text.delete(at, to);
      case 1 -> text.insert(at, text.substring(at, to));
      case 2 -> text.setCharAt(at, "{}[]\",:0-9eE.tfn\\ \u00ff".charAt(random.nextInt(19)));
      case 3 -> text.setLength(at + 1);
      default -> text.insert(at, random.nextInt(2000) - 1000);
    }
    return text.toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  /** Nothing is wrong with a sample, and saving one changes nothing. */
  @TestFactory
  Stream<DynamicTest> samplesAreSoundAndInTheProgramsOwnLayout() throws IOException {
    return Samples.files().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> {
                      Opened opened = PlanFile.read(file);
                      assertThat(opened.notes()).isEmpty();
                      assertThat(PlanCheck.check(opened.plan())).isEmpty();
                      assertThat(new String(PlanFile.bytes(opened.plan()), StandardCharsets.UTF_8))
                          .isEqualTo(Files.readString(file));
                    }));
  }

  @Test
  void aMissingFileIsSaidSo() {
    PlanFileException e =
        catchThrowableOfType(
            PlanFileException.class, () -> PlanFile.read(Path.of("no-such-plan.json")));
    assertThat(e).hasMessageContaining("no-such-plan.json").hasMessageContaining("Check its name");
  }

  /** Hand-made damage: a digit too many would let areas overflow. */
  @Test
  void aNumberThatWouldOverflowIsRefusedAtItsPlace() throws Exception {
    Path sample = Path.of("sample-plans", "tolverby-cabin.json");
    String text = Files.readString(sample);
    int outline = text.indexOf("\"outline\"");
    int number = text.indexOf('0', outline);
    String damaged = text.substring(0, number) + "-1e308" + text.substring(number + 1);
    PlanFileException e = refused(damaged.getBytes(StandardCharsets.UTF_8));
    long line = text.substring(0, number).lines().count();
    assertThat(e).hasMessageContaining("line " + line).hasMessageContaining("too large");
  }
}
