package longpoint.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.planfile.Opened;
import longpoint.planfile.PlanFile;
import longpoint.wording.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PacketTest {
  private static final Path SAMPLE = Path.of("sample-plans/tolverby-cabin.json");

  @TempDir private Path folder;

  @Test
  void everySheetOpensAsThePlanItShows() throws Exception {
    Plan plan = PlanFile.read(SAMPLE).plan();
    Design design = Pipeline.solve(plan);
    List<Path> sheets =
        Packet.write(design, folder).stream().filter(f -> f.toString().endsWith(".svg")).toList();
    assertThat(sheets).hasSizeGreaterThan(5);
    for (Path sheet : sheets) {
      Opened opened = PlanFile.read(sheet);
      assertThat(opened.plan()).as(sheet.toString()).isEqualTo(plan);
      assertThat(opened.source()).isEqualTo(Opened.Source.SHEET);
      assertThat(opened.notes()).isEmpty();
    }
  }

  private static Map<String, byte[]> everything(Path to) throws Exception {
    return everything(to, Language.ENGLISH);
  }

  private static Map<String, byte[]> everything(Path to, Language language) throws Exception {
    Design design = Pipeline.solve(PlanFile.read(SAMPLE).plan());
    Request all =
        Request.everything(design.plan().unit())
            .withBundles(EnumSet.allOf(Request.Bundle.class))
            .withLanguage(Optional.of(language));
    Map<String, byte[]> bytes = new LinkedHashMap<>();
    for (Path file : Packet.write(design, all, to, "cabin")) {
      bytes.put(file.getFileName().toString(), Files.readAllBytes(file));
    }
    return bytes;
  }

  /** No country and no clock in any file: digits, decimal points, times of archives. */
  @Test
  void thePacketIsTheSameInEveryCountryAndTimeZone() throws Exception {
    Map<String, byte[]> here = everything(folder.resolve("here"));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      Map<String, byte[]> there = everything(folder.resolve("there"));
      assertThat(there.keySet()).containsExactlyElementsOf(here.keySet());
      there.forEach(
          (name, bytes) -> assertThat(Arrays.equals(bytes, here.get(name))).as(name).isTrue());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  /** A Turkish machine has its own small i, a French one its own comma. */
  @Test
  void aFrenchPacketIsTheSameOnEveryMachine() throws Exception {
    Map<String, byte[]> here = everything(folder.resolve("here"), Language.FRENCH);
    Locale locale = Locale.getDefault();
    try {
      for (Locale other : List.of(Locale.FRANCE, Locale.forLanguageTag("tr"))) {
        Locale.setDefault(other);
        everything(folder.resolve(other.toLanguageTag()), Language.FRENCH)
            .forEach(
                (name, bytes) ->
                    assertThat(Arrays.equals(bytes, here.get(name))).as(name).isTrue());
      }
    } finally {
      Locale.setDefault(locale);
    }
  }

  @Test
  void theArchiveHoldsEveryFileAndTheMailThoseThatAreRead() throws Exception {
    Map<String, byte[]> all = everything(folder);
    List<String> inside = new ArrayList<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(all.get("cabin.zip")))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        inside.add(entry.getName());
        assertThat(Arrays.equals(zip.readAllBytes(), all.get(entry.getName())))
            .as(entry.getName())
            .isTrue();
      }
    }
    assertThat(all.keySet()).hasSize(inside.size() + 2).containsAll(inside);
    String mail = new String(all.get("cabin.eml"), StandardCharsets.US_ASCII);
    assertThat(mail)
        .contains("filename=\"cabin-sheets.pdf\"", "filename=\"cabin.html\"", "work at height")
        .doesNotContain(".svg", "figures.json");
  }

  @Test
  void onlyWhatIsAskedForIsWritten() throws Exception {
    Design design = Pipeline.solve(PlanFile.read(SAMPLE).plan());
    Request two =
        Request.everything(design.plan().unit())
            .withOutputs(EnumSet.of(Output.PDF, Output.OBJ))
            .withBundles(EnumSet.of(Request.Bundle.MAIL));
    assertThat(Packet.write(design, two, folder, "a"))
        .extracting(f -> f.getFileName().toString())
        .containsExactly("a-sheets.pdf", "a-house.obj", "a.eml");
    assertThat(Files.readString(folder.resolve("a.eml"))).contains("a-house.obj");
  }

  /** Without the sheets only their scales are worked out, and these are the same. */
  @Test
  void drawingsAloneAreTheSameAsAmongTheRest() throws Exception {
    Map<String, byte[]> all = everything(folder.resolve("all"));
    Design design = Pipeline.solve(PlanFile.read(SAMPLE).plan());
    Request alone = Request.everything(design.plan().unit()).withOutputs(EnumSet.of(Output.DXF));
    List<Path> drawings = Packet.write(design, alone, folder.resolve("alone"), "cabin");
    assertThat(drawings).hasSize(3);
    for (Path file : drawings) {
      assertThat(Files.readAllBytes(file)).isEqualTo(all.get(file.getFileName().toString()));
    }
  }
}
