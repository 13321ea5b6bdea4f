package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import longpoint.desktop.file.Dialogs.LeftDraft;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.planfile.Recovery;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work that is not saved outlives the program. */
class DraftsTest {
  @TempDir Path folder;

  private WindowDriver open(Path drafts) {
    return new WindowDriver(Plan.empty(LengthUnit.INCH), (d, r, f, told) -> List.of(), drafts);
  }

  @Test
  void aChangeIsKeptWithoutBeingAsked() throws Exception {
    Path drafts = folder.resolve("drafts");
    try (WindowDriver window = open(drafts)) {
      window.type("r").click(0, 0).move(200, 140).type("40' x 28'").enter();
      Plan drawn = window.plan();
      Path draft = drafts.resolve("draft-1.json");
      WindowDriver.until("a draft is there", () -> Files.exists(draft));
      assertThat(PlanFile.read(draft).plan().parts()).isEqualTo(drawn.parts());

      Path file = folder.resolve("house.json");
      window.dialogs().save = Optional.of(file);
      window.menu("file.save");
      WindowDriver.until("a saved plan needs no draft", () -> !Files.exists(draft));
    }
  }

  @Test
  void whatACrashLeftBehindIsOfferedAndGoesOn() throws Exception {
    Path drafts = folder.resolve("drafts");
    Path file = folder.resolve("shed.json");
    Plan lost = Plan.empty(LengthUnit.MILLIMETRE).withTitle("Shed");
    // A draft whose lock is free is what a crash leaves: the system frees it.
    Path elsewhere = folder.resolve("elsewhere");
    try (Recovery.Draft draft = new Recovery(elsewhere).draft()) {
      draft.keep(lost, Optional.of(file));
      Files.createDirectories(drafts);
      Files.copy(elsewhere.resolve("draft-1.json"), drafts.resolve("draft-1.json"));
    }
    try (WindowDriver window = open(drafts)) {
      window.dialogs().leftDraft = LeftDraft.LATER;
      assertThat(WindowDriver.onEvents(() -> window.window().drafts().offer(window.dialogs())))
          .isFalse();
      window.dialogs().leftDraft = LeftDraft.OPEN;
      assertThat(WindowDriver.onEvents(() -> window.window().drafts().offer(window.dialogs())))
          .isTrue();
      assertThat(window.plan().title()).isEqualTo("Shed");
      assertThat(window.window().job().file()).contains(file);
      assertThat(window.window().job().document().isDirty()).isTrue();
      WindowDriver.until(
          "the work is kept under a new draft", () -> Files.exists(drafts.resolve("draft-2.json")));
      WindowDriver.until(
          "the old draft is gone", () -> !Files.exists(drafts.resolve("draft-1.json")));
    }
  }

  @Test
  void aPlaceThatCannotBeWrittenIsSaidOnceAndStopsNothing() throws Exception {
    Path blocked = Files.writeString(folder.resolve("blocked"), "a file where a folder should be");
    try (WindowDriver window = open(blocked.resolve("drafts"))) {
      window.type("r").click(0, 0).move(200, 140).type("40' x 28'").enter();
      WindowDriver.until("it is said", () -> !window.dialogs().told.isEmpty());
      assertThat(window.plan().parts()).hasSize(1);
    }
  }
}
