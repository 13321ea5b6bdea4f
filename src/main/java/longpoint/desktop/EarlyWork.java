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

  /**
   * Classes of the stages after it, as far as loading them takes a while: the layout asks the whole
   * of Java Beans for itself.
   */
  private static final List<String> USED_NEXT =
      List.of(
          "longpoint.desktop.MainWindow",
          "longpoint.desktop.Job",
          "longpoint.desktop.WindowTasks",
          "longpoint.desktop.BesideTasks",
          "longpoint.desktop.Drafting",
          "net.miginfocom.swing.MigLayout",
          "net.miginfocom.layout.PlatformDefaults",
          "longpoint.desktop.panel.ToolStrip",
          "longpoint.desktop.panel.Header",
          "longpoint.desktop.panel.SidePanel",
          "longpoint.desktop.panel.EntryField",
          "longpoint.desktop.panel.FiguresPanel",
          "longpoint.desktop.panel.ProblemsPanel");

  private EarlyWork() {}

  /** Begins what needs no screen. */
  static void begin() {
    begin(EarlyWork::settings, "settings");
    begin(Typeface::unpack, "unpacking");
  }

  /** Begins what needs one, which must have been asked for before. */
  static void beginPainting() {
    begin(EarlyWork::typeface, "typeface");
  }

  /** Begins what the stages after the first sight need. */
  static void beginStages() {
    begin(() -> USED_NEXT.forEach(EarlyWork::load), "stages");
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

  private static void settings() {
    Settings.ofUser().theme(); // the look waits for it
    Texts.of("app.name");
    Tools.SELECT.label();
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
