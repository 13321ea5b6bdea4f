package longpoint.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longpoint.desktop.action.Task;
import longpoint.editor.MarkupCommands;
import longpoint.editor.PlanCommands;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.editor.ToolRunner;
import longpoint.editor.tools.PictureTools;
import longpoint.plan.Backdrop;
import longpoint.plan.Backdrop.State;

/** What can be done with the picture behind the plan. */
final class PictureTasks {
  private final MainWindow window;

  PictureTasks(MainWindow window) {
    this.window = window;
  }

  List<Task> all() {
    List<Task> tasks = new ArrayList<>();
    tasks.add(Task.of("picture.load", () -> window.pictures().load()).key("menu shift P"));
    tasks.add(Task.of("picture.walls", () -> window.tracings().load()).key("menu shift W"));
    for (PictureTools tool : PictureTools.values()) {
      tasks.add(
          Task.named(
                  "picture." + tool.name().toLowerCase(Locale.ROOT),
                  tool::label,
                  tool::hint,
                  () -> take(tool))
              .when(() -> backdrop().isPresent())
              .shows(() -> runner().tool() == tool));
    }
    tasks.add(
        Task.of("picture.pick", () -> runner().select(Selection.of(new Ref.OfBackdrop())))
            .when(() -> backdrop().isPresent()));
    tasks.add(state("picture.lock", State.LOCKED));
    tasks.add(state("picture.hide", State.HIDDEN));
    tasks.add(
        Task.of(
                "picture.remove",
                () -> runner().apply(PlanCommands.delete(Selection.of(new Ref.OfBackdrop()))))
            .when(() -> backdrop().isPresent()));
    return tasks;
  }

  /** Switches a state on, or back to a loose picture. */
  private Task state(String id, State state) {
    return Task.of(
            id,
            () ->
                runner()
                    .apply(
                        MarkupCommands.backdrop(
                            b -> b.withState(b.state() == state ? State.LOOSE : state))))
        .when(() -> backdrop().isPresent())
        .shows(() -> backdrop().filter(b -> b.state() == state).isPresent());
  }

  private void take(PictureTools tool) {
    runner().choose(tool);
    window.canvas().requestFocusInWindow();
  }

  private ToolRunner runner() {
    return window.job().runner();
  }

  private Optional<Backdrop> backdrop() {
    return runner().document().plan().markup().backdrop();
  }
}
