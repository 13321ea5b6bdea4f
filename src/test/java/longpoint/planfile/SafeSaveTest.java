package longpoint.planfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class SafeSaveTest {
  private static final Plan FIRST = Plan.empty(LengthUnit.INCH).withTitle("First");
  private static final Plan SECOND = Plan.empty(LengthUnit.INCH).withTitle("Second");

  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theFileBeforeStaysBesideTheNewOne() throws IOException {
    Path file = folder.resolve("house.json");
    PlanFile.write(FIRST, file);
    assertThat(names()).containsExactly("house.json");
    PlanFile.write(SECOND, file);
    assertThat(names()).containsExactly("house.json", "house.json~");
    assertThat(PlanFile.read(file).plan()).isEqualTo(SECOND);
    assertThat(PlanFile.read(PlanFile.backupOf(file)).plan()).isEqualTo(FIRST);
  }

  @Test
  void savingTheSameAgainKeepsTheBackup() throws IOException {
    Path file = folder.resolve("house.json");
    PlanFile.write(FIRST, file);
    PlanFile.write(SECOND, file);
    PlanFile.write(SECOND, file);
    assertThat(PlanFile.read(PlanFile.backupOf(file)).plan()).isEqualTo(FIRST);
  }

  @Test
  void whatACutOffSaveLeftIsNotTouched() throws IOException {
    Path file = folder.resolve("house.json");
    Files.writeString(folder.resolve(".house.json.saving0"), "half");
    PlanFile.write(FIRST, file);
    assertThat(PlanFile.read(file).plan()).isEqualTo(FIRST);
    assertThat(folder.resolve(".house.json.saving0")).hasContent("half");
  }

  @Test
  void aFailedSaveLeavesEverythingAsItWas() throws IOException {
    Path taken = folder.resolve("house.json");
    Files.createDirectories(taken.resolve("inside"));
    assertThatThrownBy(() -> PlanFile.write(FIRST, taken))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("house.json was not saved");
    assertThat(taken.resolve("inside")).isDirectory();
    assertThat(names()).containsExactly("house.json");
    assertThatThrownBy(() -> PlanFile.write(FIRST, folder.resolve("gone").resolve("a.json")))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("its folder is not there");
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void linksAndPermissionsStay() throws IOException {
    Path file = folder.resolve("house.json");
    Path link = folder.resolve("link.json");
    PlanFile.write(FIRST, file);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
    Files.createSymbolicLink(link, file);
    PlanFile.write(SECOND, link);
    assertThat(link).isSymbolicLink();
    assertThat(PlanFile.read(file).plan()).isEqualTo(SECOND);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-rw-r--");
  }

  /** Whoever reads while others save sees one whole plan or another. */
  @Test
  void readersNeverSeeHalfAFile() throws Exception {
    Path file = folder.resolve("house.json");
    PlanFile.write(FIRST, file);
    ExecutorService pool = Executors.newFixedThreadPool(2);
    try {
      List<Future<?>> saves = new ArrayList<>();
      for (int w = 0; w < 2; w++) {
        String title = "Writer " + w + " ".repeat(20_000);
        saves.add(
            pool.submit(
                () -> {
                  for (int n = 0; n < 25; n++) {
                    byte[] bytes = PlanFile.bytes(FIRST.withTitle(title + n));
                    SafeSave.replace(bytes, file);
                  }
                  return null;
                }));
      }
      int reads = 0;
      while (reads == 0 || !saves.stream().allMatch(Future::isDone)) {
        byte[] seen = Files.readAllBytes(file);
        assertThat(new String(seen, StandardCharsets.UTF_8)).endsWith("}\n");
        assertThat(PlanFile.read(seen).plan().title()).matches("First|Writer [01] +\\d+");
        reads++;
      }
      for (Future<?> save : saves) {
        save.get();
      }
      assertThat(names()).containsExactly("house.json");
    } finally {
      pool.shutdown();
    }
  }
}
