package longpoint.editor.tools;

import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Overlay;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;

/** A box waits for its first corner. */
record FirstCorner(BoxUse use, Optional<Snap> pointed) implements ToolState {
  FirstCorner(BoxUse use) {
    this(use, Optional.empty());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved || event instanceof Event.Pressed) {
      Aim aim = Aim.at(((Event.Pointing) event).pointer());
      Snap snap = Snapper.snap(scene.plan(), scene.settings(), aim);
      return Step.to(
          event instanceof Event.Pressed
              ? new OppositeCorner(use, snap.at(), snap)
              : new FirstCorner(use, Optional.of(snap)));
    }
    if (event instanceof Event.Typed) {
      // A size typed straight away: from the pointer, or without one from the plan's own zero.
      Snap here = pointed.orElse(Snap.free(new Point(0, 0)));
      return new OppositeCorner(use, here.at(), here).on(event, scene);
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
    return use.text("first");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.SIZE);
  }
}
