package longpoint.desktop;

import java.util.List;
import longpoint.editor.tools.Tools;

/**
 * Does, beside the toolkit and the look, what the {@link FirstSight} needs and what needs no event
 * thread: reads the typeface, the settings and the words, and loads classes. A second processor
 * would stand idle meanwhile. Nothing hangs on it: what is not done yet is done where it is needed.
 */
final class EarlyWork {
  /** Classes of the first sight, in the order it needs them. */
  private static final List<String> FIRST_USED =
      List.of(
          "longpoint.desktop.FirstSight",
          "longpoint.desktop.canvas.PlanCanvas",
          "longpoint.desktop.canvas.CanvasColours",
          "longpoint.desktop.canvas.SheetRoom",
          "longpoint.desktop.canvas.GridPainter",
          "longpoint.desktop.canvas.GridStep",
          "longpoint.desktop.panel.StartCard",
          "longpoint.desktop.panel.LineIcon",
          "longpoint.sheets.FrameLayers");

  private EarlyWork() {}

  /** Begins it; the screen must have been asked for before. */
  static void begin() {
    begin(EarlyWork::typeface, "typeface");
    begin(EarlyWork::words, "words");
  }

  private static void begin(Runnable work, String name) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    // What goes wrong here goes wrong again where it is needed, and is told there.
    thread.setUncaughtExceptionHandler((t, early) -> {});
    thread.start();
  }

  private static void typeface() {
    Typeface.install();
    Typeface.tryOut();
  }

  private static void words() {
    Texts.of("app.name");
    Tools.SELECT.label();
    Settings.ofUser().theme();
    FIRST_USED.forEach(EarlyWork::load);
  }

  private static void load(String name) {
    try {
      Class.forName(name);
    } catch (ClassNotFoundException e) {
      // Then the window will say so; to be early is all this is for.
    }
  }
}
