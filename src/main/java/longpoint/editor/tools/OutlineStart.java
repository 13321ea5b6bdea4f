package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;

/** An outline waits for its first corner. */
record OutlineStart(Optional<Snap> pointed) implements ToolState {
  OutlineStart() {
    this(Optional.empty());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved || event instanceof Event.Pressed) {
      Aim aim = Aim.at(((Event.Pointing) event).pointer());
      Snap snap = Snapper.snap(scene.plan(), scene.settings(), aim);
      return Step.to(
          event instanceof Event.Pressed
              ? new OutlineDrawing(List.of(snap.at()), snap)
              : new OutlineStart(Optional.of(snap)));
    }
    if (event instanceof Event.Pressing pressing && pressing.key() == Event.Key.ENTER) {
      // Without a pointer an outline starts from the plan's own zero.
      Snap here = pointed.orElse(Snap.free(new Point(0, 0)));
      return Step.to(new OutlineDrawing(List.of(here.at()), here));
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
    return Messages.text("outline.start");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
