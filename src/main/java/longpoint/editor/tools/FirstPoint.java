package longpoint.editor.tools;

import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Overlay;
import longpoint.editor.Pointer;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;

/**
 * A tool waits for its first point.
 *
 * @param pointed where the pointer is held; empty before it has come over the sheet
 */
record FirstPoint(Opening opening, Optional<Snap> pointed) implements ToolState {
  FirstPoint(Opening opening) {
    this(opening, Optional.empty());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved || event instanceof Event.Pressed) {
      Pointer pointer = ((Event.Pointing) event).pointer();
      Snap here = opening.hold(pointer, scene);
      FirstPoint waiting = new FirstPoint(opening, Optional.of(here));
      return event instanceof Event.Pressed
          ? opening.begin(here, pointer, waiting, scene)
          : Step.to(waiting);
    }
    Snap here = here();
    if (event instanceof Event.Typed typed) {
      return opening.typed(typed.entry(), here, scene);
    }
    if (event instanceof Event.Pressing pressing && pressing.key() == Event.Key.ENTER) {
      return opening.begin(here, scene).orElse(Step.to(this));
    }
    return Step.to(this);
  }

  /** Without a pointer a gesture starts from the plan's own zero. */
  private Snap here() {
    return pointed.orElse(Snap.free(new Point(0, 0)));
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.empty();
  }

  @Override
  public Optional<Point> keyed(Scene scene) {
    return Optional.of(here().at());
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE.withSnap(pointed);
  }

  @Override
  public String status(Scene scene) {
    return opening.invites(scene);
  }

  @Override
  public Set<Entry.Kind> wants() {
    return opening.wantsFirst();
  }
}
