package longpoint.editor.tools;

import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Modifier;
import longpoint.editor.Overlay;
import longpoint.editor.Picker;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Selection;
import longpoint.editor.Step;
import longpoint.editor.ToolState;

/**
 * The pointer is over the plan and nothing is held.
 *
 * @param hover what a press would take hold of
 */
record Selecting(Optional<Ref> hover) implements ToolState {
  Selecting() {
    this(Optional.empty());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved moved) {
      return Step.to(new Selecting(under(moved.pointer(), scene)));
    }
    if (event instanceof Event.Pressed pressed) {
      return press(pressed.pointer(), scene);
    }
    return Step.to(this);
  }

  private static Optional<Ref> under(Pointer pointer, Scene scene) {
    return Picker.pick(scene.plan(), pointer.at(), pointer.reach());
  }

  private static Step press(Pointer pointer, Scene scene) {
    Optional<Ref> hit = under(pointer, scene);
    Step stay = Step.to(new Selecting(hit));
    if (hit.isEmpty()) {
      return pointer.holds(Modifier.SHIFT) ? stay : stay.selecting(Selection.NONE);
    }
    return pointer.holds(Modifier.SHIFT)
        ? stay.selecting(scene.selection().toggled(hit.get()))
        : stay.selecting(Selection.of(hit.get()));
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.empty();
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE.withHover(hover.filter(h -> h.in(scene.plan())));
  }

  @Override
  public String status(Scene scene) {
    return Messages.text("select.status");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
