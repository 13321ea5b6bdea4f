package longpoint.desktop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longpoint.desktop.action.Catalogue;
import longpoint.desktop.action.Task;
import longpoint.desktop.panel.LayersPopup;
import longpoint.editor.Event;
import longpoint.editor.ToolRunner;
import longpoint.editor.tools.Tools;
import longpoint.sheets.Layers;
import longpoint.units.LengthUnit;

/** Writes the catalogue: everything this window can do, with its key. */
final class WindowTasks {
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
          Map.entry(Tools.MEASURE, 'l'));

  private final MainWindow window;

  WindowTasks(MainWindow window) {
    this.window = window;
  }

  Catalogue catalogue() {
    Map<String, List<Task>> chapters = new LinkedHashMap<>();
    chapters.put("menu.file", file());
    chapters.put("menu.edit", edit());
    chapters.put("menu.tools", tools());
    chapters.put("menu.view", view());
    chapters.put("menu.help", help());
    return new Catalogue(chapters);
  }

  private ToolRunner runner() {
    return window.job().runner();
  }

  private List<Task> file() {
    return List.of(
        Task.of("file.new.in", () -> window.files().start(LengthUnit.INCH)).key("menu N"),
        Task.of("file.new.mm", () -> window.files().start(LengthUnit.MILLIMETRE))
            .key("menu shift N"),
        Task.of("file.open", () -> window.files().open()).key("menu O"),
        Task.of("file.save", () -> window.files().save()).key("menu S"),
        Task.of("file.saveAs", () -> window.files().saveAs()).key("menu shift S"),
        Task.of("file.packet", () -> window.files().packet()).key("menu P"),
        Task.of("file.quit", window::quit).key("menu Q"));
  }

  private List<Task> edit() {
    return List.of(
        Task.named(
                "edit.undo",
                this::undoName,
                () -> Texts.of("task.edit.undo.tip"),
                () -> runner().undo())
            .key("menu Z")
            .when(() -> runner().document().undoName().isPresent()),
        Task.named(
                "edit.redo",
                this::redoName,
                () -> Texts.of("task.edit.redo.tip"),
                () -> runner().redo())
            .key("menu shift Z")
            .when(() -> runner().document().redoName().isPresent()),
        Task.of("edit.delete", () -> runner().handle(new Event.Pressing(Event.Key.DELETE)))
            .when(() -> !runner().document().selection().isEmpty()));
  }

  private String undoName() {
    return runner()
        .document()
        .undoName()
        .map(n -> Texts.of("task.edit.undo.named", n))
        .orElse(Texts.of("task.edit.undo"));
  }

  private String redoName() {
    return runner()
        .document()
        .redoName()
        .map(n -> Texts.of("task.edit.redo.named", n))
        .orElse(Texts.of("task.edit.redo"));
  }

  private List<Task> tools() {
    List<Task> tasks = new ArrayList<>();
    for (Tools tool : Tools.values()) {
      Task task =
          Task.named(
                  "tool." + tool.name().toLowerCase(Locale.ROOT),
                  tool::label,
                  tool::hint,
                  () -> take(tool))
              .shows(() -> runner().tool() == tool);
      Character letter = LETTERS.get(tool);
      tasks.add(letter == null ? task : task.letter(letter));
    }
    return tasks;
  }

  private void take(Tools tool) {
    runner().choose(tool);
    window.canvas().requestFocusInWindow();
  }

  private List<Task> view() {
    return List.of(
        Task.of("view.fit", () -> window.canvas().fit()).key("menu 0").letter('f'),
        Task.of("view.zoomIn", () -> window.canvas().zoomIn()).key("menu EQUALS").letter('+'),
        Task.of("view.zoomOut", () -> window.canvas().zoomOut()).key("menu MINUS").letter('-'),
        Task.of("view.layers", this::layers).key("menu L"),
        Task.of("view.grid", () -> window.canvas().setGridShown(!window.canvas().isGridShown()))
            .key("menu G")
            .shows(() -> window.canvas().isGridShown()),
        Task.of("view.theme", () -> window.setTheme(window.settings().theme().other()))
            .key("menu T"),
        Task.of("view.larger", () -> window.setTextSize(window.settings().textSize() + 1))
            .key("menu shift EQUALS"),
        Task.of("view.smaller", () -> window.setTextSize(window.settings().textSize() - 1))
            .key("menu shift MINUS"));
  }

  private void layers() {
    LayersPopup.open(window.canvas(), Layers.ofPlanView(), window.headerButton("view.layers"));
  }

  private List<Task> help() {
    return List.of(Task.of("help.find", () -> window.finder().open()).key("menu K"));
  }
}
