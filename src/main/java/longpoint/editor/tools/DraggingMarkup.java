package longpoint.editor.tools;

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
import longpoint.plan.Plan;

/**
 * A note, a dimension or the picture follows the pointer.
 *
 * @param ref what is dragged
 * @param grip what of it was taken hold of
 * @param from where the button went down
 */
record DraggingMarkup(Ref ref, MarkupGrip grip, Point from, Snap pointed) implements ToolState {
  DraggingMarkup(Ref ref, MarkupGrip grip, Point from) {
    this(ref, grip, from, Snap.free(from));
  }

  @Override
  public Step on(Event event, Scene scene) {
    if (!ref.in(scene.plan()) || event instanceof Event.Moved || event instanceof Event.Pressed) {
      return Step.revert(new Selecting());
    }
    if (event instanceof Event.Dragged dragged) {
      DraggingMarkup next = pointing(dragged.pointer(), scene);
      return Holding.pulled(from, dragged.pointer())
          ? Step.preview(next, next.moved(scene.plan()))
          : Step.revert(next);
    }
    if (event instanceof Event.Released released) {
      return Holding.pulled(from, released.pointer())
          ? pointing(released.pointer(), scene).finish(scene)
          : Step.revert(new Selecting());
    }
    return Step.to(this);
  }

  private DraggingMarkup pointing(Pointer pointer, Scene scene) {
    Snap snap =
        grip.snaps()
            ? Snapper.snap(scene.plan(), scene.settings(), Aim.at(pointer))
            : Snap.free(pointer.at());
    return new DraggingMarkup(ref, grip, from, snap);
  }

  private Plan moved(Plan plan) {
    return plan.withMarkup(grip.moved(plan.markup(), ref, plan, from, pointed.at()));
  }

  private Step finish(Scene scene) {
    return Step.commit(new Selecting(), name(ref), moved(scene.plan()));
  }

  /** What undo calls it. */
  static String name(Ref ref) {
    String key =
        ref instanceof Ref.OfNote
            ? "do.note"
            : ref instanceof Ref.OfDimension ? "do.dimension" : "do.backdrop.change";
    return Messages.text(key);
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new Selecting());
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE.withSnap(Optional.of(pointed));
  }

  @Override
  public PointerShape shape(Scene scene) {
    return PointerShape.MOVE;
  }

  @Override
  public String status(Scene scene) {
    return Messages.text("select.dragging.markup");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of();
  }
}
