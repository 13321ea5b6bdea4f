package longpoint.editor.tools;

import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Picker;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.editor.WallName;
import longpoint.geometry.Segment;

/**
 * An addition waits for the wall it will stand against.
 *
 * @param wall the wall under the pointer
 */
record AdditionStart(Optional<Ref.OfSide> wall, Optional<Snap> pointed) implements ToolState {
  AdditionStart() {
    this(Optional.empty(), Optional.empty());
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (!(event instanceof Event.Moved) && !(event instanceof Event.Pressed)) {
      return Step.to(this);
    }
    Pointer pointer = ((Event.Pointing) event).pointer();
    Optional<Ref.OfSide> under =
        Picker.side(scene.plan(), pointer.at(), pointer.reach())
            .filter(s -> line(s, scene).length() > 0);
    Snap snap = Snapper.snap(scene.plan(), scene.settings(), Aim.at(pointer));
    ToolState waiting = new AdditionStart(under, Optional.of(snap));
    if (event instanceof Event.Moved) {
      return Step.to(waiting);
    }
    if (under.isEmpty()) {
      return Step.refuse(waiting, Messages.text("addition.nowall"));
    }
    Segment line = line(under.get(), scene);
    double start = Math.max(0, Math.min(line.length(), line.along(snap.at())));
    return Step.to(new AdditionPull(new Wing(under.get(), start, 0, 0), snap));
  }

  private static Segment line(Ref.OfSide side, Scene scene) {
    return scene.plan().part(side.part()).orElseThrow().side(side.side());
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.empty();
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE
        .withHover(wall.filter(w -> w.in(scene.plan())).map(w -> w))
        .withSnap(pointed);
  }

  @Override
  public String status(Scene scene) {
    return wall.filter(w -> w.in(scene.plan()))
        .map(w -> WallName.of(scene.plan(), scene.plan().part(w.part()).orElseThrow(), w.side()))
        .map(name -> Messages.text("addition.here", name))
        .orElseGet(() -> Messages.text("addition.status"));
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
