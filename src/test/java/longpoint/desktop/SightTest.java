package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.desktop.canvas.View;
import longpoint.geometry.Point;
import longpoint.planfile.PlanFile;
import org.junit.jupiter.api.Test;

/** What is in sight, and that it stays where it is while someone draws. */
class SightTest {
  /** Walls of the lodge from the kitchen's end to the garage's, inches. */
  private static final double WIDE = 1560;

  private static WindowDriver lodge() throws Exception {
    WindowDriver window =
        new WindowDriver(PlanFile.read(Path.of("sample-plans", "heronsmere-lodge.json")).plan());
    WindowDriver.onEvents(
        () -> {
          window.window().canvas().fit();
          return null;
        });
    return window;
  }

  private static View view(WindowDriver window) {
    return WindowDriver.onEvents(() -> window.window().canvas().view());
  }

  @Test
  void aDragRightAfterAllWasBroughtIntoSightDoesNotMoveTheSheet() throws Exception {
    try (WindowDriver window = lodge()) {
      Point corner = window.plan().parts().get(0).outline().corner(0);
      window.move(corner.x(), corner.y()).press(corner.x(), corner.y());
      window.dragTo(corner.x() - 24, corner.y() - 24);
      View before = view(window);
      for (int i = 2; i < 8; i++) {
        window.dragTo(corner.x() - 24 * i, corner.y() - 12 * i);
        window.untilSolved();
        assertThat(view(window)).isEqualTo(before);
      }
      window.release(corner.x() - 24 * 7, corner.y() - 12 * 7);
      window.untilSolved();
      assertThat(view(window)).isEqualTo(before);
    }
  }

  @Test
  void besideAViewAllOfAWidePlanIsInSightWithItsNames() throws Exception {
    try (WindowDriver window = lodge()) {
      window.menu("beside.house");
      PlanCanvas canvas = window.window().canvas();
      WindowDriver.until(
          "all of it is in sight, a third of the sheet's width at least",
          () ->
              canvas.getWidth() < 700
                  && window.window().job().isUpToDate()
                  && canvas.isAllInSight()
                  && canvas.view().scale() * WIDE > canvas.getWidth() / 3.0);
    }
  }
}
