package longpoint.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LongpointCommandTest {
  private static final Path SAMPLES = Path.of("sample-plans");

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final List<Optional<Path>> opened = new ArrayList<>();
  private Optional<String> refusal = Optional.empty();

  private int run(String... args) {
    WindowDoor door =
        plan -> {
          opened.add(plan);
          return refusal;
        };
    return LongpointCommand.run(args, new PrintWriter(out), new PrintWriter(err), door);
  }

  static Stream<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(SAMPLES)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySampleGivesFiguresAndAPacketWithoutErrors(Path sample) throws IOException {
    assertThat(run("packet", sample.toString(), "--to", folder.toString()))
        .as(err::toString)
        .isZero();
    assertThat(out.toString())
        .contains(
            "Roof planes", "Roof lines", ".svg", ".dxf", "-sheets.pdf", ".html", "-figures.csv");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).isNotEmpty().allMatch(f -> f.toFile().length() > 0);
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void theSameSampleGivesTheSameBytes(Path sample) throws IOException {
    Path first = folder.resolve("first");
    Path second = folder.resolve("second");
    run("packet", sample.toString(), "--to", first.toString());
    run("packet", sample.toString(), "--to", second.toString());
    try (Stream<Path> files = Files.list(first)) {
      for (Path file : files.toList()) {
        assertThat(second.resolve(file.getFileName())).hasSameBinaryContentAs(file);
      }
    }
  }

  @Test
  void figuresForProgramsHoldTheKeysOfThePlanFormat() throws IOException {
    assertThat(run("figures", SAMPLES.resolve("sable-lane-garden-wing.json").toString(), "--json"))
        .isZero();
    JsonNode root = new ObjectMapper().readTree(out.toString());
    assertThat(root.get("unit").asText()).isEqualTo("in");
    assertThat(root.get("problems").isArray()).isTrue();
    assertThat(root.at("/surface/planes/0").fieldNames())
        .toIterable()
        .contains("id", "part", "edge", "slope", "planArea", "area", "visible", "covered");
    assertThat(root.at("/surface/lines/0").fieldNames())
        .toIterable()
        .contains("kind", "from", "to", "length", "planes");
    assertThat(root.at("/framing/trusses/0").fieldNames())
        .toIterable()
        .contains("mark", "kind", "part", "station", "span", "height", "quantity");
    assertThat(root.at("/framing/valleySets/0").fieldNames())
        .toIterable()
        .contains("upper", "lower", "shift", "apex", "setLines", "sheetLines", "trusses");
    assertThat(root.at("/framing/valleySets/0/trusses/0").fieldNames())
        .toIterable()
        .contains("number", "x", "v", "length", "left", "right", "height");
    assertThat(root.at("/framing/ridgeBlocks/0").fieldNames())
        .toIterable()
        .contains("part", "count", "length");
    assertThat(root.get("deck").fieldNames())
        .toIterable()
        .contains("planes", "sheetsBought", "areaUsed", "lowerBound");
    assertThat(root.at("/deck/planes/0").fieldNames())
        .toIterable()
        .contains("plane", "area", "sheets", "cutDifference", "courses", "pieces");
    assertThat(root.at("/field/chalk/0/lines/0").fieldNames())
        .toIterable()
        .contains("kind", "from", "to", "diagonal");
  }

  @Test
  void aPlanWithErrorsEndsWithOneAndNamesThePlace() throws IOException {
    Path crossing = folder.resolve("crossing.json");
    Files.writeString(
        crossing,
        """
        {"format":"longpoint-plan","version":1,"unit":"in","title":"Bow tie",
         "parts":[{"id":"house","name":"House","plateHeight":97,
          "outline":[[0,0],[240,240],[240,0],[0,120]],
          "edges":[{"kind":"eave"},{"kind":"eave"},{"kind":"eave"},{"kind":"eave"}]}]}
        """);
    assertThat(run("figures", crossing.toString())).isEqualTo(ExitCode.PLAN_HAS_ERRORS);
    assertThat(out.toString()).contains("error: The", "of House crosses or touches");
    assertThat(run("figures", crossing.toString(), "--language", "fr"))
        .isEqualTo(ExitCode.PLAN_HAS_ERRORS);
    assertThat(out.toString()).contains("erreur : Le mur", "de House croise ou touche le mur");
  }

  @Test
  void theMachinesLanguageChangesNothing() {
    String sample = SAMPLES.resolve("sable-lane-garden-wing.json").toString();
    assertThat(run("figures", sample, "--json")).isZero();
    String english = out.toString();
    out.getBuffer().setLength(0);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.CANADA_FRENCH);
      assertThat(run("figures", sample, "--json")).isZero();
    } finally {
      Locale.setDefault(before);
    }
    assertThat(out.toString()).isEqualTo(english).contains("The fascia of the east wall of Garden");
    assertThat(run("figures", sample, "--json", "--language", "fr")).isZero();
    assertThat(out.toString()).contains("La planche de rive du mur est de Garden wing est");
    assertThat(run("figures", sample, "--language", "de")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString()).contains("--language is en or fr, not de.");
  }

  @Test
  void aFileThatIsNotThereEndsWithTwo() {
    String missing = folder.resolve("missing.json").toString();
    assertThat(run("figures", missing)).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run("packet", missing, "--to", folder.toString())).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run(missing)).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString()).contains("missing.json").doesNotContain("\tat ");
    assertThat(opened).isEmpty();
  }

  @Test
  void aFileThatIsNoPlanEndsWithTwoAndNamesThePlace() throws IOException {
    Path broken = Files.writeString(folder.resolve("broken.json"), "{\"format\":\n  12,,}");
    assertThat(run("figures", broken.toString())).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString()).contains("broken.json").contains("line 2").doesNotContain("\tat ");
  }

  @Test
  void aFolderThatCannotBeMadeEndsWithTwo() throws IOException {
    Path file = Files.writeString(folder.resolve("in-the-way"), "x");
    String sample = SAMPLES.resolve("sable-lane-garden-wing.json").toString();
    assertThat(run("packet", sample, "--to", file.resolve("packet").toString()))
        .isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString()).contains("cannot write").doesNotContain("\tat ");
  }

  @Test
  void anUnknownOptionEndsWithTwo() {
    assertThat(run("figures", "some.json", "--nonsense")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString()).contains("--nonsense");
  }

  @Test
  void aPlanAloneOpensTheWindow() {
    Path sample = SAMPLES.resolve("sable-lane-garden-wing.json");
    assertThat(run(sample.toString())).isZero();
    assertThat(run()).isZero();
    assertThat(opened).containsExactly(Optional.of(sample), Optional.empty());
  }

  @Test
  void aWindowThatCannotOpenEndsWithTwoAndOneSentence() {
    refusal = Optional.of("there is no display to open the window on");
    assertThat(run()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString()).isEqualToIgnoringNewLines("longpoint: " + refusal.get());
  }

  @Test
  void aPlanIsTracedFromADrawing() throws Exception {
    run("packet", SAMPLES.resolve("quennel-court.json").toString(), "--to", folder.toString());
    String dxf = folder.resolve("quennel-court-plan.dxf").toString();
    assertThat(run("trace", dxf)).isZero();
    assertThat(out.toString()).contains("* A-WALL-OTLN", "Drawn in in", "61'-0\" by 40'-0\"");
    Path plan = folder.resolve("traced.json");
    assertThat(run("trace", dxf, "--inner", "courtyards", "--to", plan.toString())).isZero();
    assertThat(PlanFile.read(plan).plan().parts().get(0).holes()).hasSize(1);
    assertThat(run("trace", dxf, "--to", plan.toString())).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString()).contains("is there already");
    assertThat(run("trace", dxf, "--drawn-in", "cubit")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run("trace", dxf, "--layer", "none")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run("trace", folder.resolve("none.dxf").toString())).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString()).contains("There is no file", "--drawn-in knows in, ft");
  }

  @Test
  void aPacketHoldsWhatTheOptionsAsk() throws IOException {
    String plan = SAMPLES.resolve("tolverby-cabin.json").toString();
    String to = folder.toString();
    assertThat(run("packet", plan, "--to", to, "--only", "pdf,xlsx", "--paper", "a4", "--zip"))
        .isZero();
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(f -> f.getFileName().toString()).sorted())
          .containsExactly(
              "tolverby-cabin-lists.xlsx", "tolverby-cabin-sheets.pdf", "tolverby-cabin.zip");
    }
    assertThat(run("packet", plan, "--to", to, "--only", "doc")).isEqualTo(ExitCode.UNUSABLE);
  }
}
