package longpoint.editor.tools;

import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;

/** A rectangle waits for its first corner. */
record FirstCorner(Optional<Snap> pointed) implements ToolState {
  FirstCorner() {
    this(Optional.empty());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved moved) {
      Snap snap = Snapper.snap(scene.plan(), moved.pointer(), scene.settings());
      return Step.to(new FirstCorner(Optional.of(snap)));
    }
    if (event instanceof Event.Pressed pressed) {
      Snap snap = Snapper.snap(scene.plan(), pressed.pointer(), scene.settings());
      return Step.to(new OppositeCorner(snap.at(), snap));
    }
    return Step.to(this);
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.empty();
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE.withSnap(pointed);
  }

  @Override
  public String status(Scene scene) {
    return Messages.text("rectangle.first");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
