package longpoint.planfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.plan.Extras;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoveryTest {
  private static final Plan PLAN =
      Plan.empty(LengthUnit.INCH)
          .withTitle("Half drawn")
          .withExtras(new Extras(Map.of("client", "\"Mrs. Tarn\"")));

  @TempDir Path folder;

  /** Keeps a draft, says so, and is cut off when its input ends. Run as a program of its own. */
  static final class Session {
    private Session() {}

    public static void main(String[] args) throws IOException {
      Recovery.Draft draft = new Recovery(Path.of(args[0])).draft();
      draft.keep(PLAN, Optional.of(Path.of(args[1])));
      System.out.println("kept");
      System.in.read();
      Runtime.getRuntime().halt(1);
    }
  }

  @Test
  void nothingIsLeftWhereNothingWasKept() throws IOException {
    assertThat(new Recovery(folder.resolve("none")).left()).isEmpty();
  }

  @Test
  void aCrashLeavesTheDraftAndALivingProgramDoesNot() throws IOException, InterruptedException {
    Recovery recovery = new Recovery(folder);
    Path file = folder.resolve("kestrel ½.json").toAbsolutePath();
    Process session = session(file);
    try (OutputStream in = session.getOutputStream();
        BufferedReader out =
            new BufferedReader(
                new InputStreamReader(session.getInputStream(), StandardCharsets.UTF_8))) {
      assertThat(out.readLine()).isEqualTo("kept");
      assertThat(recovery.left()).as("another program is at work on it").isEmpty();
      in.write('x');
      in.flush();
      assertThat(session.waitFor()).isEqualTo(1);
    } finally {
      session.destroyForcibly();
    }
    List<Recovery.Left> left = recovery.left();
    assertThat(left).hasSize(1);
    assertThat(left.get(0).plan()).isEqualTo(PLAN);
    assertThat(left.get(0).file()).contains(file);
    try (Recovery.Draft next = recovery.draft()) {
      next.keep(PLAN.withTitle("Another"), Optional.empty());
      assertThat(recovery.left()).as("a new draft goes elsewhere").isEqualTo(left);
    }
    recovery.forget(left.get(0));
    assertThat(recovery.left()).isEmpty();
  }

  private Process session(Path file) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Dsun.jnu.encoding=UTF-8",
            "-Dfile.encoding=UTF-8",
            "-cp",
            System.getProperty("java.class.path"),
            Session.class.getName(),
            folder.toString(),
            file.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  @Test
  void closingADocumentLeavesNothing() throws IOException {
    Recovery recovery = new Recovery(folder);
    Recovery.Draft draft = recovery.draft();
    draft.keep(PLAN, Optional.empty());
    assertThat(recovery.left()).isEmpty();
    draft.close();
    draft.close();
    draft.keep(PLAN, Optional.empty());
    assertThat(recovery.left()).isEmpty();
    try (var files = Files.list(folder)) {
      assertThat(files).allMatch(f -> f.toString().endsWith(".lock"));
    }
  }

  @Test
  void twoDocumentsKeepTwoDrafts() throws IOException {
    Recovery recovery = new Recovery(folder);
    try (Recovery.Draft a = recovery.draft();
        Recovery.Draft b = recovery.draft()) {
      a.keep(PLAN, Optional.empty());
      b.keep(PLAN.withTitle("b"), Optional.empty());
      b.clear();
      b.keep(PLAN.withTitle("b again"), Optional.empty());
      assertThat(PlanFile.read(folder.resolve("draft-1.json")).plan()).isEqualTo(PLAN);
      assertThat(PlanFile.read(folder.resolve("draft-2.json")).plan().title()).isEqualTo("b again");
    }
  }

  @Test
  void aDraftThatCannotBeReadIsLeftAlone() throws IOException {
    Path spoilt = folder.resolve("draft-7.json");
    Files.writeString(spoilt, "{ not a plan");
    assertThat(new Recovery(folder).left()).isEmpty();
    assertThat(spoilt).exists();
  }
}
