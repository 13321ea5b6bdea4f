package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import longpoint.desktop.file.Dialogs.LeftDraft;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program is killed in the middle of the work, and the work is there when it starts again. */
class KilledTest {
  @TempDir Path folder;

  /** Draws in a window of its own and then sits there until it is killed. */
  public static void main(String[] args) throws InterruptedException {
    try {
      draw(Path.of(args[0]));
    } catch (Throwable broken) {
      // The window's own threads would keep a broken program alive.
      broken.printStackTrace();
      System.exit(1);
    }
    Thread.sleep(600_000);
  }

  private static void draw(Path drafts) {
    WindowDriver window =
        new WindowDriver(Plan.empty(LengthUnit.INCH), (d, request, to, told) -> List.of(), drafts);
    window.type("r").click(0, 0).move(200, 140).type("40' x 28'").enter();
    window.type("s").escape().escape().fill("title", "Corran Street house");
    window.click(480, 168).push("kind.eave");
    Plan drawn = window.plan();
    Path draft = drafts.resolve("draft-1.json");
    WindowDriver.until("the draft is whole", () -> holds(draft, drawn));
    System.out.println("drawn");
  }

  private static boolean holds(Path draft, Plan drawn) {
    try {
      Plan kept = PlanFile.read(draft).plan();
      return kept.parts().equals(drawn.parts()) && kept.title().equals(drawn.title());
    } catch (java.io.IOException e) {
      return false; // not there yet
    }
  }

  @Test
  void aKilledProgramsWorkIsOfferedAndWhole() throws Exception {
    WindowDriver.needDisplay();
    Path drafts = folder.resolve("drafts");
    Process program =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                KilledTest.class.getName(),
                drafts.toString())
            .redirectError(folder.resolve("errors.txt").toFile())
            .start();
    try (BufferedReader says =
        new BufferedReader(
            new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8))) {
      assertThat(says.readLine())
          .as(() -> "errors: " + read(folder.resolve("errors.txt")))
          .isEqualTo("drawn");
    } finally {
      program.destroyForcibly();
    }
    assertThat(program.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(program.exitValue()).isNotZero();

    try (WindowDriver window =
        new WindowDriver(
            Plan.empty(LengthUnit.INCH), (d, request, to, told) -> List.of(), drafts)) {
      window.dialogs().leftDraft = LeftDraft.OPEN;
      assertThat(WindowDriver.onEvents(() -> window.window().drafts().offer(window.dialogs())))
          .isTrue();
      Plan back = window.plan();
      assertThat(back.title()).isEqualTo("Corran Street house");
      assertThat(back.parts().get(0).outline().bounds().width()).isEqualTo(480);
      assertThat(back.parts().get(0).edges().get(1).kind()).isEqualTo(longpoint.plan.EdgeKind.EAVE);
      assertThat(window.window().job().document().isDirty()).isTrue();
      // Two hips, as drawn before the program died.
      assertThat(window.design().surface().lines())
          .filteredOn(l -> l.kind() == longpoint.surface.LineKind.HIP)
          .hasSize(2);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (java.io.IOException e) {
      return e.getMessage();
    }
  }
}
