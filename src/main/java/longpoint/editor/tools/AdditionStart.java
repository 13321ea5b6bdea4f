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
import longpoint.geometry.Point;
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
    if (event instanceof Event.Typed typed) {
      return begun(scene).map(p -> p.on(typed, scene)).orElse(Step.to(this));
    }
    if (event instanceof Event.Pressing pressing && pressing.key() == Event.Key.ENTER) {
      return begun(scene).map(Step::to).orElse(Step.to(this));
    }
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

  /** As if the button had gone down where the pointer is, or on the middle of the picked side. */
  private Optional<AdditionPull> begun(Scene scene) {
    Optional<Ref.OfSide> side = wall.filter(w -> w.in(scene.plan()));
    if (side.isPresent() && pointed.isPresent()) {
      Segment line = line(side.get(), scene);
      double start = Math.max(0, Math.min(line.length(), line.along(pointed.get().at())));
      return Optional.of(new AdditionPull(new Wing(side.get(), start, 0, 0), pointed.get()));
    }
    return Chosen.side(scene)
        .map(s -> new Wing(s, line(s, scene).length() / 2, 0, 0))
        .map(w -> new AdditionPull(w, Snap.free(w.wall(scene.plan()).middle())));
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
        .or(() -> picked(scene))
        .orElseGet(() -> Messages.text("addition.status"));
  }

  private static Optional<String> picked(Scene scene) {
    return Chosen.side(scene)
        .map(s -> WallName.of(scene.plan(), scene.plan().part(s.part()).orElseThrow(), s.side()))
        .map(name -> Messages.text("addition.picked", name));
  }

  @Override
  public Set<Entry.Kind> wants() {
    return wall.isPresent() ? Set.of(Entry.Kind.SIZE) : Set.of();
  }

  @Override
  public Set<Entry.Kind> wants(Scene scene) {
    return Chosen.side(scene).isPresent() ? Set.of(Entry.Kind.SIZE) : wants();
  }

  @Override
  public Optional<Point> keyed(Scene scene) {
    return pointed.map(Snap::at).or(() -> Chosen.side(scene).map(s -> line(s, scene).middle()));
  }
}
