package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import longpoint.geometry.Point;
import longpoint.packet.Packet;
import longpoint.plan.Plan;
import longpoint.planfile.PlanFile;
import longpoint.surface.Roof;
import longpoint.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The event thread is left to events: whole jobs on the largest sample, and what they ran on it.
 */
class EventThreadTest {
  private static final Path LODGE = Path.of("sample-plans", "heronsmere-lodge.json");

  @TempDir Path folder;

  /** Or else the other test would find nothing whatever happened. */
  @Test
  void theWatchSeesWhatItLooksFor() throws Exception {
    Plan lodge = PlanFile.read(LODGE).plan();
    WindowDriver.needDisplay();
    try (EventWatch watch = new EventWatch()) {
      WindowDriver.until(
          "it was seen",
          () -> {
            Roof.solve(lodge);
            return watch.offences().stream().anyMatch(o -> o.contains("Roof.solve"));
          });
    }
  }

  @Test
  void wholeJobsLeaveItFree() throws Exception {
    Path plan = Files.copy(LODGE, folder.resolve("lodge.json"));
    try (WindowDriver window =
            new WindowDriver(Plan.empty(LengthUnit.INCH), Packet::write, folder.resolve("drafts"));
        EventWatch watch = new EventWatch()) {
      window.dialogs().open = Optional.of(plan);
      window.menu("file.open");
      window.untilSolved();
      for (String view : new String[] {"house", "flat", "sheets", "lists"}) {
        window.menu("beside." + view);
        window.untilSolved();
      }
      window.menu("beside.house");
      drag(window);
      window.control(KeyEvent.VK_Z);
      window.untilSolved();
      window.menu("edit.redo");
      window.untilSolved();
      window.menu("file.save");
      window.dialogs().folder = Optional.of(folder.resolve("packet"));
      window.menu("file.packet");
      WindowDriver.until("it is written", () -> !window.window().errands().busy());
      assertThat(folder.resolve("packet")).isNotEmptyDirectory();
      System.out.println("whole jobs on the largest sample: " + watch.times());
      assertThat(watch.offences()).isEmpty();
    }
  }

  private static void drag(WindowDriver window) {
    Point corner = window.plan().parts().get(0).side(0).from();
    window.show(0.3, corner);
    window.move(corner.x(), corner.y()).press(corner.x(), corner.y());
    for (int i = 1; i <= 20; i++) {
      window.dragTo(corner.x() - 3 * i, corner.y() - 3 * i);
    }
    window.release(corner.x() - 60, corner.y() - 60);
    window.untilSolved();
    assertThat(window.plan().parts().get(0).side(0).from()).isNotEqualTo(corner);
  }
}
