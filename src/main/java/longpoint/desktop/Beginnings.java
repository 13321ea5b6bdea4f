package longpoint.desktop;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import longpoint.desktop.action.Task;
import longpoint.editor.tools.Tools;
import longpoint.units.LengthUnit;

/**
 * The tasks that begin a plan. The start card offers them before the rest of the window is made;
 * whoever does one of them so early has it made on the spot.
 */
final class Beginnings {
  /** Letters of the tools. */
  private static final Map<Tools, Character> LETTERS =
      Map.ofEntries(
          Map.entry(Tools.SELECT, 's'),
          Map.entry(Tools.OUTLINE, 'o'),
          Map.entry(Tools.RECTANGLE, 'r'),
          Map.entry(Tools.ADDITION, 'a'),
          Map.entry(Tools.COURTYARD, 'h'),
          Map.entry(Tools.CORNER, 'c'),
          Map.entry(Tools.EDGE, 'e'),
          Map.entry(Tools.MOVE, 'm'),
          Map.entry(Tools.COPY, 'd'),
          Map.entry(Tools.TURN, 't'),
          Map.entry(Tools.MIRROR, 'i'),
          Map.entry(Tools.MEASURE, 'l'),
          Map.entry(Tools.DIMENSION, 'n'),
          Map.entry(Tools.NOTE, 'w'));

  private final Supplier<MainWindow> window;

  /**
   * @param window the whole window, asked for when a task is done
   */
  Beginnings(Supplier<MainWindow> window) {
    this.window = window;
  }

  /** What the start card offers, the best first. */
  List<Task> offered() {
    return List.of(tool(Tools.RECTANGLE), tool(Tools.OUTLINE), open(), newMetric());
  }

  Task open() {
    return Task.of("file.open", () -> window.get().files().open()).key("menu O");
  }

  Task newMetric() {
    return Task.of("file.new.mm", () -> window.get().files().start(LengthUnit.MILLIMETRE))
        .key("menu shift N");
  }

  /** Takes a tool in hand. */
  Task tool(Tools tool) {
    Task task =
        Task.named(
                "tool." + tool.name().toLowerCase(Locale.ROOT),
                tool::label,
                tool::hint,
                () -> take(tool))
            .shows(() -> window.get().job().runner().tool() == tool);
    Character letter = LETTERS.get(tool);
    return letter == null ? task : task.letter(letter);
  }

  private void take(Tools tool) {
    window.get().job().runner().choose(tool);
    window.get().canvas().requestFocusInWindow();
  }

  void sample(String name) {
    window.get().files().sample(name);
  }

  void open(java.nio.file.Path plan) {
    window.get().files().open(plan);
  }
}
