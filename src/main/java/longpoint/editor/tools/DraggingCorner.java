package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Pointer;
import longpoint.editor.PointerShape;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.plan.Part;
import longpoint.plan.Reshape;

/**
 * A corner follows the pointer. A typed length moves it that far from where it was, in the
 * direction pointed in.
 *
 * @param from where the button went down
 * @param pointed where the corner goes
 */
record DraggingCorner(Ref.OfCorner corner, Point from, Snap pointed) implements ToolState {
  @Override
  public Step on(Event event, Scene scene) {
    if (!corner.in(scene.plan())) {
      return Step.revert(new Selecting());
    }
    if (event instanceof Event.Dragged dragged) {
      return follow(dragged.pointer(), scene);
    }
    if (event instanceof Event.Released released) {
      return Holding.pulled(from, released.pointer())
          ? finish(snap(released.pointer(), scene).at(), scene)
          : Step.revert(new Selecting());
    }
    if (event instanceof Event.Typed typed && !pointed.at().equals(home(scene))) {
      return typed(typed.entry(), scene);
    }
    if (event instanceof Event.Moved || event instanceof Event.Pressed) {
      return Step.revert(new Selecting());
    }
    return Step.to(this);
  }

  private Step follow(Pointer pointer, Scene scene) {
    if (!Holding.pulled(from, pointer)) {
      return Step.revert(new DraggingCorner(corner, from, Snap.free(home(scene))));
    }
    Snap snap = snap(pointer, scene);
    ToolState next = new DraggingCorner(corner, from, snap);
    return moved(snap.at(), scene)
        .map(part -> Step.preview(next, scene.plan().withPart(part)))
        .orElse(Step.revert(next));
  }

  private Snap snap(Pointer pointer, Scene scene) {
    Part part = scene.plan().part(corner.part()).orElseThrow();
    int before = Walls.before(part, corner.corner());
    Set<Ref> moving =
        Set.of(corner, Ref.side(part.id(), corner.corner()), Ref.side(part.id(), before));
    Aim aim = Aim.at(pointer).lineFrom(home(scene)).leavingOut(moving);
    return Snapper.snap(scene.plan(), scene.settings(), aim);
  }

  private Step typed(Entry entry, Scene scene) {
    Point home = home(scene);
    if (entry instanceof Entry.Length length) {
      Point along = pointed.at().minus(home).unit();
      return finish(home.plus(along.times(length.length())), scene);
    }
    return entry instanceof Entry.Polar polar
        ? finish(home.plus(Compass.step(polar.length(), polar.degrees())), scene)
        : Step.to(this);
  }

  private Step finish(Point to, Scene scene) {
    if (to.equals(home(scene))) {
      return Step.revert(new Selecting());
    }
    return moved(to, scene)
        .map(
            part ->
                Step.commit(
                    new Selecting(),
                    Messages.text("corner.moved", part.name()),
                    scene.plan().withPart(part)))
        .orElseGet(() -> Step.refuse(new Selecting(), Messages.text("refuse.shape")));
  }

  private Optional<Part> moved(Point to, Scene scene) {
    Part part = scene.plan().part(corner.part()).orElseThrow();
    return Reshape.moveCorner(part, corner.corner(), to);
  }

  private Point home(Scene scene) {
    return corner.at(scene.plan()).orElseThrow();
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new Selecting());
  }

  @Override
  public Overlay overlay(Scene scene) {
    if (!corner.in(scene.plan())) {
      return Overlay.NONE;
    }
    Part part = scene.plan().part(corner.part()).orElseThrow();
    Point before = part.side(Walls.before(part, corner.corner())).from();
    Point after = part.side(corner.corner()).to();
    return Overlay.NONE
        .withDimensions(Rubber.path(List.of(before, pointed.at(), after), scene))
        .withSnap(Optional.of(pointed));
  }

  @Override
  public PointerShape shape(Scene scene) {
    return PointerShape.MOVE;
  }

  @Override
  public String status(Scene scene) {
    return Messages.text("select.dragging");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.LENGTH, Entry.Kind.POLAR);
  }
}
