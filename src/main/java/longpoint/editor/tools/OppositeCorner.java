package longpoint.editor.tools;

import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.NewPart;
import longpoint.editor.Overlay;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Selection;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * A rectangle waits for the corner across from its first. Typed, a size lies toward the pointer.
 *
 * @param first the corner that stands
 * @param pointed where the pointer is
 */
record OppositeCorner(Point first, Snap pointed) implements ToolState {
  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Moved moved) {
      return stretch(moved.pointer(), scene);
    }
    if (event instanceof Event.Dragged dragged) {
      return stretch(dragged.pointer(), scene);
    }
    if (event instanceof Event.Pressed pressed) {
      return finish(snap(pressed.pointer(), scene), scene);
    }
    if (event instanceof Event.Released released) {
      // Press, drag, release draws a rectangle as well; a plain click has no size yet.
      Snap snap = snap(released.pointer(), scene);
      return flat(snap.at()) ? Step.to(this) : finish(snap, scene);
    }
    if (event instanceof Event.Typed typed && typed.entry() instanceof Entry.Size size) {
      Point across =
          new Point(
              first.x() + Math.copySign(size.width(), pointed.at().x() - first.x()),
              first.y() + Math.copySign(size.depth(), pointed.at().y() - first.y()));
      return finish(Snap.free(across), scene);
    }
    return Step.to(this);
  }

  private static Snap snap(Pointer pointer, Scene scene) {
    return Snapper.snap(scene.plan(), pointer, scene.settings());
  }

  private Step stretch(Pointer pointer, Scene scene) {
    Snap snap = snap(pointer, scene);
    ToolState next = new OppositeCorner(first, snap);
    return flat(snap.at())
        ? Step.revert(next)
        : Step.preview(next, scene.plan().withPart(part(snap.at(), scene.plan())));
  }

  private Step finish(Snap across, Scene scene) {
    if (flat(across.at())) {
      return Step.refuse(this, Messages.text("rectangle.flat"));
    }
    Part part = part(across.at(), scene.plan());
    return Step.commit(
            new FirstCorner(),
            Messages.text("rectangle.done", part.name()),
            scene.plan().withPart(part))
        .selecting(Selection.of(Ref.part(part.id())));
  }

  private boolean flat(Point across) {
    return across.x() == first.x() || across.y() == first.y();
  }

  private Part part(Point across, Plan plan) {
    double left = Math.min(first.x(), across.x());
    double right = Math.max(first.x(), across.x());
    double low = Math.min(first.y(), across.y());
    double high = Math.max(first.y(), across.y());
    Ring outline = Ring.of(left, low, right, low, right, high, left, high);
    return NewPart.gabled(plan, plan.parts().isEmpty() ? "main" : "part", outline);
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new FirstCorner(Optional.of(pointed)));
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE.withSnap(Optional.of(pointed));
  }

  @Override
  public String status(Scene scene) {
    return Messages.text("rectangle.second");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.SIZE);
  }
}
