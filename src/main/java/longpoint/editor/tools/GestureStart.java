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

/** A gesture on whole parts waits for its first point. */
record GestureStart(PartGesture gesture, Optional<Snap> pointed) implements ToolState {
  GestureStart(PartGesture gesture) {
    this(gesture, Optional.empty());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (!(event instanceof Event.Moved) && !(event instanceof Event.Pressed)) {
      return Step.to(this);
    }
    Aim aim = Aim.at(((Event.Pointing) event).pointer());
    Snap snap = Snapper.snap(scene.plan(), scene.settings(), aim);
    ToolState waiting = new GestureStart(gesture, Optional.of(snap));
    if (event instanceof Event.Moved) {
      return Step.to(waiting);
    }
    List<String> parts = Chosen.parts(scene, aim.pointer());
    return parts.isEmpty()
        ? Step.refuse(waiting, Messages.text("gesture.nothing"))
        : Step.to(new GestureLine(gesture, parts, snap.at(), snap));
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
    return gesture.text("first");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
