package longpoint.desktop;

import java.util.List;
import longpoint.desktop.panel.LineIcon;
import longpoint.geometry.Bounds;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;

/**
 * Loads, beside the toolkit and the look, what the first window needs next and what needs no event
 * thread: the settings, the words, the layout, a first design. A second processor would stand idle
 * meanwhile. Nothing waits for it and nothing hangs on it.
 */
final class WarmUp {
  /** Classes whose first use takes long: the layout asks the whole of Java Beans for itself. */
  private static final List<String> FIRST_USED =
      List.of("net.miginfocom.swing.MigLayout", "longpoint.desktop.WindowTasks");

  private WarmUp() {}

  static void begin() {
    Thread thread = new Thread(WarmUp::load, "warm-up");
    thread.setDaemon(true);
    // What goes wrong here goes wrong again where it is needed, and is told there.
    thread.setUncaughtExceptionHandler((t, early) -> {});
    thread.start();
  }

  private static void load() {
    Settings.ofUser().theme();
    Texts.of("app.name");
    FIRST_USED.forEach(WarmUp::load);
    LineIcon.of("view.fit", 1);
    Pipeline.solve(Plan.empty(LengthUnit.INCH));
    Bounds.EMPTY.equals(Bounds.of(List.of())); // links what records are compared with
  }

  private static void load(String name) {
    try {
      Class.forName(name);
    } catch (ClassNotFoundException e) {
      // Then the window will say so; to be early is all this is for.
    }
  }
}
